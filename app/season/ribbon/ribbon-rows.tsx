import { type Day, type IsoWeek, monthInWords } from "#lib/domain/day";
import { type CellRun, placed, type RibbonWeek, stemsPerMark, weekCells } from "./cells";
import type { RibbonWinter } from "./ribbon";

type Props = {
  readonly weeks: readonly { readonly week: IsoWeek; readonly monday: Day }[];
  readonly winters: readonly RibbonWinter[];
  readonly mostNeedStems: number;
};

/** Marks in a row at the most: two high, so half of them side by side. */
const MOST_MARKS = 54;
const STEP = 9.7;
const HEIGHT = 20.4;

/** The ribbon turned for a phone: weeks with need run down, blooms run right two high, the string stands at the end, the number short or a tick. */
export function RibbonRows({ weeks, winters, mostNeedStems }: Props) {
  const unit = rowUnit(mostNeedStems);
  let month = "";
  return (
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
      <svg width="12" height="12" aria-hidden="true">
        <use href="#m-tick" />
      </svg>
      <span className="visually-hidden">covered</span>
    </b>
  );
}

type RowProps = { readonly week: RibbonWeek; readonly unit: number; readonly mostMarks?: number };

/** A week lying down: marks two high from the left, then the string; a picture only. Rows that hold as many marks have one scale. */
export function WeekRow({ week, unit, mostMarks = MOST_MARKS }: RowProps) {
  const { runs, cellCount, ringCount } = weekCells(week, unit);
  const columns = Math.ceil(cellCount / 2);
  const holeFrom = Math.floor((cellCount - ringCount) / 2) * STEP;
  return (
    <svg viewBox={`0 0 ${(mostMarks / 2) * STEP + 2} ${HEIGHT}`} aria-hidden="true">
      <rect className="gr" width={columns * STEP + 1} height={HEIGHT} />
      {ringCount > 0 && <rect className="ho" x={holeFrom} width={columns * STEP + 1 - holeFrom} height={HEIGHT} />}
      {placed(runs).map(({ run, first }) => (
        <Marks key={`${run.colour}${run.isKept}`} run={run} first={first} />
      ))}
      <path className="st" d={`M${columns * STEP + 1} 0V${HEIGHT}`} />
    </svg>
  );
}

function Marks({ run, first }: { run: CellRun; first: number }) {
  const at = (place: number) => `M${(Math.floor(place / 2) * STEP + 5.4).toFixed(1)} ${place % 2 ? 15.1 : 5.4}h0`;
  const points = Array.from({ length: run.count }, (_, index) => at(first + index)).join("");
  if (run.colour === "ring") return <path className="row-ring" d={points} />;
  return (
    <g className={`f-${run.colour}${run.isKept ? " kept" : ""}`}>
      <path className="row-edge" d={points} />
      <path className="row-fill" d={points} />
    </g>
  );
}
