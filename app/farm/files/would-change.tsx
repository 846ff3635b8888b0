import { inWholes } from "#lib/plan/words/numbers";
import type { RowChange, SheetChanges } from "#lib/sheets/sheet-changes";
import { type Column, Table } from "../../ui/table";

/** What the clean rows would do, sheet by sheet, and under it every row that is new or changed, cell by cell. */
export function WouldChange({ perSheet }: { perSheet: readonly SheetChanges[] }) {
  const touched = perSheet.filter(({ changes }) => changes.length > 0);
  return (
    <>
      <Table caption="What would change" columns={SHEET_COLUMNS} rows={perSheet} keyOf={({ sheet }) => sheet} />
      {touched.map(({ sheet, changes, newCount, changedCount }) => (
        <details key={sheet} open={touched.length === 1}>
          <summary>
            {sheet}: {inWholes(newCount + changedCount)} row by row
          </summary>
          <Table
            caption={`New and changed rows of ${sheet}`}
            isCaptionHidden
            columns={ROW_COLUMNS}
            rows={changes}
            keyOf={({ file, line, called }) => `${file} ${line} ${called}`}
          />
          {newCount + changedCount > changes.length && (
            <p className="note">and {inWholes(newCount + changedCount - changes.length)} more like these.</p>
          )}
        </details>
      ))}
    </>
  );
}

const countOrQuiet = (count: number) => (count === 0 ? <span className="soft">·</span> : inWholes(count));

const SHEET_COLUMNS: readonly Column<SheetChanges>[] = [
  { head: "Sheet", kind: "name", cell: ({ sheet }) => sheet },
  { head: "New", kind: "number", cell: ({ newCount }) => countOrQuiet(newCount) },
  { head: "Changed", kind: "number", cell: ({ changedCount }) => countOrQuiet(changedCount) },
  { head: "Same", kind: "number", cell: ({ sameCount }) => countOrQuiet(sameCount) },
  { head: "Left alone", kind: "number", cell: ({ leftCount }) => countOrQuiet(leftCount) },
];

const ROW_COLUMNS: readonly Column<RowChange>[] = [
  { head: "Row", kind: "name", cell: ({ called }) => called },
  {
    head: "Would become",
    cell: ({ differences }) =>
      differences === null ? (
        "new"
      ) : (
        <ul className="plain-list">
          {differences.map(({ column, before, after }) => (
            <li key={column}>
              {column}: <s>{before || "empty"}</s> {after || "empty"}
            </li>
          ))}
        </ul>
      ),
  },
  { head: "Line", kind: "number", cell: ({ line }) => line },
];
