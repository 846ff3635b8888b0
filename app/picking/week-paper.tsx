import { inFull, toDay, withWeekday } from "#lib/domain/day";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { type PickWeekRow, pickWeek } from "#lib/plan/road/pick-week";
import { inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../ui/table";
import { TickBox, WriteLine } from "../ui/to-write";
import { type PaperRow, paperKey, paperRows, placeColumns } from "./paper-columns";
import { Stages, stagesOf } from "./stages";
import { totalsInWords } from "./totals-in-words";

/** Days beside which there is room to write what was really cut; with more there is the box alone. */
const DAYS_WITH_ROOM = 4;

/** A week's picking on paper: a row for each place and variety, a column for each picking day. Who gets the stems, and what is held at a stretch, stands on each day's own sheet. */
export function WeekPaper({ days, madeAt }: { days: readonly PickDay[]; madeAt: string }) {
  const { crops, noteOf } = stagesOf(days);
  return (
    <div className="paper-sheets close-ruled">
      <ul className="paper-days">
        {days.map(({ cutDay, lines }) => (
          <li key={cutDay}>
            <b>{withWeekday(toDay(cutDay))}</b>: {totalsInWords(lines)}
          </li>
        ))}
        <li>As the farm stood at {madeAt}: ask what was sprayed since.</li>
      </ul>
      <Table
        caption={`What to cut from ${inFull(toDay(days[0].cutDay))} on`}
        isCaptionHidden
        className="paper-rows paper-week"
        columns={columnsOf(days, noteOf)}
        rows={paperRows(pickWeek(days))}
        keyOf={paperKey}
        rowClass={() => "pick-line"}
        isNarrow
      />
      <Stages crops={crops} noteOf={noteOf}>
        cut is with what will be graded out, wilt or break.
      </Stages>
    </div>
  );
}

const columnsOf = (
  days: readonly PickDay[],
  noteOf: ReadonlyMap<number, string>,
): readonly Column<PaperRow<PickWeekRow>>[] => [
  ...placeColumns<PickWeekRow>(noteOf),
  ...days.map(
    ({ cutDay, lines }): Column<PaperRow<PickWeekRow>> => ({
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
