import { readFileSync } from "node:fs";
import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { installJournal } from "#db/journal/journal-triggers";
import migrations from "../../db/migrations/meta/_journal.json";
import { fill } from "./kept-farm";

/** Files as older versions of the tool left them, made by the migrations that those versions had. */

/** The migrations that are not the last: what the tables of a file may be of. */
export const OLDER_VERSIONS: readonly string[] = migrations.entries.slice(0, -1).map(({ tag }) => tag);

const OUR_OWN = /^(?:change|change_row|save_key|__drizzle_migrations|sqlite_.*)$/;

/** The small farm in a new file whose tables are as the migrations up to `version` made them; what they had no column for is left out. */
export function makeOlderFile(file: string, version: string): void {
  const today = openFarm(":memory:");
  const older = new Database(file);
  try {
    fill(today);
    older.exec("CREATE TABLE __drizzle_migrations (id SERIAL PRIMARY KEY, hash text NOT NULL, created_at numeric)");
    const remember = older.prepare("INSERT INTO __drizzle_migrations (hash, created_at) VALUES (?, ?)");
    const made = today.$client
      .prepare<[], { hash: string; created_at: number }>("SELECT hash, created_at FROM __drizzle_migrations")
      .all();
    for (const { tag, when } of migrations.entries) {
      older.exec(readFileSync(`db/migrations/${tag}.sql`, "utf8").replaceAll("--> statement-breakpoint", ""));
      remember.run(made.find(({ created_at }) => created_at === when)?.hash, when);
      if (tag === version) break;
    }
    older.pragma("foreign_keys = OFF");
    for (const table of tablesOf(older)) copyRows(today.$client, older, table);
  } finally {
    older.close();
    closeFarm(today);
  }
}

/** Opens such a file without bringing it up to date, with the journal that every version keeps. */
export function openOlder(file: string): FarmDatabase {
  const sqlite = new Database(file);
  installJournal(sqlite);
  return drizzle(sqlite);
}

const tablesOf = (sqlite: Database.Database): string[] =>
  sqlite
    .prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'")
    .pluck()
    .all()
    .filter((name) => !OUR_OWN.test(name));

function copyRows(from: Database.Database, to: Database.Database, table: string): void {
  const columns = to.prepare<[string], string>("SELECT name FROM pragma_table_info(?)").pluck().all(table);
  const rows = from
    .prepare<[], unknown[]>(`SELECT ${columns.join(", ")} FROM ${table}`)
    .raw()
    .all();
  const add = to.prepare(`INSERT INTO ${table} (${columns.join(", ")}) VALUES (${columns.map(() => "?").join(", ")})`);
  for (const row of rows) add.run(...row);
}
