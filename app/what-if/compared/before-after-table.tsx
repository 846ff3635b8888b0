import { weekInWords } from "#lib/domain/day";
import type { WeekRole } from "#lib/plan/road/weeks";
import type { ComparedWeek } from "#lib/plan/what-if/comparison";
import { inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";

const stems = (head: string, figure: (role: WeekRole) => number): Column<ComparedWeek> => ({
  head,
  unit: "stems",
  kind: "number",
  cell: ({ focal: [before, after] }) => <Changed before={figure(before)} after={figure(after)} />,
});

const COLUMNS: readonly Column<ComparedWeek>[] = [
  { head: "Week", kind: "name", cell: ({ week, monday }) => <a href={`/weeks/${week}`}>{weekInWords(monday)}</a> },
  stems("Needed", ({ needStems }) => needStems),
  stems("Covered", ({ coveredStems }) => coveredStems),
  stems("Short", ({ shortStems }) => shortStems),
  stems("Within reach", ({ reachableStems }) => reachableStems),
];

/** The numbers of the two pictures; "120 → 80" where they differ. */
export const BeforeAfterTable = ({ weeks }: { weeks: readonly ComparedWeek[] }) => (
  <details>
    <summary>The same numbers as a table</summary>
    <Table
      caption="Focal stems by week, as it stands → in this what-if"
      columns={COLUMNS}
      rows={weeks.filter(({ focal }) => focal.some(({ needStems, reachableStems }) => needStems + reachableStems > 0))}
      keyOf={({ week }) => week}
      isShort={({ focal: [, after] }) => after.shortStems > 0}
    />
  </details>
);

function Changed({ before, after }: { before: number; after: number }) {
  if (before === after) return inWholes(after);
  return (
    <>
      {inWholes(before)} <span aria-hidden="true">→</span>
      <span className="visually-hidden"> becomes </span> <strong>{inWholes(after)}</strong>
    </>
  );
}
