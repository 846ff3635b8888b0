import { fieldOf } from "../../beds/field-of";
import type { BedRow } from "../planner-data";

/** Beds that stand in one table. */
const TABLE_BEDS = 40;
/** Beds of a fold at the most: a few screens of a phone. */
const FOLD_BEDS = 30;

/** Rows that stand together; `title` is null where one table holds all of them. */
export type BedFold = { readonly title: string | null; readonly rows: readonly BedRow[] };

/** Many beds are folded by field, and a large field by its numbers: "S1 to S30". */
export function bedFolds(rows: readonly BedRow[]): BedFold[] {
  if (rows.length <= TABLE_BEDS) return [{ title: null, rows }];
  const fields = new Map<string, BedRow[]>();
  for (const row of rows) {
    const { field } = fieldOf(row.name);
    fields.set(field, [...(fields.get(field) ?? []), row]);
  }
  return [...fields.values()].flatMap((ofField) =>
    Array.from({ length: Math.ceil(ofField.length / FOLD_BEDS) }, (_, part) => {
      const some = ofField.slice(part * FOLD_BEDS, (part + 1) * FOLD_BEDS);
      const [first, last] = [some[0].name, some[some.length - 1].name];
      return { title: first === last ? first : `${first} to ${last}`, rows: some };
    }),
  );
}
