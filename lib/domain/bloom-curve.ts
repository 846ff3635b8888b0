import { z } from "zod";
import { monthDaySchema } from "./day";
import { originSchema } from "./sourced";
import { TREATMENTS } from "./words";

/** When the first stem can be cut: on a day of the year (what stays in the ground), or so many days after planting. */
export const anchorSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("day-of-year"), firstCut: monthDaySchema }),
  z.object({
    kind: z.literal("days-after-planting"),
    days: z.int("write whole days").min(0, "at least 0 days").max(1000, "at most 1,000 days"),
  }),
]);
export type Anchor = z.infer<typeof anchorSchema>;

/**
 * How a crop (or one variety of it, which overrules) blooms under a treatment: the first cut, then saleable-or-not stems per plant for
 * each week from it. Ends with its last week, or on the frost day if the crop is tender. Spreads are for low / likely / high:
 * `firstCutSpreadDays` is a standard deviation, `yieldSpread` a coefficient of variation (0.25 = a quarter).
 */
export const bloomCurveSchema = z.object({
  id: z.int(),
  cropId: z.int(),
  varietyId: z.int().nullable(),
  treatment: z.enum(TREATMENTS),
  anchor: anchorSchema,
  stemsPerPlantByWeek: z
    .array(z.number().min(0, "stems per plant cannot be negative").max(1000, "at most 1,000 stems per plant and week"))
    .min(1, "a bloom curve needs at least one week")
    .max(52, "a bloom curve has at most 52 weeks"),
  firstCutSpreadDays: z.number().min(0, "at least 0 days").max(60, "at most 60 days"),
  yieldSpread: z.number().min(0, "at least 0").max(2, "at most 2"),
  timingOrigin: originSchema,
  yieldOrigin: originSchema,
  note: z.string(),
});
export type BloomCurve = z.infer<typeof bloomCurveSchema>;

/** Stems a plant gives in a full season, frost and picking losses aside. */
export const stemsPerPlant = (curve: BloomCurve): number =>
  curve.stemsPerPlantByWeek.reduce((sum, stems) => sum + stems, 0);
