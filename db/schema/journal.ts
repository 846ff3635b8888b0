import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { checks, holds } from "./checks";
import { idOf, rowId } from "./columns";

/** One change to the farm's records: what it was, in words, and when (UTC). `undoesChangeId` names the change that this one took back, `madeBy` who
 * made it, where the farm was open to more than its owner. */
export const change = sqliteTable("change", {
  id: rowId(),
  madeAt: text("made_at").notNull().default(sql`CURRENT_TIMESTAMP`),
  title: text("title").notNull(),
  undoesChangeId: integer("undoes_change_id"),
  madeBy: text("made_by"),
});

/** A row that a change touched, as JSON before and after; empty before when it was added, empty after when it was removed. */
export const changeRow = sqliteTable(
  "change_row",
  {
    id: rowId(),
    changeId: idOf("change_id", () => change.id, "cascade"),
    tableName: text("table_name").notNull(),
    rowId: integer("row_id").notNull(),
    beforeJson: text("before_json"),
    afterJson: text("after_json"),
  },
  (table) => [
    index("change_row_place").on(table.changeId, table.tableName, table.rowId),
    ...checks("change_row", holds("says_something", "before_json IS NOT NULL OR after_json IS NOT NULL")),
  ],
);

/** A save that has landed: the key of the form that was sent, a mark of its content, the change, and what was answered. */
export const saveKey = sqliteTable("save_key", {
  key: text("key").primaryKey(),
  fingerprint: text("fingerprint").notNull(),
  changeId: integer("change_id").notNull(),
  resultJson: text("result_json").notNull(),
});
