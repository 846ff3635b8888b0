import { inFull, toDay, withWeekday } from "#lib/domain/day";
import { placeOf } from "#lib/plan/road/pick-list";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { type PickWeekRow, pickWeek } from "#lib/plan/road/pick-week";
import { inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../ui/table";
import { TickBox, WriteLine } from "../ui/to-write";
import { Stages, stagesOf } from "./stages";
import { totalsInWords } from "./totals-in-words";

/** Days beside which there is room to write what was really cut; with more there is the box alone. */
const DAYS_WITH_ROOM = 4;

type Row = { readonly row: PickWeekRow; readonly isFirst: boolean };

/** A week's picking on paper: a row for each place and variety, a column for each picking day. Who gets the stems, and what is held at a stretch, stands on each day's own sheet. */
export function WeekPaper({ days }: { days: readonly PickDay[] }) {
  const { crops, noteOf } = stagesOf(days);
  const rows = pickWeek(days).map((row, index, all) => ({
    row,
    isFirst: index === 0 || placeOf(all[index - 1].stand) !== placeOf(row.stand),
  }));
  return (
    <div className="paper-sheets close-ruled">
      <ul className="paper-days">
        {days.map(({ cutDay, lines }) => (
          <li key={cutDay}>
            <b>{withWeekday(toDay(cutDay))}</b>: {totalsInWords(lines)}
          </li>
        ))}
      </ul>
      <Table
        caption={`What to cut from ${inFull(toDay(days[0].cutDay))} on`}
        isCaptionHidden
        className="paper-rows paper-week"
        columns={columnsOf(days, noteOf)}
        rows={rows}
        keyOf={({ row }) => `${placeOf(row.stand)} ${row.variety.id}`}
        rowClass={() => "pick-line"}
        isNarrow
      />
      <Stages crops={crops} noteOf={noteOf} />
    </div>
  );
}

const columnsOf = (days: readonly PickDay[], noteOf: ReadonlyMap<number, string>): readonly Column<Row>[] => [
  {
    head: "Bed",
    kind: "name",
    cell: ({ row, isFirst }) =>
      isFirst ? placeOf(row.stand) : <span className="visually-hidden">{placeOf(row.stand)}</span>,
  },
  {
    head: "Variety, colour",
    className: "paper-what",
    cell: ({ row: { crop, variety } }) => (
      <>
        <b>{crop.name}</b> {variety.name}, {variety.colour} <sup>{noteOf.get(crop.id)}</sup>
      </>
    ),
  },
  ...days.map(
    ({ cutDay, lines }): Column<Row> => ({
      head: `Cut ${withWeekday(toDay(cutDay))}`,
      headShown: withWeekday(toDay(cutDay)),
      className: "paper-day",
      cell: ({ row }) => <DayCell row={row} cutDay={cutDay} hasRoom={days.length <= DAYS_WITH_ROOM} />,
      foot: <b>{inWholes(lines.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0))}</b>,
    }),
  ),
];

function DayCell({ row, cutDay, hasRoom }: { row: PickWeekRow; cutDay: number; hasRoom: boolean }) {
  const ofDay = row.ofDay.get(cutDay);
  if (!ofDay) return null;
  return (
    <span className="paper-day-cell">
      <b>{inWholes(ofDay.stemsToCut)}</b>
      <TickBox />
      {hasRoom && <WriteLine />}
    </span>
  );
}
