import type { Fields, RecordOf } from "#lib/domain/records/field";
import { columnsOf } from "#lib/domain/records/sheets";
import { cellsOf } from "./columns";
import type { KeptRow } from "./known-farm";

/** A cell of a row as the farm has it and as a sheet would make it, each as it is written in the sheet. */
export type CellDifference = { readonly column: string; readonly before: string; readonly after: string };

/** Whether a row says of its record on the farm what the farm says. */
export const isUnchanged = <F extends Fields>(kept: KeptRow | null, after: RecordOf<F>, fields: F): boolean =>
  kept !== null && differencesBetween(fields, kept.row as RecordOf<F>, after).length === 0;

/** The cells in which two rows differ, in the order of their columns. */
export function differencesBetween<F extends Fields>(
  fields: F,
  before: RecordOf<F>,
  after: RecordOf<F>,
): CellDifference[] {
  const cellsBefore = cellsOf(fields, before);
  const cellsAfter = cellsOf(fields, after);
  return columnsOf(fields).flatMap(({ heading }, index) =>
    cellsBefore[index] === cellsAfter[index]
      ? []
      : [{ column: heading, before: cellsBefore[index] ?? "", after: cellsAfter[index] ?? "" }],
  );
}
