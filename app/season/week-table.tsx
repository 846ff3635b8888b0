import { weekInWords } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import type { ReachBand } from "#lib/plan/road/season-band";
import type { Week } from "#lib/plan/road/weeks";
import { inWholes } from "#lib/plan/words/numbers";
import { ShortCount } from "../ui/short-count";
import { type Column, Table } from "../ui/table";

type Row = Pick<Week, "week" | "monday" | "bookingIds"> & { role: Week["roles"][number]; band: ReachBand };

const COLUMNS: readonly Column<Row>[] = [
  {
    head: "Week",
    kind: "name",
    cell: ({ week, monday }) => (
      <>
        <a href={`/weeks/${week}`}>{weekInWords(monday)}</a> <span className="soft small">{week.slice(5)}</span>
      </>
    ),
  },
  { head: "Events", kind: "number", cell: ({ bookingIds }) => bookingIds.length },
  { head: "Needed", unit: "stems", kind: "number", cell: ({ role }) => inWholes(role.needStems) },
  { head: "Covered", unit: "stems", kind: "number", cell: ({ role }) => inWholes(role.coveredStems) },
  { head: "Short", unit: "stems", kind: "number", cell: ({ role }) => <ShortCount stems={role.shortStems} /> },
  { head: "Within reach", unit: "stems", kind: "number", cell: ({ role }) => inWholes(role.reachableStems) },
  {
    head: "Low to high",
    unit: "stems",
    kind: "number",
    cell: ({ band }) => `${inWholes(band.lowStems)} to ${inWholes(band.highStems)}`,
  },
];

/** The numbers of the week chart. Weeks in which nothing is asked are left out unless something blooms. */
export function WeekTable({ weeks, band, role }: { weeks: readonly Week[]; band: readonly ReachBand[]; role: Role }) {
  const rows = weeks.flatMap(({ roles, ...week }, index) => {
    const found = roles.find((row) => row.role === role);
    return found && found.needStems + found.reachableStems > 0 ? [{ ...week, role: found, band: band[index] }] : [];
  });
  return (
    <details>
      <summary>The same numbers as a table</summary>
      <Table
        caption={`${role} stems by week`}
        columns={COLUMNS}
        rows={rows}
        keyOf={({ week }) => week}
        isShort={({ role }) => role.shortStems > 0}
      />
    </details>
  );
}
