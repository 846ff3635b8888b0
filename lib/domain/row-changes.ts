/** What to write for one table: rows to replace by id, ids to remove, and rows to add, which have no id yet. */
export type RowChanges<Row, Draft> = {
  readonly changed: readonly Row[];
  readonly removedIds: readonly number[];
  readonly added: readonly Draft[];
};
