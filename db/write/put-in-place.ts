import type { FarmDatabase } from "#db/client";
import { type KnownTable, known } from "./known";

/** Adds a record, or puts it in the place of the one with the id, and gives its id. Refuses when there is none of that id. */
export function putInPlace(
  database: FarmDatabase,
  table: KnownTable,
  id: number | undefined,
  { add, replace }: { readonly add: () => number; readonly replace: (id: number) => void },
): number {
  if (id === undefined) return add();
  known(database, table, id);
  replace(id);
  return id;
}
