import { z } from "zod";
import type { MonthDay } from "../day";
import { monthDaySchema } from "../day-schema";
import { originSchema } from "../sourced";
import { OTHER_TREATMENTS } from "../trade-words";
import { TREATMENT_WORDS, TREATMENTS } from "../words";
import { BLOOM_END, checkEnd } from "./bloom-end";
import { count, field, number, open, originField, recordSchema, rowId } from "./field";
import { checkHeat, HEAT } from "./heat";
import { choice, decimal, listOf, monthDay, note } from "./kinds";
import { LEARNED } from "./learned";
import { nameOf } from "./names";
import { PLANTING } from "./planting";

const firstCut = field(monthDay, monthDaySchema, {
  label: "First cut",
  unit: "month-day",
  hint: "Written 06-05 for the 5th of June. Only for a day of the year.",
});
const days = count({
  of: "days",
  unit: "days",
  least: 0,
  most: 1000,
  label: "From planting to first cut",
  heading: "days_after_planting",
  hint: "Only for days after planting.",
});

/** When the first stem can be cut: on a day of the year (what stays in the ground), or so many days after planting. */
const anchorSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("day-of-year"), firstCut: firstCut.schema }),
  z.object({ kind: z.literal("days-after-planting"), days: days.schema }),
]);
export type Anchor = z.infer<typeof anchorSchema>;

/** The anchor as two values, of which one is null: the columns of its sheet and of its table. */
export const anchorColumns = (anchor: Anchor): { firstCut: MonthDay | null; daysAfterPlanting: number | null } => ({
  firstCut: anchor.kind === "day-of-year" ? anchor.firstCut : null,
  daysAfterPlanting: anchor.kind === "days-after-planting" ? anchor.days : null,
});

const treatment = field(choice(TREATMENTS, OTHER_TREATMENTS), z.enum(TREATMENTS), {
  label: "How it is grown",
  meanings: TREATMENT_WORDS,
});

/** A first cut may be moved by so many days: a year. */
export const MOST_LATER_DAYS = 365;

/** The seasons of a year in the order in which a curve tells what is fit to sell. */
export const YEAR_SEASONS = ["spring", "summer", "autumn", "winter"] as const;

const curve = {
  stemsPerPlantByWeek: field(
    listOf(decimal),
    z
      .array(
        z.number().min(0, "stems per plant cannot be negative").max(1000, "at most 1,000 stems per plant and week"),
      )
      .min(1, "a bloom curve needs at least one week")
      .max(52, "a bloom curve has at most 52 weeks"),
    { label: "Stems per plant by week" },
  ),
  sowingDays: open(
    count({
      of: "days",
      unit: "days",
      least: 0,
      most: 200,
      label: "More from sowing",
      hint: "For days after planting: so many more where it is sown in place. Left empty: it counts the same.",
    }),
  ),
  laterDays: count({
    of: "days",
    unit: "days",
    least: -MOST_LATER_DAYS,
    most: MOST_LATER_DAYS,
    absent: 0,
    label: "Moved later by",
    hint: "So many days later than the first cut above, or its warmth, says. Below 0: earlier.",
  }),
  shareByAge: field(
    listOf(decimal),
    z
      .array(z.number().min(0, "a share cannot be negative").max(2, "at most 2 times a grown plant"))
      .max(20, "at most 20 seasons of a plant’s life"),
    {
      absent: [],
      label: "Stems by season of its life",
      hint: "Shares of a grown plant, the first season first, as 0 / 0.1 / 0.5 / 1. Left empty: the same at any age.",
    },
  ),
  lateLossShare: open(
    number({
      least: 0,
      most: 1,
      measure: "percent",
      label: "Fewer stems for each week late",
      hint: "Of a planting later than the day that its warmth is known for. Left empty: as many stems whenever planted.",
    }),
  ),
  saleableBySeason: field(
    listOf(decimal),
    z
      .array(z.number().min(0, "a share cannot be negative").max(1, "at most 1, which is all of them"))
      .refine(
        ({ length }) => length === 0 || length === YEAR_SEASONS.length,
        "write four shares, of spring, summer, autumn and winter, or none",
      ),
    {
      absent: [],
      label: "Fit to sell, by season",
      hint: "Shares of the stems cut in spring (from March), summer, autumn and winter, as 0.9 / 0.8 / 0.85 / 0.9. Left empty: all of them. What a planting says is graded out takes their place.",
    },
  ),
  firstCutSpreadDays: number({
    of: "days",
    unit: "days",
    least: 0,
    most: 60,
    label: "Spread of the first cut",
    hint: "Standard deviation: two seasons in three fall within it.",
  }),
  yieldSpread: number({
    least: 0,
    most: 2,
    measure: "percent",
    label: "Spread of yield",
    hint: "How far a season’s stems vary around the expected: 25 % is a quarter.",
  }),
  timingOrigin: originField({ label: "Origin of the timing" }),
  yieldOrigin: originField({ label: "Origin of the yield" }),
  ...HEAT,
  ...BLOOM_END,
  learned: LEARNED,
  note: field(note, z.string(), { absent: "", label: "Note" }),
};

/** The two ways to say when the first stem can be cut; a curve has one of them. */
export const ANCHOR = { firstCut, daysAfterPlanting: days };

/** A curve as its form and its rows write it, its anchor as two values of which one is null. */
export const CURVE = { treatment, firstCut: open(firstCut), daysAfterPlanting: open(days), ...curve };

/**
 * A bloom curve a row. `variety` empty: the curve of the whole crop. With `bed`, `season` and `planted_on` it is that of one planting of the
 * variety, the first where several are alike in these. Exactly one of `first_cut` and `days_after_planting` is filled.
 * Absent or empty: `note` says nothing, and each origin is "own". The two spreads are asked for: there is no honest default.
 */
export const CURVE_SHEET = {
  crop: nameOf("Crop"),
  variety: open(nameOf("Variety")),
  bed: open(nameOf("Bed")),
  seasonYear: open(PLANTING.seasonYear),
  plantedOn: open(PLANTING.plantedOn),
  ...CURVE,
};

/**
 * How a crop blooms under a treatment (or one variety of it, which overrules, or one planting of the variety, which overrules both): the first
 * cut, then all stems per plant for each week from it, of which the shares by season are fit to sell [F17]. Ends as `ends` says, and on the frost day if the crop is tender. Spreads are for low / likely / high:
 * `firstCutSpreadDays` is a standard deviation, `yieldSpread` a coefficient of variation (0.25 = a quarter).
 */
const bloomCurve = recordSchema({
  id: rowId("Id"),
  cropId: rowId("Crop"),
  varietyId: open(rowId("Variety")),
  plantingId: open(rowId("Planting")),
  treatment,
  ...curve,
}).extend({
  anchor: anchorSchema,
  timingOrigin: originSchema,
  yieldOrigin: originSchema,
  heatOrigin: originSchema,
});
export const bloomCurveSchema = bloomCurve.superRefine(checkHeat).superRefine(checkEnd);
export type BloomCurve = z.infer<typeof bloomCurveSchema>;

/** A bloom curve before it has an id. */
export const curveDraftSchema = bloomCurve.omit({ id: true }).superRefine(checkHeat).superRefine(checkEnd);
export type CurveDraft = Omit<BloomCurve, "id">;

/** The stems of a curve by week, by themselves. */
export const curveWeeksSchema = bloomCurve.pick({ stemsPerPlantByWeek: true });

/** The share of a grown plant's stems that one gives in a season of its life (1 is its first); grown where its age is not told [F12]. */
export function shareAtAge({ shareByAge }: Pick<BloomCurve, "shareByAge">, ageSeasons: number | null): number {
  if (ageSeasons === null || shareByAge.length === 0) return 1;
  return shareByAge[Math.min(ageSeasons, shareByAge.length) - 1];
}

/** Stems a plant gives in a full season, frost and picking losses aside. */
export const stemsPerPlant = (curve: Pick<BloomCurve, "stemsPerPlantByWeek">): number =>
  curve.stemsPerPlantByWeek.reduce((sum, stems) => sum + stems, 0);
