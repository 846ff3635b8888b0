import { CLIMATE, climateSchema } from "#lib/domain/records/climate";
import type { Snapshot } from "#lib/domain/snapshot";
import { recordedClimate } from "#lib/plan/learning/recorded-climate";
import { refusal } from "../../action";
import type { FormValues } from "../../ui/form-values";

/** What the climate of the farm's own record is called. */
export const RECORD_STATION = "your own record";

/** The climate that the recorded weather makes, at the latitude that was typed. */
export function readRecordedClimate(values: FormValues, { farm, weather }: Snapshot) {
  const found = weather && recordedClimate(weather);
  if (!found) return refusal("", "the record no longer has ten years of every month: look at the page again");
  const { latitudeDegrees } = CLIMATE;
  const typed = values.record({ latitudeDegrees }, farm, { before: farm.climate ?? undefined });
  const { monthlyHighsC, monthlyLowsC } = found;
  const top = typed.ok ? typed.parsed : { latitudeDegrees: 0 };
  return values.parse(climateSchema, { ...top, station: RECORD_STATION, monthlyHighsC, monthlyLowsC });
}
