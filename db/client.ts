import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import Database from "better-sqlite3";
import { type BetterSQLite3Database, drizzle } from "drizzle-orm/better-sqlite3";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import { installJournal } from "./journal/journal-triggers";

/** An open farm: the query builder, and the connection itself as `$client`. Everything on it is synchronous. */
export type FarmDatabase = BetterSQLite3Database & { $client: Database.Database };

/**
 * Opens the farm kept in `file`, making the folder, the file and its tables when they are missing and bringing an older file up to
 * date. ":memory:" opens a farm that lives until it is closed. Throws SqliteError when the file is not a database or cannot be written.
 */
export function openFarm(file: string): FarmDatabase {
  if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
  const sqlite = new Database(file);
  try {
    sqlite.pragma("busy_timeout = 5000");
    sqlite.pragma("journal_mode = WAL");
    sqlite.pragma("synchronous = NORMAL");
    const database = drizzle(sqlite);
    // A migration may rebuild a table; with foreign keys on, dropping the old one would take its children along.
    sqlite.pragma("foreign_keys = OFF");
    migrateFarm(database);
    sqlite.pragma("foreign_keys = ON");
    installJournal(sqlite);
    return database;
  } catch (error) {
    sqlite.close();
    throw error;
  }
}

/** Closes the farm. Nothing can be read or written through it afterwards. */
export function closeFarm(database: FarmDatabase): void {
  database.$client.close();
}

/** Migrations lie in the project, where the app and the tests are started; a bundle of the server has no folder of its own. */
function migrateFarm(database: FarmDatabase): void {
  const migrationsFolder = join(process.cwd(), "db", "migrations");
  try {
    migrate(database, { migrationsFolder });
  } catch {
    // Another process may have opened the same file at the same moment and been first. Then nothing is left to do now, and a real fault shows again.
    migrate(database, { migrationsFolder });
  }
}
