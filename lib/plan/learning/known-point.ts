import type { BloomSeason } from "./bloom-season";
import { clockGuesses } from "./clock-guesses";
import { errorsLeftOut, fitClock, RecordedSeasons, rootMeanSquare, roughErrorDays } from "./fit-clock";

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
  const meanIndex = meanOf(firstCuts);
  const meansLeftOut = firstCuts.map((day) => (meanIndex * firstCuts.length - day) / (firstCuts.length - 1));
  const meanErrorDays = rootMeanSquare(meansLeftOut.map((told, season) => told - firstCuts[season]));
  const meanErrorWithin = rootMeanSquare(firstCuts.map((day) => day - meanIndex));
  const best = clockGuesses()
    .flatMap((clock) => ("baseC" in clock.response && isPlain(clock) ? [{ clock, baseC: clock.response.baseC }] : []))
    .map((guess) => ({ ...guess, rough: roughErrorDays(recorded, guess.clock) }))
    .sort((a, b) => a.rough - b.rough)
    .slice(0, JUDGED_COUNT)
    .flatMap(({ clock, baseC }) => {
      const fitted = fitClock(recorded, clock);
      if (fitted === null || fitted.errorDays > meanErrorWithin) return [];
      const errors = errorsLeftOut(recorded, clock);
      return [{ clock, baseC, sumC: fitted.sum, errors, errorDays: rootMeanSquare(errors) }];
    })
    .sort((a, b) => a.errorDays - b.errorDays)
    .find(({ errorDays }) => errorDays < meanErrorDays);
  return {
    meanIndex,
    meanErrorDays,
    clock: best ? { startDay: best.clock.startDay, baseC: best.baseC, sumC: best.sumC } : null,
    clockErrorDays: best?.errorDays ?? null,
    told: seasons.map(({ year, firstCutIndex }, season) => ({
      year,
      recordedIndex: firstCutIndex,
      byClockIndex: best ? firstCutIndex + best.errors[season] : null,
      byMeanIndex: meansLeftOut[season],
    })),
  };
}

const isPlain = ({ fallPerDay, fallPerColdDay }: { fallPerDay: number; fallPerColdDay: number }): boolean =>
  fallPerDay === 0 && fallPerColdDay === 0;

const meanOf = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
