import { z } from "zod";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { monthDaySchema } from "../day-schema";
import { type Field, field, open, originField, type RecordOf, recordSchema } from "./field";
import { choice, decimal, monthDay } from "./kinds";

const PLACES = CLIMATE_STATIONS.map(({ station }) => station);

const degreesC = (label: string, hint: string): Field<number | null> =>
  open({
    ...field(decimal, z.number("write degrees").min(-10, "from -10 to 60 °C").max(60, "from -10 to 60 °C"), {
      label,
      hint,
      measure: "temperature",
    }),
    limits: { least: -10, most: 60 },
  });

/**
 * The clock of warmth of a bloom curve; without a base temperature the curve goes by the calendar. The curve's own first cut makes it a known
 * point: so many degree days lie between `heatFrom` and that cut in a usual year at `heatPlace` (null: on the farm itself), and other
 * planting days, places and years need as many. `heatFrom` is the known planting day of a curve of days after planting, else the day from which
 * the warmth of spring counts.
 */
export const HEAT = {
  heatBaseC: degreesC(
    "Grows above",
    "The base temperature: the mean of a day adds what lies above it. Left empty: the crop blooms by the calendar.",
  ),
  heatCeilingC: degreesC("No faster above", "Left empty where no such limit is known."),
  heatLimitC: degreesC(
    "Stands still at",
    "From where it grows no faster, a warmer day adds less, and one of this mean nothing. Left empty: it adds as much.",
  ),
  heatFrom: open(
    field(monthDay, monthDaySchema, {
      label: "Warmth counts from",
      hint: "For days after planting, the planting day that they are known for; else the start of spring, such as 01-01.",
    }),
  ),
  heatPlace: open(
    field(choice(PLACES), z.enum(PLACES, "choose a station of the list, or leave it empty for your own climate"), {
      label: "Where the first cut is known",
    }),
  ),
  heatOrigin: originField({ label: "Origin of the base temperature" }),
};

type Heat = Pick<RecordOf<typeof HEAT>, "heatBaseC" | "heatCeilingC" | "heatLimitC" | "heatFrom">;

/** A clock has a base temperature and a day to count from, or neither; a ceiling lies above the base, a limit above the ceiling. */
export function checkHeat(
  { heatBaseC, heatCeilingC, heatLimitC, heatFrom }: Heat,
  context: z.core.$RefinementCtx,
): void {
  const say = (path: string, message: string) => context.addIssue({ code: "custom", path: [path], message });
  if (heatBaseC !== null && heatFrom === null) say("heatFrom", "write the day from which warmth counts, such as 01-01");
  if (heatBaseC === null && heatFrom !== null)
    say("heatBaseC", "write the base temperature, or take out the day from which warmth counts");
  if (heatCeilingC !== null && heatCeilingC <= (heatBaseC ?? Number.POSITIVE_INFINITY))
    say("heatCeilingC", "must lie above a base temperature: write a higher one, or none");
  if (heatLimitC !== null && heatLimitC <= (heatCeilingC ?? Number.POSITIVE_INFINITY))
    say("heatLimitC", "must lie above where it grows no faster: write a higher one, or none");
}

/** The clock of a curve by itself. */
export const heatSchema = recordSchema(HEAT).superRefine(checkHeat);

/** A curve that goes by the calendar. */
export const BY_CALENDAR = {
  heatBaseC: null,
  heatCeilingC: null,
  heatLimitC: null,
  heatFrom: null,
  heatPlace: null,
} as const;
