import type { Database } from "better-sqlite3";
import { getTableColumns, getTableName, is } from "drizzle-orm";
import { SQLiteTable } from "drizzle-orm/sqlite-core";
import * as beds from "#db/schema/beds";
import * as bookings from "#db/schema/bookings";
import * as budLooks from "#db/schema/bud-looks";
import * as coolerMoves from "#db/schema/cooler-moves";
import * as crops from "#db/schema/crops";
import * as curves from "#db/schema/curves";
import * as cuts from "#db/schema/cuts";
import * as farm from "#db/schema/farm";
import * as firstCuts from "#db/schema/first-cuts";
import * as journal from "#db/schema/journal";
import * as losses from "#db/schema/losses";
import * as orders from "#db/schema/orders";
import * as purchases from "#db/schema/purchases";
import * as reviews from "#db/schema/reviews";
import * as tallies from "#db/schema/tallies";
import * as weather from "#db/schema/weather";
import * as whatIfs from "#db/schema/what-ifs";

const TABLES = [
  beds,
  bookings,
  budLooks,
  coolerMoves,
  crops,
  curves,
  cuts,
  farm,
  firstCuts,
  journal,
  losses,
  orders,
  purchases,
  reviews,
  tallies,
  weather,
  whatIfs,
].flatMap((schema) => Object.values(schema).filter((part) => is(part, SQLiteTable)));

/**
 * Has SQLite look up every column that we read: a bad byte in the name of one passes its own check of the file.
 * @throws SqliteError of code SQLITE_ERROR when one is missing
 */
export function lookUpEveryColumn(sqlite: Database): void {
  for (const table of TABLES) {
    const columns = Object.values(getTableColumns(table)).map(({ name }) => `"${name}"`);
    sqlite.prepare(`SELECT ${columns.join(", ")} FROM "${getTableName(table)}"`);
  }
}
