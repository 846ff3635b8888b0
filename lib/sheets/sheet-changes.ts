import { groupsOf } from "#lib/domain/groups-of";
import type { SheetName } from "#lib/domain/records/sheets";
import { SHEETS } from "#lib/domain/records/sheets";
import { cellsOf } from "./columns";
import { type KnownFarm, knownBy } from "./known-farm";
import { type CellDifference, differencesBetween } from "./row-differences";
import type { Place } from "./sheet-problem";
import type { SheetRow, SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** A row that is new on the farm (`differences` null) or would make one of its rows other than it is, with what it is known by. */
export type RowChange = Place & { readonly called: string; readonly differences: readonly CellDifference[] | null };

/**
 * What the files of one sheet hold, and what its clean rows would do: add, change, or nothing, and how many rows of the farm they do not
 * speak of, which stay. `changes` are the first {@link MOST_CHANGES} that are new or changed.
 */
export type SheetChanges = {
  readonly sheet: SheetName;
  readonly rowCount: number;
  readonly cleanRowCount: number;
  readonly newCount: number;
  readonly changedCount: number;
  readonly sameCount: number;
  readonly leftCount: number;
  readonly changes: readonly RowChange[];
};

/** More changes of one sheet than anybody reads through before bringing it in; the counts tell the rest. */
const MOST_CHANGES = 200;

/**
 * What the rows of a sheet would do.
 *
 * @param rows         as records say them in their sheet
 * @param unreadCount  rows of its files that could not be read at all
 */
export function changesIn<Name extends SheetName>(
  sheet: Name,
  rows: SheetRows<RowOf<Name>>,
  { known, unreadCount }: { readonly known: KnownFarm; readonly unreadCount: number },
): SheetChanges {
  const fields = SHEETS[sheet];
  const clean = rows.rows.flatMap((row) => (row.record === null ? [] : [{ ...row, record: row.record }]));
  const changes = clean.flatMap(({ place, kept, record }): RowChange[] => {
    const differences = kept && differencesBetween(fields, kept.row as never, record as never);
    return differences?.length === 0 ? [] : [{ ...place, called: knownBy(sheet, record), differences }];
  });
  const gone = sheet === "recipes" ? linesGone(clean as readonly SheetRow<RowOf<"recipes">>[], known) : [];
  const all = [...changes, ...gone];
  const newCount = all.filter(({ differences }) => differences === null).length;
  const spoken = new Set(rows.rows.flatMap(({ kept }) => (kept ? [kept.row] : [])));
  return {
    sheet,
    rowCount: rows.rows.length + unreadCount,
    cleanRowCount: clean.length,
    newCount,
    changedCount: all.length - newCount,
    sameCount: clean.length - changes.length,
    leftCount: sheet === "farm" ? 0 : keptCount(sheet, known) - spoken.size - gone.length,
    changes: all.slice(0, MOST_CHANGES),
  };
}

const keptCount = (sheet: SheetName, { rows }: KnownFarm): number => (sheet === "farm" ? 0 : rows[sheet].length);

/** Lines of recipes that their new rows leave out: a recipe is replaced whole. */
function linesGone(rows: readonly SheetRow<RowOf<"recipes">>[], { rows: { recipes } }: KnownFarm): RowChange[] {
  const met = new Map<number, { place: Place; count: number; name: string }>();
  for (const { kept, place, record } of rows)
    if (kept && record) met.set(kept.id, { place, name: record.name, count: (met.get(kept.id)?.count ?? 0) + 1 });
  const linesOnFarm = groupsOf(recipes, ({ id }) => id);
  return [...met].flatMap(([id, { place, count, name }]) =>
    (linesOnFarm.get(id) ?? []).slice(count).map(({ row }) => ({
      ...place,
      called: name,
      differences: [{ column: "role", before: cellsOf(SHEETS.recipes, row).slice(2, 4).join(" "), after: "" }],
    })),
  );
}
