import type { CatalogueCurve } from "#lib/domain/catalogue-types";
import { monthDaySchema } from "#lib/domain/day-schema";
import { BY_WEEKS } from "#lib/domain/records/bloom-end";
import type { Anchor } from "#lib/domain/records/curve";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import { FROM_MEMORY } from "#lib/domain/sourced";
import type { Treatment } from "#lib/domain/words";

/**
 * First cut on a day of the year, "MM-DD", as in USDA zone 7a. Of published windows from colder or warmer places we take a reading
 * for zone 7a and say so in the note; the grower's own records should replace it.
 */
export const onDay = (monthDay: string): Anchor => ({ kind: "day-of-year", firstCut: monthDaySchema.parse(monthDay) });

/** First cut so many days after the day a plant was set out, a seed sown in place, or a tuber, corm or bulb planted. */
export const afterPlanting = (days: number): Anchor => ({ kind: "days-after-planting", days });

/** The same stems per plant in each of so many weeks. */
export const steady = (stemsPerPlant: number, weekCount: number): number[] =>
  Array.from({ length: weekCount }, () => stemsPerPlant);

type Spreads = Pick<CatalogueCurve, "firstCutSpreadDays" | "yieldSpread">;
type Grounds = Partial<Pick<CatalogueCurve, "timingOrigin" | "yieldOrigin" | "note">>;

/**
 * A built-in bloom curve. Timing and yield are from memory unless an origin is given; the split over the weeks and both
 * spreads are always from memory.
 */
export const curve = (
  treatment: Treatment,
  anchor: Anchor,
  stemsPerPlantByWeek: number[],
  { timingOrigin = FROM_MEMORY, yieldOrigin = FROM_MEMORY, note = "", ...spreads }: Spreads & Grounds,
): CatalogueCurve => ({
  treatment,
  anchor,
  stemsPerPlantByWeek,
  ...spreads,
  timingOrigin,
  yieldOrigin,
  note,
  ...BY_CALENDAR,
  ...BY_WEEKS,
  sowingDays: null,
  laterDays: 0,
  learned: [],
  shareByAge: [],
  lateLossShare: null,
  saleableBySeason: [],
  heatOrigin: FROM_MEMORY,
});
