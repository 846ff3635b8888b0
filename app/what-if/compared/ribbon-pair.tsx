import { inShort } from "#lib/domain/day";
import { countOf } from "#lib/plan/words/numbers";
import { type RibbonWeek, unitFor, weekCells } from "../../season/ribbon/cells";
import { type RibbonGeometry, stringPath, stringTop, weekLeft } from "../../season/ribbon/geometry";
import { RibbonPatterns } from "../../season/ribbon/ribbon";
import { RowMarks, WeekRow } from "../../season/ribbon/ribbon-rows";
import { WinterMarks } from "../../season/ribbon/winter-marks";
import type { TouchedWeek } from "./compared-plans";

const PITCH = 12;
const BLOOMS_A_ROW = 6;
const WEEK_WIDTH = PITCH * BLOOMS_A_ROW;
/** Room over the string for the number short. */
const TOP = 2 * PITCH;
/** Weeks side by side before the pair goes on in another line. */
const WEEKS_A_LINE = 11;
/** Rows of blooms that the week of most need may take; the unit follows. */
const MOST_ROWS = 10;

const MOST_MARKS = MOST_ROWS * BLOOMS_A_ROW;

/** Stems that a mark stands for in all pairs of a page: so many that the week of most need fits. */
export const pairUnit = (weeks: readonly TouchedWeek[]): number =>
  unitFor(Math.max(1, ...weeks.flatMap(({ before, after }) => [before.needStems, after.needStems])), MOST_MARKS);

type Props = {
  readonly weeks: readonly TouchedWeek[];
  /** What the lower ribbon supposes, in two or three words. */
  readonly supposed: string;
  /** Stems that a bloom or ring stands for; the same all over a page. */
  readonly unit: number;
};

/** One mark of each kind for the pairs of a page. */
export const PairMarks = () => (
  <>
    <svg className="ribbon pair-marks" width="0" height="0" aria-hidden="true">
      <RibbonPatterns geometry={{ pitch: PITCH, left: 0, soil: 0 }} />
    </svg>
    <RowMarks />
  </>
);

/** The weeks that change and no others: as they stand above, as supposed below, week under week. On a phone a row a week with both numbers. */
export function RibbonPair({ weeks, supposed, unit }: Props) {
  const lines = Array.from({ length: Math.ceil(weeks.length / WEEKS_A_LINE) }, (_, line) =>
    weeks.slice(line * WEEKS_A_LINE, (line + 1) * WEEKS_A_LINE),
  );
  return (
    <>
      {lines.map((line) => (
        <figure
          key={line[0].week}
          className="ribbon-pair"
          aria-label={`${countOf(line.length, "week")} that ${line.length === 1 ? "changes" : "change"}, as it stands and ${supposed}: the numbers stand in the table below`}
        >
          <span>as it stands</span>
          <ShortRibbon weeks={line} of="before" unit={unit} />
          <span>{supposed}</span>
          <ShortRibbon weeks={line} of="after" unit={unit} hasDates />
        </figure>
      ))}
      <ol className="ribbon-rows pair-rows">
        {weeks.map((week) => (
          <li key={week.week}>
            <a href={`/weeks/${week.week}`}>
              <span className="soft">{inShort(week.monday)}</span>
              <span className="ribbon-row">
                <WeekRow week={week.after} unit={unit} mostMarks={MOST_MARKS} />
              </span>
              <span className="soft">
                {week.before.shortStems} → <b className={wordOf(week.after)}>{week.after.shortStems}</b>
                <span className="visually-hidden"> short</span>
              </span>
            </a>
          </li>
        ))}
      </ol>
    </>
  );
}

const wordOf = ({ shortStems }: RibbonWeek): string => (shortStems > 0 ? "short-word" : "good-word");

type RibbonProps = Pick<Props, "weeks" | "unit"> & { readonly of: "before" | "after"; readonly hasDates?: boolean };

function ShortRibbon({ weeks, of, unit, hasDates }: RibbonProps) {
  const cells = weeks.map((week) => weekCells(week[of], unit));
  const most = Math.max(
    ...weeks.flatMap(({ before, after }) => [before, after].map((week) => weekCells(week, unit).cellCount)),
  );
  const geometry = pairGeometry(weeks.length, unit, Math.ceil(most / BLOOMS_A_ROW));
  const string = stringPath(geometry, cells);
  const height = geometry.soil + (hasDates ? 22 : 4);
  return (
    <svg
      className="ribbon"
      width={geometry.width}
      height={height}
      viewBox={`0 0 ${geometry.width} ${height}`}
      aria-hidden="true"
    >
      <path className="gr" d={string} />
      <WinterMarks geometry={geometry} weeks={weeks.map((week) => week[of])} cells={cells} />
      {cells.map((week, index) => (
        <g key={weeks[index].week}>
          {week.ringCount === 0 && week.cellCount > 0 && (
            <use
              className="pair-tick"
              href="#m-tick"
              x={weekLeft(geometry, index) + WEEK_WIDTH / 2 - 7}
              y={stringTop(geometry, week.cellCount) - 18}
              width="14"
              height="14"
            />
          )}
          {hasDates && (
            <text className="mn" x={weekLeft(geometry, index) + WEEK_WIDTH / 2} y={height - 4} textAnchor="middle">
              {inShort(weeks[index].monday)}
            </text>
          )}
        </g>
      ))}
      <rect className="so" y={geometry.soil} width={geometry.width} height="2" />
      <path className="st" d={string} />
    </svg>
  );
}

/** Both ribbons of a pair have the height of the week that asks most in either, so that they can be held against each other. */
function pairGeometry(weekCount: number, unit: number, rows: number): RibbonGeometry {
  const soil = TOP + Math.max(1, rows) * PITCH;
  return {
    width: weekCount * WEEK_WIDTH,
    height: soil,
    weekCount,
    unit,
    weekWidth: WEEK_WIDTH,
    pitch: PITCH,
    cellsARow: BLOOMS_A_ROW,
    left: 0,
    top: TOP,
    soil,
    stemsAtTop: rows * BLOOMS_A_ROW * unit,
  };
}
