import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/spread-work";
import { hoursInWords } from "#lib/plan/words/numbers";
import { takesInWords } from "#lib/plan/words/takes-words";
import { type Column, Table } from "../../ui/table";
import { TickBox, WriteLine } from "../../ui/to-write";

/** `what` is null where the heading above says it for all rows. */
type Row = { readonly task: WinterTask; readonly what: string | null };

/** Beds of one day's work: a box to tick, what it takes, room to write. */
export function TaskTable({ rows, units, words }: { rows: readonly Row[]; units: Units; words: string }) {
  const what: Column<Row> = { head: "What to do", className: "what", cell: ({ what }) => what };
  const columns: readonly Column<Row>[] = [
    { head: "Done", className: "done", cell: () => <TickBox /> },
    { head: "Bed", kind: "name", cell: ({ task }) => task.bedName },
    ...(rows.some(({ what }) => what !== null) ? [what] : []),
    { head: "It takes", className: "takes", cell: ({ task }) => allOf(task, units) || "–" },
    { head: "Counted, noted", className: "noted", cell: () => <WriteLine /> },
  ];
  return (
    <Table
      caption={words}
      isCaptionHidden
      className="work-day"
      columns={columns}
      rows={rows}
      isInLines
      keyOf={({ task }) => `${task.bedId} ${task.work} ${task.variety?.name}`}
    />
  );
}

const allOf = (task: WinterTask, units: Units): string =>
  [takesInWords(task, units), task.hours > 0 && hoursInWords(task.hours)].filter(Boolean).join(", ");
