import { type Day, type IsoWeek, monthInWords } from "#lib/domain/day";
import { COLOURS } from "#lib/domain/words";
import { StateSign } from "../../ui/state-sign";
import { placed, type RibbonWeek, stemsPerMark, weekCells } from "./cells";
import type { RibbonWinter } from "./ribbon";
import { patternOf } from "./winter-marks";

type Props = {
  readonly weeks: readonly { readonly week: IsoWeek; readonly monday: Day }[];
  readonly winters: readonly RibbonWinter[];
  readonly mostNeedStems: number;
};

/** Marks in a row at the most: two high, so half of them side by side. */
const MOST_MARKS = 54;
const STEP = 10;
const TILE = { width: STEP, height: STEP, patternUnits: "userSpaceOnUse" } as const;

/** The ribbon turned for a phone: weeks with need run down, blooms run right two high, the string stands at the end, the number short or a tick. */
export function RibbonRows({ weeks, winters, mostNeedStems }: Props) {
  const unit = rowUnit(mostNeedStems);
  let month = "";
  return (
    <>
      <RowMarks />
      <ol className="ribbon-rows">
        {weeks.flatMap(({ week, monday }, index) => {
          if (winters[0].weeks[index].needStems === 0) return [];
          const name = monthInWords(monday);
          const isNew = name !== month;
          month = name;
          return [
            isNew && (
              <li key={name} className="ribbon-month">
                {name}
              </li>
            ),
            <li key={week}>
              <a href={`/weeks/${week}`}>
                <span className="soft">{Number(monday.slice(8))}</span>
                {winters.map(({ key, weeks: of }) => (
                  <span key={key} className={`ribbon-row winter winter-${key}`}>
                    <WeekRow week={of[index]} unit={unit} />
                    <ShortOrTick shortStems={of[index].shortStems} />
                  </span>
                ))}
              </a>
            </li>,
          ];
        })}
      </ol>
    </>
  );
}

/** Stems a mark stands for when a row holds so many. */
function rowUnit(mostNeedStems: number): number {
  let unit = stemsPerMark(mostNeedStems);
  while (mostNeedStems / unit > MOST_MARKS) unit *= 2;
  return unit;
}

function ShortOrTick({ shortStems }: { shortStems: number }) {
  if (shortStems > 0)
    return (
      <b className="short-word">
        {shortStems}
        <span className="visually-hidden"> short</span>
      </b>
    );
  return (
    <b className="good-word">
      <StateSign of="tick" size={12} />
      <span className="visually-hidden">covered</span>
    </b>
  );
}

type RowProps = { readonly week: RibbonWeek; readonly unit: number; readonly mostMarks?: number };

/** A week lying down: marks two high from the left, then the string; a picture only. Rows that hold as many marks have one scale. */
export function WeekRow({ week, unit, mostMarks = MOST_MARKS }: RowProps) {
  const { runs, cellCount, ringCount } = weekCells(week, unit);
  const end = Math.ceil(cellCount / 2) * STEP;
  const holeFrom = Math.floor((cellCount - ringCount) / 2) * STEP;
  return (
    <svg viewBox={`0 0 ${(mostMarks / 2) * STEP + 2} ${2 * STEP}`} aria-hidden="true">
      <path className="gr" d={`M0 0h${end}v${2 * STEP}H0z`} />
      {ringCount > 0 && <path className="ho" d={`M${holeFrom} 0H${end}v${2 * STEP}H${holeFrom}z`} />}
      {placed(runs).map(({ run, first }) => (
        <path key={patternOf(run)} fill={`url(#row-${patternOf(run)})`} d={runPath(first, run.count)} />
      ))}
      <path className="st" d={`M${end + 0.8} 0v${2 * STEP}`} />
    </svg>
  );
}

/** Marks two high from the left as rectangles, three at the most: a lower one alone, whole columns, an upper one alone. */
function runPath(first: number, count: number): string {
  const end = first + count;
  const from = Math.ceil(first / 2);
  const to = Math.floor(end / 2);
  const box = (column: number, columns: number, y: number, rows: number) =>
    `M${column * STEP} ${y}h${columns * STEP}v${rows * STEP}h${-columns * STEP}z`;
  return [
    first % 2 === 1 ? box(from - 1, 1, STEP, 1) : "",
    to > from ? box(from, to - from, 0, 2) : "",
    end % 2 === 1 ? box(to, 1, 0, 1) : "",
  ].join("");
}

/** One dot of each kind as a pattern, once on a page with rows: a run is then one path. */
export const RowMarks = () => (
  <svg className="symbols row-marks" width="0" height="0" aria-hidden="true" focusable="false">
    <defs>
      {COLOURS.flatMap((colour) =>
        [false, true].map((isKept) => (
          <pattern key={`${colour}${isKept}`} id={`row-${patternOf({ colour, isKept })}`} {...TILE}>
            <circle className={`f-${colour}${isKept ? " kept" : ""}`} cx="5" cy="5" r="4.1" />
          </pattern>
        )),
      )}
      <pattern id={`row-${patternOf({ colour: "ring", isKept: false })}`} {...TILE}>
        <circle className="row-ring" cx="5" cy="5" r="3" />
      </pattern>
    </defs>
  </svg>
);
