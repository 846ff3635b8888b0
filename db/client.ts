import { mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";
import Database from "better-sqlite3";
import { type BetterSQLite3Database, drizzle } from "drizzle-orm/better-sqlite3";
import { READ_WAITS_MS } from "./busy";
import { takeCopyNow } from "./copies/take-copy";
import { lookUpEveryColumn } from "./file/every-column";
import { FarmFileRefused, refusingFile } from "./file/farm-file-refused";
import { faultsOf } from "./file/file-faults";
import { FARM_APPLICATION_ID, readHeader } from "./file/file-header";
import { isInPlace, standAt } from "./file/file-place";
import { giveBackRoom } from "./file/give-back-room";
import { migrateFarm, tablesAge } from "./file/migrate-farm";
import { settleSideFiles } from "./file/side-files";
import { keepPrivate } from "./file/write-file";
import { installJournal } from "./journal/journal-triggers";

/** An open farm: the query builder, and the connection itself as `$client`. Everything on it is synchronous. */
export type FarmDatabase = BetterSQLite3Database & { $client: Database.Database };

/**
 * Opens the farm kept in `file`, makes the folder, the file and its tables when there is no file, and brings an older one up to date.
 * ":memory:" opens a farm that lives until it is closed. A file that is empty, of another program, newer, damaged, locked or not to be written
 * is left as it is: throws FarmFileRefused, which says in words what it is and what mends it.
 */
export function openFarm(file: string): FarmDatabase {
  const isThere = () => statSync(file, { throwIfNoEntry: false }) !== undefined;
  if (file === ":memory:" || !refusingFile(file, isThere)) return madeFarm(file);
  return openKeptFarm(file);
}

/** Opens a farm as {@link openFarm} does, but never makes one: a file that is not there is refused too. */
export function openKeptFarm(file: string): FarmDatabase {
  return refusingFile(file, () => {
    refuseByHeader(file);
    settleSideFiles(file);
    return opened(file, (sqlite) => {
      refuseByContent(sqlite, file);
      // A write that is not kept: a file or folder that cannot be written shows now and not in the middle of a save.
      sqlite.exec("BEGIN IMMEDIATE; CREATE TABLE main.can_be_written (yes); ROLLBACK");
      keepWhole(sqlite, file);
      if (tablesAge(sqlite) === "older") takeCopyNow(sqlite, file, "before-migration");
      giveBackRoom(sqlite);
    });
  });
}

/** Closes the farm: one file is left, and nothing beside it. Nothing can be read or written through the farm afterwards. */
export function closeFarm({ $client }: FarmDatabase): void {
  try {
    // Takes the emptied journal away, under SQLite's own locks, unless another server needs it.
    if ($client.open && isInPlace($client)) $client.pragma("journal_mode = DELETE");
  } catch {
    // Whatever stands in the way of tidying, the file is whole.
  }
  $client.close();
}

function madeFarm(file: string): FarmDatabase {
  return refusingFile(file, () => {
    if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
    return opened(file, (sqlite) => keepWhole(sqlite, file));
  });
}

function refuseByHeader(file: string): void {
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found) throw new FarmFileRefused("missing", file);
  if (!found.isFile()) throw new FarmFileRefused("other-program", file);
  if (found.size === 0) throw new FarmFileRefused("empty", file);
  const header = readHeader(file);
  if (!header || ![0, FARM_APPLICATION_ID].includes(header.applicationId))
    throw new FarmFileRefused("other-program", file);
}

function refuseByContent(sqlite: Database.Database, file: string): void {
  const tables = sqlite.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
  const isOurs = ["farm", "change_row", "__drizzle_migrations"].every((table) => tables.includes(table));
  if (!isOurs) throw new FarmFileRefused("other-program", file);
  const faults = faultsOf(sqlite);
  if (faults.length) throw new FarmFileRefused("damaged", file, faults.join("; "));
  if (tablesAge(sqlite) === "newer") throw new FarmFileRefused("newer", file);
}

function opened(file: string, prepare: (sqlite: Database.Database) => void): FarmDatabase {
  const sqlite = new Database(file);
  try {
    sqlite.pragma("busy_timeout = 5000");
    prepare(sqlite);
    const database = drizzle(sqlite);
    migrateFarm(database);
    lookUpEveryColumn(sqlite);
    if (sqlite.pragma("application_id", { simple: true }) !== FARM_APPLICATION_ID)
      sqlite.pragma(`application_id = ${FARM_APPLICATION_ID}`);
    installJournal(sqlite);
    if (file !== ":memory:") {
      keepPrivate(file);
      standAt(sqlite, file);
    }
    sqlite.pragma(`busy_timeout = ${READ_WAITS_MS}`);
    return database;
  } catch (error) {
    sqlite.close();
    // Of a statement of ours in tables of ours, SQLite can only find wrong what the file has made of them.
    if (error instanceof Database.SqliteError && error.code === "SQLITE_ERROR")
      throw new FarmFileRefused("damaged", file, error.message);
    throw error;
  }
}

/**
 * With a rollback journal that is emptied at each commit, the one file holds the whole farm whenever no write is under way; `FULL` makes a
 * commit wait for the disk. A farm in WAL mode, as older versions left it, is brought over, its side file with it.
 */
function keepWhole(sqlite: Database.Database, file: string): void {
  const mode = sqlite.pragma("journal_mode = TRUNCATE", { simple: true });
  if (mode !== "truncate" && mode !== "memory") throw new FarmFileRefused("locked", file);
  sqlite.pragma("synchronous = FULL");
  // On macOS, "wait for the disk" must be said twice; elsewhere this changes nothing.
  sqlite.pragma("fullfsync = ON");
}
