import type { WeekRole } from "#lib/plan/road/weeks";
import { inWholes } from "#lib/plan/words/numbers";
import { ShortCount } from "../ui/short-count";
import { type Column, Table } from "../ui/table";

const COLUMNS: readonly Column<WeekRole>[] = [
  { head: "Role", kind: "name", cell: ({ role }) => role },
  { head: "Needed", kind: "number", cell: ({ needStems }) => inWholes(needStems) },
  { head: "Covered", kind: "number", cell: ({ coveredStems }) => inWholes(coveredStems) },
  { head: "Short", kind: "number", cell: ({ shortStems }) => <ShortCount stems={shortStems} /> },
  { head: "Within reach", kind: "number", cell: ({ reachableStems }) => inWholes(reachableStems) },
];

/** One week by role. Roles that nobody asks for and nothing gives are left out. */
export const RoleTable = ({ roles }: { roles: readonly WeekRole[] }) => (
  <Table
    caption="By role, stems"
    columns={COLUMNS}
    rows={roles.filter(({ needStems, reachableStems }) => needStems + reachableStems > 0)}
    keyOf={({ role }) => role}
    isShort={({ shortStems }) => shortStems > 0}
    isNarrow
  />
);
