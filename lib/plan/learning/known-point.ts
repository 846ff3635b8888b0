import type { BloomSeason } from "./bloom-season";
import { clockGuesses } from "./clock-guesses";
import { RecordedSeasons, rootMeanSquare } from "./fit-clock";
import type { HeatClock } from "./heat-clock";
import { judgedClocks, meanDay } from "./judged-clocks";

/** A plain clock that a bloom curve can hold: degree days above a base, from a day of the year on, up to a sum. */
type PlainClock = { readonly startDay: number; readonly baseC: number; readonly sumC: number };

/** One recorded first cut, and what would have been said of it by what the other years teach; days of the year as indexes into its season. */
type ToldSeason = {
  readonly year: number;
  readonly recordedIndex: number;
  readonly byClockIndex: number | null;
  readonly byMeanIndex: number;
};

/**
 * What recorded first cuts propose for a curve: the mean day, and the plain clock that errs least on seasons left out of its fit; null where none errs
 * less than the mean does. Errors are root mean squares in days, each season told by the others.
 */
export type KnownPoint = {
  readonly meanIndex: number;
  readonly meanErrorDays: number;
  readonly clock: PlainClock | null;
  readonly clockErrorDays: number | null;
  readonly told: readonly ToldSeason[];
};

/** Clocks that look worst are not looked at again. */
const JUDGED_COUNT = 40;

/**
 * Finds the plain clock that tells recorded first cuts best [H8]. The guesses and the judging are those of `learnClock`, less the clocks that a
 * curve cannot hold. On the recorded seasons themselves what is proposed never errs more than the mean day.
 * @throws RangeError if there are fewer than three seasons
 */
export function knownPoint(seasons: readonly BloomSeason[]): KnownPoint {
  if (seasons.length < 3) throw new RangeError(`seasons must be at least three to learn from, got ${seasons.length}`);
  const recorded = new RecordedSeasons(seasons);
  const { firstCuts } = recorded;
  const mean = meanDay(firstCuts);
  const meanErrorWithin = rootMeanSquare(firstCuts.map((day) => day - mean.index));
  const best = judgedClocks(recorded, clockGuesses().filter(isPlain), JUDGED_COUNT).find(
    ({ errorDays, leftOutErrorDays }) => errorDays <= meanErrorWithin && leftOutErrorDays < mean.leftOutErrorDays,
  );
  return {
    meanIndex: mean.index,
    meanErrorDays: mean.leftOutErrorDays,
    clock: best ? { startDay: best.clock.startDay, baseC: best.clock.response.baseC, sumC: best.sum } : null,
    clockErrorDays: best?.leftOutErrorDays ?? null,
    told: seasons.map(({ year, firstCutIndex }, season) => ({
      year,
      recordedIndex: firstCutIndex,
      byClockIndex: best ? firstCutIndex + best.leftOut[season] : null,
      byMeanIndex: mean.leftOut[season],
    })),
  };
}

/** A clock that a curve can hold: degree days above a base, and the sum asked for never falls. */
type Plain = HeatClock & { readonly response: { readonly baseC: number } };
const isPlain = (clock: HeatClock): clock is Plain =>
  "baseC" in clock.response && clock.fallPerDay === 0 && clock.fallPerColdDay === 0;
