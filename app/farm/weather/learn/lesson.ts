import { toDay, yearOf } from "#lib/domain/day";
import { type BloomCurve, CURVE } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import { NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import { type KnownPoint, knownPoint } from "#lib/plan/learning/known-point";
import { curveOfClock, curveOfMean } from "#lib/plan/learning/learned-curve";
import { recordedSeasons } from "#lib/plan/learning/recorded-seasons";
import { unusableInWords } from "#lib/plan/words/clock-words";
import { inWholes } from "#lib/plan/words/numbers";
import { readFirstCuts } from "#lib/sheets/first-cuts-sheet";

/** What first cuts teach of a curve, or why they teach nothing; either way what was left out of them, in words. */
export type Lesson =
  | {
      readonly ok: true;
      readonly point: KnownPoint;
      readonly byMean: BloomCurve;
      /** Null where warmth tells no better than the mean day, or the farm has no climate to hold a clock. */
      readonly byClock: BloomCurve | null;
      readonly needsClimate: boolean;
      readonly leftOut: readonly string[];
    }
  | { readonly ok: false; readonly because: string; readonly leftOut: readonly string[] };

const LEAST_SEASONS = 3;

/** Curves that first cuts alone can teach: those of a day of the year. What is planted anew each year needs its planting days as well. */
export const canLearn = ({ anchor }: BloomCurve): boolean => anchor.kind === "day-of-year";

/** Learns from first cuts as they were typed and the weather that the farm has. */
export function lessonOf({ farm, weather, curves }: Snapshot, curveId: number, dates: string): Lesson {
  if (dates.length > MOST_LETTERS) return { ok: false, because: TOO_LONG, leftOut: [] };
  const { rows, problems } = readFirstCuts(dates);
  const wrongLines = problems.map(({ line, message }) => `line ${line}: ${message}`);
  const no = (because: string, leftOut = wrongLines): Lesson => ({ ok: false, because, leftOut });
  const curve = curves.find(({ id }) => id === curveId);
  if (!curve || !canLearn(curve)) return no("choose one of the curves in the list");
  if (weather === null) return no("bring in the weather of these years first");
  const [first, last] = [weather.firstDay, weather.firstDay + weather.highC.length - 1].map((day) =>
    yearOf(toDay(day)),
  );
  const years = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const found = seasonsIn(weather, rows, years);
  if (found === null)
    return no("every fortnight from September to December of the next year must have weather: bring in more of it");
  const { seasons, leftOut } = found;
  const all = [...wrongLines, ...leftOut.map((cut) => `${cut.year}: ${unusableInWords(cut)}`)];
  if (seasons.length < LEAST_SEASONS)
    return no(
      `at least ${LEAST_SEASONS} first cuts with their weather are needed, and there are ${seasons.length}`,
      all,
    );
  const point = knownPoint(seasons);
  if (Math.round(point.meanIndex) < NEW_YEAR_INDEX)
    return no("on the mean these first cuts come before New Year, and a curve begins in the year of its season", all);
  if (point.meanErrorDays > MOST_SPREAD_DAYS)
    return no(
      `the mean day misses these first cuts by more than ${MOST_SPREAD_DAYS} days: no one curve tells them`,
      all,
    );
  const byClock = farm.climate && curveOfClock(curve, point, farm.climate);
  const needsClimate = farm.climate === null && point.clock !== null;
  return { ok: true, point, byMean: curveOfMean(curve, point), byClock, needsClimate, leftOut: all };
}

/** The seasons of first cuts; null where the weather never says what some fortnight of the year is usually like. */
function seasonsIn(...asked: Parameters<typeof recordedSeasons>): ReturnType<typeof recordedSeasons> | null {
  try {
    return recordedSeasons(...asked);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** No curve can hold a wider spread of its first cut. */
const MOST_SPREAD_DAYS = CURVE.firstCutSpreadDays.limits?.most ?? 0;

/** Five centuries of first cuts, each with its year. */
const MOST_LETTERS = 8000;
const TOO_LONG = `these first cuts are longer than ${inWholes(MOST_LETTERS)} letters: leave out other columns, and years without weather`;
