import { integer, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import { checks, isList, isNamed, isWholeFrom } from "./checks";
import { list, rowId } from "./columns";

/** What-ifs under their names: lists of changes that have written nothing to the farm yet. */
export const whatIf = sqliteTable(
  "what_if",
  {
    id: rowId(),
    name: text("name").notNull(),
    seasonYear: integer("season_year").notNull(),
    changes: list("changes").notNull(),
  },
  (table) => [
    unique("what_if_once").on(table.seasonYear, table.name),
    ...checks("what_if", isNamed("name"), isWholeFrom("season_year", 1990), isList("changes")),
  ],
);
