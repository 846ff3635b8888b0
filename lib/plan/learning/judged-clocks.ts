import {
  errorsLeftOut,
  type FittedClock,
  fitClock,
  type RecordedSeasons,
  rootMeanSquare,
  roughErrorDays,
} from "./fit-clock";
import type { HeatClock } from "./heat-clock";

/** A fitted clock with its honest errors in days: each season told by the clock fitted to all the others, and their root mean square. */
export type JudgedClock<Clock extends HeatClock = HeatClock> = FittedClock & {
  readonly clock: Clock;
  readonly leftOut: readonly number[];
  readonly leftOutErrorDays: number;
};

/** The guesses that look best, so many of them, fitted and judged on seasons left out of their fit; the best first. */
export const judgedClocks = <Clock extends HeatClock>(
  recorded: RecordedSeasons,
  guesses: readonly Clock[],
  judgedCount: number,
): JudgedClock<Clock>[] =>
  guesses
    .map((clock) => ({ clock, errorDays: roughErrorDays(recorded, clock) }))
    .sort((a, b) => a.errorDays - b.errorDays)
    .slice(0, judgedCount)
    .flatMap(({ clock }) => {
      const fitted = fitClock(recorded, clock);
      if (fitted === null) return [];
      const leftOut = errorsLeftOut(recorded, clock);
      return [{ ...fitted, clock, leftOut, leftOutErrorDays: rootMeanSquare(leftOut) }];
    })
    .sort((a, b) => a.leftOutErrorDays - b.leftOutErrorDays);

/** What the mean day says of recorded first cuts: the mean, what it would be without each season, and the error in days of these, a root mean square. */
export function meanDay(firstCuts: readonly number[]): {
  readonly index: number;
  readonly leftOut: readonly number[];
  readonly leftOutErrorDays: number;
} {
  const index = firstCuts.reduce((sum, day) => sum + day, 0) / firstCuts.length;
  const leftOut = firstCuts.map((day) => (index * firstCuts.length - day) / (firstCuts.length - 1));
  return { index, leftOut, leftOutErrorDays: rootMeanSquare(leftOut.map((told, season) => told - firstCuts[season])) };
}
