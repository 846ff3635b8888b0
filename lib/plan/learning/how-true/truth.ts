import type { MonthDay } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";

/** When a forecast was made that is held against what came [HT2]. */
export const MADE = ["winter", "spring", "four weeks ahead"] as const;
export type Made = (typeof MADE)[number];

/** The days on which winter and spring are asked what they say of the season. Our choice. */
export const WINTER_DAY = "02-01" as MonthDay;
export const SPRING_DAY = "05-01" as MonthDay;

/**
 * First cuts held against a forecast, each planting once: on average `daysLate` later than said, earlier when negative; eight in ten no further off than `mostDaysOff`. The
 * mean days are day numbers and fractions of them: came less said is days late.
 */
export type TimingTruth = {
  readonly plantingCount: number;
  readonly daysLate: number;
  readonly mostDaysOff: number;
  readonly meanCameDay: number;
};

/**
 * Recorded pickings, of a variety in a bed on a day, held against a forecast: stems that came and stems that were said, on the same days and as far as the records know, and by how many the days were off, more or fewer, bed by
 * bed: days that were off either way do not make up for one another.
 */
export type StemsTruth = {
  readonly pickingCount: number;
  readonly cameStems: number;
  readonly saidStems: number;
  readonly offStems: number;
};

/** How true a forecast was; null where nothing was recorded that it can be held against. */
export type Truth = { readonly timing: TimingTruth | null; readonly stems: StemsTruth | null };

/** What came of crops, and how far each forecast was off. `plantingCount` are all of the season. */
export type CameOf = { readonly plantingCount: number; readonly said: Readonly<Record<Made, Truth>> };

/** The same of one crop, and beside it how late its first cuts came against winter in recorded seasons before, the latest first. */
export type CropTruth = CameOf & {
  readonly crop: Pick<Crop, "id" | "name">;
  readonly wintersBefore: readonly { readonly season: number; readonly daysLate: number }[];
};

/** A season's forecasts beside what came: crops with anything to compare, in order of name, and all of them together. */
export type HowTrue = {
  readonly seasonYear: number;
  readonly crops: readonly CropTruth[];
  readonly all: CameOf;
};

/** So few crops are told of first, and none of which winter was right to a day or so, as first cuts are proposed. Our choice. */
const FURTHEST_COUNT = 3;
const LEAST_DAYS_OFF = 2;

/** The crops of which winter's first cuts were furthest off, the furthest first. */
export const furthestOff = (crops: readonly CropTruth[]): CropTruth[] =>
  crops
    .map((one) => ({ one, daysOff: Math.round(Math.abs(one.said.winter.timing?.daysLate ?? 0)) }))
    .filter(({ daysOff }) => daysOff >= LEAST_DAYS_OFF)
    .sort((a, b) => b.daysOff - a.daysOff)
    .slice(0, FURTHEST_COUNT)
    .map(({ one }) => one);
