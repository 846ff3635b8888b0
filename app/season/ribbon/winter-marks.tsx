import { type CellRun, placed, type RibbonWeek, type WeekCells } from "./cells";
import { cellPath, dotPath, dotStep, holePath, type RibbonGeometry, stringTop, weekLeft } from "./geometry";

type Props = {
  readonly geometry: RibbonGeometry;
  readonly weeks: readonly RibbonWeek[];
  readonly cells: readonly WeekCells[];
};

/**
 * Every week's hole, blooms and rings, dots below the soil line, and stems short over the string. A path for each kind of mark over all weeks, not
 * one for each week: a season is then a few kilobytes, and quick to lay out.
 */
export function WinterMarks({ geometry, weeks, cells }: Props) {
  const blooms = byKind(cells, ({ runs }) => runs, cellPath, geometry);
  const dots = byKind(cells, ({ dots }) => dots, dotPath, geometry);
  const step = dotStep(geometry);
  return (
    <>
      <path className="ho" d={cells.map((week, index) => holePath(geometry, index, week)).join("")} />
      {blooms.map(({ run, path }) => (
        <path
          key={keyOf(run)}
          className={run.isKept ? "kept-bloom" : undefined}
          fill={`url(#${patternOf(run)})`}
          d={path}
        />
      ))}
      {dots.map(({ run, path }) => (
        <g key={keyOf(run)} className={`f-${run.colour}`} strokeDasharray={`0 ${step}`}>
          <path className="dot-edge" d={path} />
          <path className="dot" d={path} />
        </g>
      ))}
      <path className="cl" d={cells.map((week, index) => (week.hasMoreDots ? wedge(geometry, index) : "")).join("")} />
      {weeks.map(({ shortStems }, week) =>
        shortStems === 0 ? null : (
          <text
            // biome-ignore lint/suspicious/noArrayIndexKey: weeks stand in their order and never move
            key={week}
            className="no"
            x={Math.round(weekLeft(geometry, week) + geometry.weekWidth / 2)}
            y={Math.round(stringTop(geometry, cells[week].cellCount) - 5)}
            textAnchor="middle"
            fontSize={(11 + 0.5 * Math.sqrt(shortStems)).toFixed(1)}
          >
            {shortStems}
          </text>
        ),
      )}
    </>
  );
}

type PathOf = (geometry: RibbonGeometry, week: number, first: number, count: number) => string;

/** The marks of all weeks, those of one colour (from a kept bed or not) in one path. */
function byKind(
  cells: readonly WeekCells[],
  runsOf: (week: WeekCells) => readonly CellRun[],
  pathOf: PathOf,
  geometry: RibbonGeometry,
): { readonly run: CellRun; readonly path: string }[] {
  const kinds = new Map<string, { run: CellRun; path: string }>();
  cells.forEach((week, index) => {
    for (const { run, first } of placed(runsOf(week))) {
      const kind = kinds.get(keyOf(run)) ?? { run, path: "" };
      kind.path += pathOf(geometry, index, first, run.count);
      kinds.set(keyOf(run), kind);
    }
  });
  return [...kinds.values()];
}

const keyOf = (run: CellRun): string => `${run.colour}${run.isKept ? " kept" : ""}`;

/** The pattern of a mark, among those of `RibbonPatterns`. */
export const patternOf = (run: Pick<CellRun, "colour" | "isKept">): string =>
  `cell-${run.colour}${run.isKept ? "-kept" : ""}`;

/** More is unclaimed in the week than is drawn. */
const wedge = (geometry: RibbonGeometry, week: number): string =>
  `M${Math.round(weekLeft(geometry, week) + geometry.weekWidth / 2 - 4)} ${Math.round(geometry.soil + 17)}l4 3.4l4 -3.4`;
