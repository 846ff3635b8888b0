import type { Colour } from "#lib/domain/words";
import { apportion } from "#lib/maths/apportion";
import type { ColourStems } from "#lib/plan/road/week-colours";

/** What the ribbon draws of one week: whole stems of one role. */
export type RibbonWeek = {
  readonly needStems: number;
  readonly shortStems: number;
  readonly covered: readonly ColourStems[];
  readonly unclaimed: readonly ColourStems[];
};

/** Marks of one kind, one after the other: blooms of a colour (from a kept bed or not), or rings for what is missing. */
export type CellRun = { readonly colour: Colour | "ring"; readonly isKept: boolean; readonly count: number };

/** A week in marks: from the soil up, row by row from the left, `runs` in order; then dots below the soil line, and whether there are more than are drawn. */
export type WeekCells = {
  readonly cellCount: number;
  readonly ringCount: number;
  readonly runs: readonly CellRun[];
  readonly dots: readonly CellRun[];
  readonly hasMoreDots: boolean;
};

/** Blooms side by side in a week. */
export const CELLS_A_ROW = 3;
/** Dots of unclaimed stems side by side, and rows of them. */
export const DOTS_A_ROW = 7;
const MOST_DOTS = 2 * DOTS_A_ROW;

/** Stems that one mark may stand for; the smallest that keeps the highest week within `MOST_ROWS`. */
const UNITS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const MOST_ROWS = 36;

/** Pale below, deep above: white never lies against the hole, and neighbouring weeks run into drifts. */
const FROM_THE_SOIL: readonly Colour[] = [
  "white",
  "cream",
  "blush",
  "peach",
  "apricot",
  "silver",
  "lavender",
  "pink",
  "coral",
  "yellow",
  "orange",
  "green",
  "blue",
  "bronze",
  "red",
  "purple",
  "burgundy",
  "plum",
];

/** Stems a mark stands for, so that the week of most need fits. It hangs on need alone, so it stays while winters are compared. */
export const stemsPerMark = (mostNeedStems: number): number => unitFor(mostNeedStems, CELLS_A_ROW * MOST_ROWS);

/** The smallest unit, of 1, 2, 5, 10 and so on, by which so many stems are so many marks or fewer. */
export const unitFor = (stems: number, mostMarks: number): number =>
  UNITS.find((unit) => stems / unit <= mostMarks) ?? UNITS[UNITS.length - 1];

/**
 * A week in whole marks. A week with need has one mark at least, and one ring at least when it is short; the other marks are shared over the covered
 * colours by largest remainder, blooms of kept beds last, so that they lie where the hole was.
 */
export function weekCells(week: RibbonWeek, unit: number): WeekCells {
  const cellCount = week.needStems > 0 ? Math.max(1, Math.round(week.needStems / unit)) : 0;
  const coveredStems = week.needStems - week.shortStems;
  const ringCount = week.shortStems > 0 ? Math.max(1, cellCount - Math.round(coveredStems / unit)) : 0;
  const blooms = coveredStems > 0 ? Math.max(0, cellCount - ringCount) : 0;
  const unclaimedStems = week.unclaimed.reduce((sum, { stems }) => sum + stems, 0);
  const dotCount = Math.round(unclaimedStems / unit);
  return {
    cellCount,
    ringCount,
    runs: [...shared(week.covered, blooms), ...rings(ringCount)],
    dots: shared(week.unclaimed, Math.min(dotCount, MOST_DOTS)),
    hasMoreDots: dotCount > MOST_DOTS,
  };
}

const rings = (count: number): CellRun[] => (count > 0 ? [{ colour: "ring", isKept: false, count }] : []);

function shared(stems: readonly ColourStems[], count: number): CellRun[] {
  if (count === 0 || stems.length === 0) return [];
  const inOrder = [...stems].sort(
    (a, b) => Number(a.isKept) - Number(b.isKept) || FROM_THE_SOIL.indexOf(a.colour) - FROM_THE_SOIL.indexOf(b.colour),
  );
  const counts = apportion(
    count,
    inOrder.map((row) => row.stems),
  );
  return inOrder.flatMap(({ colour, isKept }, index) =>
    counts[index] > 0 ? [{ colour, isKept, count: counts[index] }] : [],
  );
}

/** Runs one after the other, each with the place of its first mark. */
export function placed(runs: readonly CellRun[]): { readonly run: CellRun; readonly first: number }[] {
  let next = 0;
  return runs.map((run) => {
    const first = next;
    next += run.count;
    return { run, first };
  });
}
