import { MONTHS } from "#lib/domain/day";
import { measureIn } from "#lib/domain/measures";
import { CLIMATE, type Climate, climateSchema } from "#lib/domain/records/climate";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { FormValues } from "../../ui/form-values";

/** The climate that the grower typed, twelve highs and lows in the unit that the farm shows. */
export function readClimate(values: FormValues, farm: Farm) {
  const { station, latitudeDegrees } = CLIMATE;
  const top = values.record({ station, latitudeDegrees }, farm, { before: farm.climate ?? undefined });
  const measure = measureIn(farm.units, "temperature");
  const range = farm.units === "us" ? "from -76 to 140 °F" : "from -60 to 60 °C";
  const twelve = (name: "monthlyHighsC" | "monthlyLowsC") =>
    MONTHS.map((_, month) =>
      values.number(`${name}[${month}]`, { measure, range, before: farm.climate?.[name][month] ?? null }),
    );
  const typed: Climate = {
    ...(top.ok ? top.parsed : { station: "?", latitudeDegrees: 0 }),
    monthlyHighsC: twelve("monthlyHighsC"),
    monthlyLowsC: twelve("monthlyLowsC"),
  };
  return values.parse(climateSchema, typed);
}
