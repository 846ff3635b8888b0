import { COLOURS } from "#lib/domain/words";
import type { ColourStems } from "#lib/plan/road/week-colours";
import { placed, weekCells } from "../season/ribbon/cells";

/** Width and height of a counted mark, in the picture's own units. */
export const PITCH = 12.2;

/** One mark of each kind as a pattern, once on a page that has counted rows: a row is then one rectangle for each run of a colour. */
export const CountedMarks = () => (
  <svg className="symbols counted" width="0" height="0" aria-hidden="true" focusable="false">
    <title>Drawings</title>
    <defs>
      {[...COLOURS, "ring" as const, "bought" as const].map((colour) => (
        <pattern key={colour} id={`count-${colour}`} width={PITCH} height={PITCH} patternUnits="userSpaceOnUse">
          <use
            href={colour === "ring" ? "#ring" : "#bloom"}
            className={colour === "ring" ? undefined : colour === "bought" ? "bought" : `f-${colour}`}
            x="0.5"
            y="0.5"
            width="11.2"
            height="11.2"
          />
        </pattern>
      ))}
    </defs>
  </svg>
);

type Props = {
  readonly covered: readonly ColourStems[];
  readonly shortStems: number;
  /** Stems that one mark stands for; the same all over a page, and said there. */
  readonly stemsPerMark: number;
  readonly marksARow?: number;
  /** What is missing is bought in: an open bloom for each mark in place of a ring. */
  readonly isBought?: boolean;
};

/** Stems counted out: blooms in the colours that are there, then a ring for each mark that is missing. Its label says the numbers. */
export function CountedRow({ covered, shortStems, stemsPerMark, marksARow = 42, isBought = false }: Props) {
  const coveredStems = covered.reduce((sum, { stems }) => sum + stems, 0);
  const needStems = coveredStems + shortStems;
  const { runs, cellCount } = weekCells({ needStems, shortStems, covered, unclaimed: [] }, stemsPerMark);
  const rows = Math.max(1, Math.ceil(cellCount / marksARow));
  const width = Math.max(1, Math.min(cellCount, marksARow)) * PITCH;
  return (
    <svg
      className="counted"
      width={width}
      height={rows * PITCH}
      viewBox={`0 0 ${width} ${rows * PITCH}`}
      role="img"
      aria-label={`${coveredStems} of ${needStems} stems covered${isBought ? ", the others bought in" : ""}`}
    >
      {placed(runs).map(({ run, first }) => (
        <path
          key={run.colour}
          fill={`url(#count-${isBought && run.colour === "ring" ? "bought" : run.colour})`}
          d={runPath(first, run.count, marksARow)}
        />
      ))}
    </svg>
  );
}

/** A run of marks as rectangles, one for each row that it touches. */
export function runPath(first: number, count: number, marksARow: number): string {
  let path = "";
  for (let mark = first; mark < first + count; ) {
    const column = mark % marksARow;
    const run = Math.min(marksARow - column, first + count - mark);
    path += `M${column * PITCH} ${Math.floor(mark / marksARow) * PITCH}h${run * PITCH}v${PITCH}h${-run * PITCH}z`;
    mark += run;
  }
  return path;
}
