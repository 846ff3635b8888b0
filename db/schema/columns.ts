import { type AnySQLiteColumn, customType, integer } from "drizzle-orm/sqlite-core";

/**
 * Columns that hold what SQLite has no type for. Nothing is trusted here: what cannot be decoded is passed on as it stands, so that the
 * domain's schema names it with its row.
 */

/** A list kept as JSON text. */
export const list = customType<{ data: readonly unknown[]; driverData: string }>({
  dataType: () => "text",
  toDriver: (items) => JSON.stringify(items),
  fromDriver: (text) => {
    if (text === "[]") return [];
    try {
      return JSON.parse(text);
    } catch {
      return text;
    }
  },
});

/** Yes and no, kept as 1 and 0. */
export const yesNo = customType<{ data: boolean; driverData: number }>({
  dataType: () => "integer",
  toDriver: (is) => (is ? 1 : 0),
  fromDriver: (flag) => (flag === 1 ? true : flag === 0 ? false : (flag as unknown as boolean)),
});

/** The row's own number, never given twice. */
export const rowId = () => integer("id").primaryKey({ autoIncrement: true });

/** The row of another table that this one rests on: it goes with it (`cascade`) or keeps it from going (`restrict`). */
export const idOf = <Name extends string>(name: Name, row: () => AnySQLiteColumn, onDelete: "cascade" | "restrict") =>
  integer(name).notNull().references(row, { onDelete });
