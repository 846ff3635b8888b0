import { type BloomSeason, NEW_YEAR_INDEX } from "./bloom-season";
import {
  coldOfDays,
  easedBy,
  type HeatClock,
  heatAddedUp,
  heatOfDay,
  indexOfSum,
  reachedAt,
  type SeasonCourse,
  type WarmthResponse,
} from "./heat-clock";

/** A clock fitted to recorded seasons: the sum it asks for, and its error in days (root mean square) on the seasons it was fitted to. */
export type FittedClock = { readonly clock: HeatClock; readonly sum: number; readonly errorDays: number };

/** Recorded seasons, with what many clocks ask of them made once: heat by response, easing by fall. */
export class RecordedSeasons {
  readonly seasons: readonly BloomSeason[];
  readonly firstCuts: readonly number[];
  readonly #heat = new Map<string, Float64Array[]>();
  readonly #eased = new Map<string, Float64Array[]>();

  constructor(seasons: readonly BloomSeason[]) {
    this.seasons = seasons;
    this.firstCuts = seasons.map(({ firstCutIndex }) => firstCutIndex);
  }

  /** How each season runs by this clock, in the order of the seasons. */
  courses(clock: HeatClock): SeasonCourse[] {
    const heat = kept(this.#heat, JSON.stringify(clock.response), () => this.#heatOf(clock.response));
    const eased = kept(this.#eased, `${clock.fallPerDay} ${clock.fallPerColdDay}`, () =>
      this.seasons.map(({ meanC }) => easedBy(coldOfDays(meanC), clock.fallPerDay, clock.fallPerColdDay)),
    );
    return heat.map((added, season) => ({ heat: added, eased: eased[season] }));
  }

  #heatOf = (response: WarmthResponse): Float64Array[] =>
    this.seasons.map(({ meanC }) => heatAddedUp(meanC.map((warmth) => heatOfDay(warmth, response))));
}

/** The index in a season on which a clock begins to count. */
export const startIndexOf = (clock: HeatClock): number => NEW_YEAR_INDEX + clock.startDay;

/**
 * Fits the sum of a clock so that its errors in days average out to nothing over the seasons; null when no season has any heat by its recorded day.
 */
export function fitClock(recorded: RecordedSeasons, clock: HeatClock): FittedClock | null {
  const courses = recorded.courses(clock);
  const start = startIndexOf(clock);
  const sum = levelSumOf(courses, recorded.firstCuts, start, -1);
  if (sum === null) return null;
  const errors = courses.map((course, season) => indexOfSum(course, start, sum) - recorded.firstCuts[season]);
  return { clock, sum, errorDays: rootMeanSquare(errors) };
}

/**
 * A first look at a clock, cheap: its error in days with the sum that is the geometric mean of what the seasons had reached by their recorded
 * days. Infinite when a season had reached nothing.
 */
export function roughErrorDays(recorded: RecordedSeasons, clock: HeatClock): number {
  const courses = recorded.courses(clock);
  const start = startIndexOf(clock);
  let logs = 0;
  for (let season = 0; season < courses.length; season++)
    logs += Math.log(reachedAt(courses[season], start, recorded.firstCuts[season]));
  const sum = Math.exp(logs / courses.length);
  if (!(sum > 0)) return Number.POSITIVE_INFINITY;
  return rootMeanSquare(courses.map((course, season) => indexOfSum(course, start, sum) - recorded.firstCuts[season]));
}

/** For each season, the error in days of the clock fitted to all the others: an honest error, since no season informs its own. */
export function errorsLeftOut(recorded: RecordedSeasons, clock: HeatClock): number[] {
  const courses = recorded.courses(clock);
  const start = startIndexOf(clock);
  return courses.map((course, season) => {
    const sum = levelSumOf(courses, recorded.firstCuts, start, season);
    return sum === null ? Number.POSITIVE_INFINITY : indexOfSum(course, start, sum) - recorded.firstCuts[season];
  });
}

export const rootMeanSquare = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);

/** Halvings of the sum's logarithm: the day it gives is settled to well under an hour. */
const HALVINGS = 18;

/**
 * The sum at which errors in days average out to nothing [H2]; null where no season had any heat by its first cut.
 * @param reached   the heat of each season by its first cut
 * @param lateness  by how many days a sum tells the first cuts too late, all added up
 */
export function levelSum(reached: readonly number[], lateness: (sum: number) => number): number | null {
  const high = Math.max(...reached);
  if (!(high > 0)) return null;
  let least = Math.log(Math.max(Math.min(...reached), high * 1e-6));
  let most = Math.log(high);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (least + most) / 2;
    if (lateness(Math.exp(middle)) < 0) least = middle;
    else most = middle;
  }
  return Math.exp((least + most) / 2);
}

/** That sum of courses that begin on one day, the season `leftOut` not looked at (-1: none). */
function levelSumOf(
  courses: readonly SeasonCourse[],
  firstCuts: readonly number[],
  start: number,
  leftOut: number,
): number | null {
  const seen = [...courses.keys()].filter((season) => season !== leftOut);
  return levelSum(
    seen.map((season) => reachedAt(courses[season], start, firstCuts[season])),
    (sum) => seen.reduce((late, season) => late + indexOfSum(courses[season], start, sum) - firstCuts[season], 0),
  );
}

function kept<T>(known: Map<string, T>, key: string, make: () => T): T {
  let found = known.get(key);
  if (found === undefined) {
    found = make();
    known.set(key, found);
  }
  return found;
}
