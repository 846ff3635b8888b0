import { ticks } from "d3-array";
import { type Day, inShort, monthInWords, toDayNumber } from "#lib/domain/day";
import { COLOURS } from "#lib/domain/words";
import { inWords } from "#lib/plan/words/numbers";
import { type RibbonWeek, type WeekCells, weekCells } from "./cells";
import { type RibbonGeometry, ribbonGeometry, stringPath, stringTop, weekLeft } from "./geometry";
import { patternOf, WinterMarks } from "./winter-marks";

/** One way the winter may go, drawn over the same need. `key` names its group for the switch. */
export type RibbonWinter = { readonly key: string; readonly weeks: readonly RibbonWeek[] };

type Props = {
  readonly label: string;
  readonly mondays: readonly Day[];
  readonly winters: readonly RibbonWinter[];
  /** The first frost, drawn when it lies in the weeks shown. */
  readonly frostDay: Day;
  readonly children?: React.ReactNode;
};

/**
 * The season ribbon: the string of need over each week, blooms in their own colours up to it, bare ground with rings where they are missing, and under the soil
 * line what nobody has claimed. Marks are a pattern of one bloom, filled into runs of cells, so a season is a few kilobytes. `children` are the weeks' links, laid over it.
 */
export function Ribbon({ label, mondays, winters, frostDay, children }: Props) {
  const needs = winters[0]?.weeks.map(({ needStems }) => needStems) ?? [];
  const geometry = ribbonGeometry(mondays.length, Math.max(1, ...needs));
  const drawn = winters.map(({ key, weeks }) => ({
    key,
    weeks,
    cells: weeks.map((week) => weekCells(week, geometry.unit)),
  }));
  const string = stringPath(geometry, drawn[0]?.cells ?? []);
  return (
    // biome-ignore lint/a11y/useSemanticElements: an svg that groups links has no element of its own
    <svg
      className="ribbon"
      viewBox={`0 0 ${geometry.width} ${Math.round(geometry.height)}`}
      role="group"
      aria-label={label}
    >
      <RibbonPatterns geometry={geometry} />
      <Months geometry={geometry} mondays={mondays} />
      <Axis geometry={geometry} />
      <Frost geometry={geometry} mondays={mondays} frostDay={frostDay} />
      <rect
        className="so"
        x={geometry.left - 4}
        y={geometry.soil}
        width={geometry.width - geometry.left - 2}
        height="2.5"
      />
      <path className="gr" d={string} />
      {drawn.map(({ key, weeks, cells }) => (
        // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of marks is not focusable
        <g key={key} className={`winter winter-${key}`} aria-hidden="true">
          <WinterMarks geometry={geometry} weeks={weeks} cells={cells} />
          <Brackets geometry={geometry} weeks={weeks} cells={cells} />
        </g>
      ))}
      <path className="st" d={string} />
      {children}
    </svg>
  );
}

/** Three or more short weeks in a row get a bracket with their sum. */
function Brackets({
  geometry,
  weeks,
  cells,
}: {
  geometry: RibbonGeometry;
  weeks: readonly RibbonWeek[];
  cells: readonly WeekCells[];
}) {
  return shortRuns(weeks).map(([first, last]) => {
    const sum = weeks.slice(first, last + 1).reduce((total, { shortStems }) => total + shortStems, 0);
    const top = Math.min(...cells.slice(first, last + 1).map(({ cellCount }) => stringTop(geometry, cellCount))) - 30;
    const [left, right] = [weekLeft(geometry, first) + 2, weekLeft(geometry, last + 1) - 2];
    return (
      <g key={first}>
        <path className="br" d={`M${left} ${top + 6}v-6H${right}v6`} />
        <text className="bt" x={(left + right) / 2} y={top - 8} textAnchor="middle">
          {sum} short in {inWords(last - first + 1)} weeks
        </text>
      </g>
    );
  });
}

function shortRuns(weeks: readonly RibbonWeek[]): [number, number][] {
  const runs: [number, number][] = [];
  let first = -1;
  for (let week = 0; week <= weeks.length; week++) {
    const isShort = week < weeks.length && weeks[week].shortStems > 0;
    if (isShort && first < 0) first = week;
    if (!isShort && first >= 0) {
      if (week - first >= 3) runs.push([first, week - 1]);
      first = -1;
    }
  }
  return runs;
}

/** One mark of each kind, tiled from the first week's corner on the soil. */
export function RibbonPatterns({
  geometry: { pitch, left, soil },
}: {
  geometry: Pick<RibbonGeometry, "pitch" | "left" | "soil">;
}) {
  const tile = { x: left, y: soil, width: pitch, height: pitch, patternUnits: "userSpaceOnUse" } as const;
  const middle = `translate(${pitch / 2} ${pitch / 2}) scale(${pitch / 9.9})`;
  return (
    <defs>
      {COLOURS.flatMap((colour) =>
        [false, true].map((isKept) => (
          <pattern key={`${colour}${isKept}`} id={patternOf({ colour, isKept })} {...tile}>
            <g className={`f-${colour}${isKept ? " kept" : ""}`}>
              <use href="#cell-bloom" transform={middle} />
            </g>
          </pattern>
        )),
      )}
      <pattern id="cell-ring" {...tile}>
        <use href="#cell-ring-mark" transform={middle} />
      </pattern>
    </defs>
  );
}

function Months({ geometry, mondays }: { geometry: RibbonGeometry; mondays: readonly Day[] }) {
  return mondays.flatMap((monday, week) => {
    const month = monday.slice(5, 7);
    if (week > 0 && mondays[week - 1].slice(5, 7) === month) return [];
    const x = weekLeft(geometry, week);
    return [
      <g key={monday}>
        <path className="mo" d={`M${x} ${geometry.top - 12}V${geometry.soil + 28}`} />
        <text className="mn" x={x + 5} y={geometry.soil + 41}>
          {monthInWords(monday)}
        </text>
      </g>,
    ];
  });
}

function Axis({ geometry }: { geometry: RibbonGeometry }) {
  const { left, soil, pitch, unit, width, top } = geometry;
  const y = (stems: number) => soil - (stems / unit / 3) * pitch;
  return (
    <>
      <text className="at" x={left - 9} y={top - 14} textAnchor="end">
        stems
      </text>
      {ticks(0, geometry.stemsAtTop, 5)
        .filter((stems) => stems > 0)
        .map((stems) => (
          <g key={stems}>
            <path className="ax" d={`M${left - 6} ${y(stems)}h5M${width - 8} ${y(stems)}h5`} />
            <text className="at" x={left - 9} y={y(stems) + 4} textAnchor="end">
              {stems}
            </text>
          </g>
        ))}
    </>
  );
}

function Frost({ geometry, mondays, frostDay }: { geometry: RibbonGeometry; mondays: readonly Day[]; frostDay: Day }) {
  if (mondays.length === 0) return null;
  const weeks = (toDayNumber(frostDay) - toDayNumber(mondays[0])) / 7;
  if (weeks < 0 || weeks > mondays.length) return null;
  const x = geometry.left + weeks * geometry.weekWidth;
  return (
    <g>
      <path className="fr" d={`M${x} ${geometry.top - 22}V${geometry.soil + 17}`} />
      <text className="mn" x={x + 6} y={geometry.top - 13}>
        first frost, {inShort(frostDay)}
      </text>
    </g>
  );
}
