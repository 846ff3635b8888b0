import type { BloomSeason, WarmthOfSeason } from "./bloom-season";
import { clockGuesses } from "./clock-guesses";
import { type FittedClock, RecordedSeasons, rootMeanSquare, startIndexOf } from "./fit-clock";
import { coldOfDays, easedBy, heatAddedUp, heatOfDay, indexOfSum } from "./heat-clock";
import { type JudgedClock, judgedClocks, meanDay } from "./judged-clocks";

/** A fitted clock and its say among others, a share of 1. */
type WeighedClock = JudgedClock & { readonly share: number };

/**
 * What recorded seasons teach about a first cut: the calendar mean (an index into a season), clocks of warmth with their shares, and the say the calendar mean
 * keeps among them. `clocks` is empty where nothing beats the calendar mean on seasons left out of the fit; then the mean alone is used. The best single clock comes first.
 * `usual` are the recorded seasons, for the weather that is still to come.
 */
export type LearnedClock = {
  readonly calendarIndex: number;
  readonly calendarShare: number;
  readonly clocks: readonly WeighedClock[];
  /** Root mean square error in days, each recorded season told by the clock or the calendar mean learned from the others. */
  readonly leftOut: { readonly calendarDays: number; readonly bestClockDays: number };
  readonly usual: readonly BloomSeason[];
};

/** Clocks that look worst are not looked at again: this many of the best go on to be judged on seasons left out. */
const JUDGED_COUNT = 150;
/** A say smaller than this share is not kept. */
const LEAST_SHARE = 0.001;

/**
 * Learns a first cut from recorded seasons. Every guessed clock is looked at; the best are fitted and judged by the error they make on seasons left out of their
 * fit, and share the answer by it: with `n` seasons and an error of `e` days a clock's say is in proportion to e to the power −n, as is the calendar mean's (weights from the left-out
 * log score of Gaussian errors: Yao, Vehtari, Simpson and Gelman, "Using stacking to average Bayesian predictive distributions", Bayesian Analysis 13(3), 2018, "pseudo-BMA").
 * A mixture keeps what several near equal clocks agree on, which one best clock on few years does not. Where the mixture fits the recorded
 * seasons worse than the calendar mean, the mean is used alone.
 * @throws RangeError if there are fewer than three seasons
 */
export function learnClock(seasons: readonly BloomSeason[]): LearnedClock {
  if (seasons.length < 3) throw new RangeError(`seasons must be at least three to learn from, got ${seasons.length}`);
  const recorded = new RecordedSeasons(seasons);
  const { index: calendarIndex, leftOutErrorDays: calendarDays } = meanDay(recorded.firstCuts);
  const judged = judgedClocks(recorded, clockGuesses(), JUDGED_COUNT).filter(
    ({ leftOutErrorDays }) => leftOutErrorDays < calendarDays,
  );
  const leftOut = { calendarDays, bestClockDays: judged[0]?.leftOutErrorDays ?? Number.POSITIVE_INFINITY };
  const alone = { calendarIndex, calendarShare: 1, clocks: [], leftOut, usual: seasons };
  if (judged.length === 0) return alone;
  const mixed = { ...alone, ...shares(judged, calendarDays, seasons.length) };
  const errorOf = (clock: LearnedClock) =>
    rootMeanSquare(seasons.map((season) => firstCutIndex(clock, season) - season.firstCutIndex));
  return errorOf(mixed) <= errorOf(alone) ? mixed : alone;
}

/**
 * The first cut of a season, as an index with its fraction of a day.
 * @param knownUntil  the last index whose weather is known; after it each clock meets the mean of the heat that the recorded seasons had on each day. The whole season when left out.
 */
export function firstCutIndex(
  learned: LearnedClock,
  season: WarmthOfSeason,
  knownUntil = Number.POSITIVE_INFINITY,
): number {
  return learned.clocks.reduce(
    (sum, weighed) => sum + weighed.share * toldBy(weighed, season, learned.usual, knownUntil),
    learned.calendarShare * learned.calendarIndex,
  );
}

function toldBy(
  { clock, sum }: FittedClock,
  { meanC }: WarmthOfSeason,
  usual: readonly BloomSeason[],
  knownUntil: number,
): number {
  const known = (ofDay: Float64Array, make: (meanC: Float64Array) => Float64Array) =>
    knownUntil >= meanC.length - 1
      ? ofDay
      : splice(
          ofDay,
          usual.map((season) => make(season.meanC)),
          knownUntil,
        );
  const heatOf = (course: Float64Array) => course.map((warmth) => heatOfDay(warmth, clock.response));
  const heat = heatAddedUp(known(heatOf(meanC), heatOf));
  const eased = easedBy(known(coldOfDays(meanC), coldOfDays), clock.fallPerDay, clock.fallPerColdDay);
  return indexOfSum({ heat, eased }, startIndexOf(clock), sum);
}

/** A course as it was until `knownUntil`, and after it the mean of others. */
const splice = (ofDay: Float64Array, others: readonly Float64Array[], knownUntil: number): Float64Array =>
  ofDay.map((own, index) =>
    index <= knownUntil ? own : others.reduce((sum, other) => sum + other[index], 0) / others.length,
  );

/** Shares by left-out error, the calendar mean among them; small ones dropped and the rest made up to 1. */
function shares(judged: readonly JudgedClock[], calendarDays: number, seasonCount: number) {
  const best = judged[0].leftOutErrorDays;
  const say = (errorDays: number) => (Math.max(best, 1e-9) / Math.max(errorDays, 1e-9)) ** seasonCount;
  const all = say(calendarDays) + judged.reduce((sum, { leftOutErrorDays }) => sum + say(leftOutErrorDays), 0);
  const heard = judged.filter(({ leftOutErrorDays }) => say(leftOutErrorDays) / all >= LEAST_SHARE);
  const whole = say(calendarDays) + heard.reduce((sum, { leftOutErrorDays }) => sum + say(leftOutErrorDays), 0);
  return {
    calendarShare: say(calendarDays) / whole,
    clocks: heard.map((clock) => ({ ...clock, share: say(clock.leftOutErrorDays) / whole })),
  };
}
