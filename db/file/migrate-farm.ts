import { join } from "node:path";
import type { Database } from "better-sqlite3";
import type { BetterSQLite3Database } from "drizzle-orm/better-sqlite3";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import { readMigrationFiles } from "drizzle-orm/migrator";

/** Migrations lie in the project, where the app and the tests are started; a bundle of the server has no folder of its own. */
const folder = () => ({ migrationsFolder: join(process.cwd(), "db", "migrations") });

/** Whether a file's tables are older than this version's, the same, or newer. */
export function tablesAge(sqlite: Database): "older" | "same" | "newer" {
  const reached =
    sqlite.prepare<[], number | null>("SELECT max(created_at) FROM __drizzle_migrations").pluck().get() ?? 0;
  const known = Math.max(...readMigrationFiles(folder()).map(({ folderMillis }) => folderMillis));
  return reached < known ? "older" : reached > known ? "newer" : "same";
}

/** Brings the tables up to date. */
export function migrateFarm(database: BetterSQLite3Database & { $client: Database }): void {
  // A migration may rebuild a table; with foreign keys on, dropping the old one would take its children along.
  database.$client.pragma("foreign_keys = OFF");
  try {
    migrate(database, folder());
  } catch {
    // Another process may have opened the same file at the same moment and been first. Then nothing is left to do now, and a real fault shows again.
    migrate(database, folder());
  }
  database.$client.pragma("foreign_keys = ON");
}
