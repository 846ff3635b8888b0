import { inFull, toDay, yearOf } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import type { DailyWeather } from "#lib/domain/weather";
import { NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import type { PlantedFirstCut } from "#lib/plan/learning/first-cuts-on-record";
import { type KnownPoint, knownPoint } from "#lib/plan/learning/known-point";
import { curveOfClock, curveOfMean } from "#lib/plan/learning/learned-curve";
import type { PlantedPoint } from "#lib/plan/learning/planted-point";
import { recordedSeasons } from "#lib/plan/learning/recorded-seasons";
import { unusableInWords } from "#lib/plan/words/clock-words";
import { inWholes } from "#lib/plan/words/numbers";
import { readFirstCuts } from "#lib/sheets/first-cuts-sheet";
import { MOST_SPREAD_DAYS, plantedLesson, plantedSeasons } from "./planted-lesson";

/** What first cuts teach of a curve, or why they teach nothing; either way what was left out of them, in words. */
export type Lesson =
  | ({
      readonly ok: true;
      readonly byMean: BloomCurve;
      /** Null where warmth tells no better than the mean, or the farm has no climate to hold a clock. */
      readonly byClock: BloomCurve | null;
      readonly needsClimate: boolean;
      readonly leftOut: readonly string[];
    } & ({ readonly point: KnownPoint } | { readonly planted: PlantedPoint }))
  | { readonly ok: false; readonly because: string; readonly leftOut: readonly string[] };

const LEAST_SEASONS = 3;

/** Learns from first cuts as they were typed and the weather that the farm has. */
export function lessonOf({ farm, weather, curves }: Snapshot, curveId: number, dates: string): Lesson {
  if (dates.length > MOST_LETTERS) return { ok: false, because: TOO_LONG, leftOut: [] };
  const { rows, problems } = readFirstCuts(dates);
  const wrongLines = problems.map(({ line, message }) => `line ${line}: ${message}`);
  const no = (because: string, leftOut = wrongLines): Lesson => ({ ok: false, because, leftOut });
  const curve = curves.find(({ id }) => id === curveId);
  if (!curve) return no("choose one of the curves in the list");
  if (weather === null) return no("bring in the weather of these years first");
  const [first, last] = [weather.firstDay, weather.firstDay + weather.highC.length - 1].map((day) =>
    yearOf(toDay(day)),
  );
  const years = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const isPlanted = curve.anchor.kind === "days-after-planting";
  const told = isPlanted ? rows.filter(({ plantedOn }) => plantedOn !== undefined) : oncePerYear(rows);
  const found = seasonsIn(weather, told, years);
  if (found === null)
    return no("every fortnight from September to December of the next year must have weather: bring in more of it");
  const { seasons, leftOut } = found;
  const unplanted = isPlanted ? rows.filter(({ plantedOn }) => plantedOn === undefined) : [];
  const all = [
    ...wrongLines,
    ...leftOut.map((cut) => `${cut.year}: ${unusableInWords(cut)}`),
    ...unplanted.map(({ firstCut }) => `${inFull(firstCut)}: write the planting day before it`),
  ];
  if (isPlanted) return plantedLesson(farm, curve, plantedSeasons(seasons, found.rows), all);
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

/** The first of each year, of a curve that goes by the year alone. */
const oncePerYear = (rows: readonly PlantedFirstCut[]): PlantedFirstCut[] =>
  rows.filter(({ year }, index) => rows.findIndex((other) => other.year === year) === index);

/** The seasons of first cuts; null where the weather never says what some fortnight of the year is usually like. */
function seasonsIn(weather: DailyWeather, rows: readonly PlantedFirstCut[], years: readonly number[]) {
  try {
    return recordedSeasons(weather, rows, years);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Five centuries of first cuts, each with its year. */
export const MOST_LETTERS = 8000;
export const TOO_LONG = `these first cuts are longer than ${inWholes(MOST_LETTERS)} letters: leave out other columns, and years without weather`;
