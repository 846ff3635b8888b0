import { weekInWords } from "#lib/domain/day";
import type { Plan } from "#lib/plan/road/plan";
import { cutsBehind, seasonSums, type WeekGone, weeksBehind } from "#lib/plan/road/to-come";
import { inWholes } from "#lib/plan/words/numbers";
import { cutsInWords, weeksGoneInWords } from "#lib/plan/words/to-come-words";
import { ShortCount } from "../ui/short-count";
import { type Column, Table } from "../ui/table";

const COLUMNS: readonly Column<WeekGone>[] = [
  { head: "Week", kind: "name", cell: ({ week, monday }) => <a href={`/weeks/${week}`}>{weekInWords(monday)}</a> },
  { head: "Events", kind: "number", cell: ({ bookingCount }) => bookingCount },
  { head: "Asked", unit: "stems", kind: "number", cell: ({ needStems }) => inWholes(needStems) },
  { head: "Short", unit: "stems", kind: "number", cell: ({ shortStems }) => <ShortCount stems={shortStems} /> },
  { head: "Cut", unit: "stems", kind: "number", cell: ({ cutStems }) => inWholes(cutStems) },
  { head: "Not recorded", unit: "stems", kind: "number", cell: ({ notRecordedStems }) => inWholes(notRecordedStems) },
];

/** The weeks that have gone by, in one fold: what their events asked, and what was cut in them. Nothing before the first has. */
export function WeeksBehind({ plan, isOpen }: { plan: Plan; isOpen: boolean }) {
  const weeks = weeksBehind(plan);
  if (weeks.length === 0) return null;
  const { behind } = seasonSums(plan);
  return (
    <details className="fold" open={isOpen}>
      <summary>
        {weeksGoneInWords(weeks.length)} <small>{inWholes(behind.needStems)} stems asked</small>
      </summary>
      <p className="small">{sentence(cutsInWords(cutsBehind(plan)))} Stems cut are counted before grading.</p>
      <Table
        caption="Weeks gone by, every role"
        isCaptionHidden
        columns={COLUMNS}
        rows={weeks}
        keyOf={({ week }) => week}
      />
    </details>
  );
}

const sentence = (words: string): string => `${words[0].toUpperCase()}${words.slice(1)}.`;
