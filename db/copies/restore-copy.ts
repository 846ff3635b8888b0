import { copyFileSync, existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { closeFarm, type FarmDatabase, openKeptFarm } from "#db/client";
import { FarmFileRefused, type FileState, refusingFile } from "#db/file/farm-file-refused";
import { readHeader } from "#db/file/file-header";
import { refuseUnlessInPlace, writesOfOthers } from "#db/file/file-place";
import { nameNew, syncFile, syncFolder } from "#db/file/write-file";
import { hasFarm } from "#db/read/read";
import { type Copy, copiesFolder, momentNow } from "./copy-name";
import { takeCopy } from "./take-copy";

/** What stood there before: a copy of it, the damaged file itself, or nothing. */
export type Restored = { readonly before: Copy | null; readonly setAside: string | null };

/**
 * Makes the farm's file what a copy holds. The copy is checked and brought up to date first, on a second copy of its own; what stands there now
 * is copied before it goes, so that restoring that copy undoes it. A file that cannot be opened is set aside, never written over. The new file
 * takes its name in one step: a kill leaves the farm before or the farm after. Other servers see it with their next page, and what they were
 * about to save is refused. Throws FarmFileRefused.
 */
export async function restoreCopy(copy: string, file: string): Promise<Restored> {
  const folder = copiesFolder(file);
  const working = refusingFile(file, () => {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    return mkdtempSync(join(folder, "unfinished-restore-"));
  });
  try {
    const checked = join(working, "farm.sqlite");
    refusingFile(copy, () => copyWithSideFile(copy, checked));
    closeFarm(openStarted(checked));
    syncFile(checked);
    const present = openedOrNull(file);
    if (present === null) return { before: null, setAside: putInPlace(checked, file, folder) };
    try {
      return { before: await exchange(present, checked, file), setAside: null };
    } finally {
      closeFarm(present);
    }
  } finally {
    rmSync(working, { recursive: true, force: true });
  }
}

/** Copies what stands there, then puts the other file in its place while nobody can write; again from the copy on when somebody wrote in between. */
async function exchange(present: FarmDatabase, checked: string, file: string): Promise<Copy> {
  const sqlite = present.$client;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const seen = writesOfOthers(sqlite);
    const { copy } = await takeCopy(sqlite, file, "before-restore");
    refusingFile(file, () => sqlite.exec("BEGIN EXCLUSIVE"));
    try {
      if (writesOfOthers(sqlite) !== seen) continue;
      refuseUnlessInPlace(sqlite);
      renameSync(checked, file);
      syncFolder(dirname(file));
      return copy;
    } finally {
      sqlite.exec("ROLLBACK");
    }
  }
  throw new FarmFileRefused("locked", file, "Somebody saved each time that the farm had just been copied.");
}

/** A copy takes a part of a second: who saves within each of so many is no grower. */
const MOST_TRIES = 10;

/** A file from elsewhere may come with the side file of an older version. */
function copyWithSideFile(copy: string, checked: string): void {
  if (!existsSync(copy))
    throw new FarmFileRefused("missing", copy, "It is the copy that was named; the farm itself was left as it is.");
  copyFileSync(copy, checked);
  if (existsSync(`${copy}-wal`)) copyFileSync(`${copy}-wal`, `${checked}-wal`);
}

function openStarted(file: string): FarmDatabase {
  const database = openKeptFarm(file);
  if (hasFarm(database)) return database;
  closeFarm(database);
  throw new FarmFileRefused("empty", file);
}

/** The farm that stands there; null when there is none that can be opened. One that is locked, or on a disk that fails, is no matter for a restore. */
function openedOrNull(file: string): FarmDatabase | null {
  try {
    return openKeptFarm(file);
  } catch (error) {
    if (error instanceof FarmFileRefused && isReplaced(error.state, file)) return null;
    throw error;
  }
}

/** Another program's database stays where it is; a file that does not even begin as a database may be a farm whose beginning is damaged. */
const isReplaced = (state: FileState, file: string): boolean =>
  ["missing", "empty", "damaged", "newer", "two-versions"].includes(state) ||
  (state === "other-program" && readHeader(file) === null);

/** The file that cannot be opened goes aside with all that lies beside it; gives its new place, or null when there was none. */
function putInPlace(checked: string, file: string, folder: string): string | null {
  const aside = join(folder, `set-aside-${momentNow().replaceAll(":", "-")}`);
  let setAside: string | null = null;
  for (const ending of ["", "-journal", "-wal", "-shm"]) {
    if (!existsSync(file + ending)) continue;
    mkdirSync(aside, { recursive: true, mode: 0o700 });
    renameSync(file + ending, join(aside, `farm.sqlite${ending}`));
    setAside = aside;
  }
  // It lies on the same disk already: giving it its name needs no room.
  nameNew(checked, file);
  syncFolder(dirname(file));
  return setAside;
}
