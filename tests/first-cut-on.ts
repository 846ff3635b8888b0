import { type Day, toDay } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import { firstCutDay, warmthOf } from "#lib/plan/road/first-cut";

/** The first cut of a planting on a farm of this climate, by the calendar where there is none. A planting that never blooms throws. */
export function firstCutOn(curve: BloomCurve, planting: Planting, climate: Climate | null = null): Day {
  const day = firstCutDay(curve, planting, warmthOf({ climate }));
  if (day === null) throw new RangeError(`planted on ${planting.plantedOn} it never blooms in ${planting.seasonYear}`);
  return toDay(day);
}
