import { type Day, inShort, monthInShort, withWeekday } from "#lib/domain/day";
import { inWholes } from "#lib/plan/words/numbers";
import { PITCH, runPath } from "../look/counted-row";
import { placed, unitFor, weekCells } from "../season/ribbon/cells";
import type { OtherDayView } from "./answer/answer-lines";

const MARKS_A_ROW = 3;
/** A day's place in the picture: three marks and a gap. */
const COLUMN = PITCH * 4;
/** Rows of marks up to the string: more where the picture leads the page. */
const MOST_ROWS = { isAsked: 8, isOpen: 16 };
const TOP = 26;
const BELOW = 30;

type Props = {
  all: readonly Day[];
  known: readonly OtherDayView[];
  /** Stems at the string. */
  top: number;
  /** Stems were asked for: days that have all of them are marked. */
  isAsked: boolean;
  asked: Day | null;
  /** Few days, drawn large; elsewhere all of them are. */
  isForPhone?: boolean;
};

/** Each day's likely stems counted up to the string, in their own colours, a tick over those that can promise all. A picture: the table has the numbers. */
export function DayColumns({ all, known, top, isAsked, asked, isForPhone = false }: Props) {
  const mostRows = isAsked ? MOST_ROWS.isAsked : MOST_ROWS.isOpen;
  const unit = unitFor(top, mostRows * MARKS_A_ROW);
  const rows = Math.max(1, Math.ceil(Math.round(top / unit) / MARKS_A_ROW));
  const soil = TOP + rows * PITCH;
  const width = Math.max(1, all.length) * COLUMN;
  const ofDay = new Map(known.map((day) => [day.day, day]));
  const full = known.filter(({ promisedStems }) => isAsked && promisedStems >= top).map(({ day }) => withWeekday(day));
  return (
    <figure className={isForPhone ? "day-columns for-phone" : "day-columns"}>
      <svg
        viewBox={`0 0 ${width} ${soil + BELOW}`}
        role="img"
        aria-label={
          isAsked
            ? `Likely stems of ${inWholes(top)} asked, day by day; all can be promised on ${full.join(", ") || "none"}`
            : "Stems that nobody has claimed, day by day"
        }
      >
        <path className="day-ground" d={`M0 ${TOP}H${width}V${soil}H0z`} />
        {all.map((day, index) => (
          <g key={day} transform={`translate(${index * COLUMN} 0)`}>
            {day === asked && <rect className="day-asked" x={-4} y={2} width={COLUMN - 4} height={soil + BELOW - 4} />}
            {isFirstOfMonth(all, index) && isAway(all, index, asked) && <text y={soil + 19}>{monthInShort(day)}</text>}
            {day === asked && (
              <text className="day-asked-name" x={COLUMN / 2 - 6} y={soil + 19} textAnchor="middle">
                {inShort(day)}
              </text>
            )}
            <Marks day={ofDay.get(day)} unit={unit} soil={soil} top={top} isAsked={isAsked} />
          </g>
        ))}
        <path className="day-string" d={`M0 ${TOP}H${width}`} />
        <path className="day-soil" d={`M0 ${soil}H${width}`} />
      </svg>
      <figcaption className="note">
        The string: {inWholes(top)} stems{isAsked ? " asked" : ""}. A bloom is {unit === 1 ? "a stem" : `${unit} stems`}{" "}
        likely in an ordinary year.
        {isAsked && " A tick: all can be promised; a half ring: all is likely."}
      </figcaption>
    </figure>
  );
}

const isFirstOfMonth = (days: readonly Day[], index: number): boolean =>
  index === 0 ? days[1]?.slice(5, 7) === days[0].slice(5, 7) : days[index - 1].slice(5, 7) !== days[index].slice(5, 7);

/** The name of the day asked needs the room beside it. */
const isAway = (days: readonly Day[], index: number, asked: Day | null): boolean =>
  asked === null || !days.slice(Math.max(0, index - 1), index + 2).includes(asked);

type MarksProps = { day: OtherDayView | undefined; unit: number; soil: number; top: number; isAsked: boolean };

/** The marks of a day from the soil up, row by row; no more than reach the string. */
function Marks({ day, unit, soil, top, isAsked }: MarksProps) {
  if (!day) return null;
  const needStems = Math.min(day.likelyStems, top);
  const { runs } = weekCells({ needStems, shortStems: 0, covered: day.colours, unclaimed: [] }, unit);
  const sign = isAsked && (day.promisedStems >= top ? "tick" : day.likelyStems >= top ? "risk" : null);
  return (
    <>
      {placed(runs).map(({ run, first }) => (
        <path
          key={run.colour}
          fill={`url(#count-${run.colour})`}
          d={runPath(first, run.count, MARKS_A_ROW)}
          transform={`translate(0 ${soil}) scale(1 -1)`}
        />
      ))}
      {sign && (
        <svg className={sign} x={8} y={4} width="18" height="18" aria-hidden="true">
          <use href={`#m-${sign}`} />
        </svg>
      )}
    </>
  );
}
