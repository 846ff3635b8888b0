import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Database as Connection } from "better-sqlite3";
import Database from "better-sqlite3";
import { FarmFileRefused, refusingFileLater } from "#db/file/farm-file-refused";
import { faultsOf } from "#db/file/file-faults";
import { keepPrivate, syncFile, syncFolder, writeNewFile, writeOverFile } from "#db/file/write-file";
import { type Copy, type CopyReason, copiesFolder, copiesIn, momentNow, newCopyName } from "./copy-name";
import { keptCopies } from "./kept-copies";
import { secondPlace } from "./second-place";

/** A copy that was taken, and what is wrong with the second place, in words, when it could not be put there too. */
export type Taken = { readonly copy: Copy; readonly secondPlaceProblem: string | null };

/**
 * Takes a copy of the open farm by SQLite's online backup, while reads and writes go on; checks it, and only then gives it its name. Copies
 * that have had their time go. Throws FarmFileRefused when there is no room or the copy does not hold together; then nothing is left behind.
 * Source: https://www.sqlite.org/backup.html
 */
export async function takeCopy(
  sqlite: Connection,
  file: string,
  reason: CopyReason,
  takenAt = momentNow(),
): Promise<Taken> {
  const unfinished = unfinishedIn(file);
  try {
    return await refusingFileLater(file, async () => {
      await sqlite.backup(unfinished);
      return named(unfinished, file, reason, takenAt);
    });
  } finally {
    rmSync(unfinished, { force: true });
  }
}

/** Takes a copy at once, from the farm's pages as they stand: for a file that is about to be changed before anybody can wait. */
export function takeCopyNow(sqlite: Connection, file: string, reason: CopyReason, takenAt = momentNow()): Taken {
  const unfinished = unfinishedIn(file);
  try {
    writeNewFile(unfinished, sqlite.serialize());
    return named(unfinished, file, reason, takenAt);
  } finally {
    rmSync(unfinished, { force: true });
  }
}

let unfinishedCount = 0;

/** A name that is no copy's: what a kill leaves behind is never taken for one. */
function unfinishedIn(file: string): string {
  const folder = copiesFolder(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return join(folder, `unfinished-${process.pid}-${++unfinishedCount}`);
}

function named(unfinished: string, file: string, reason: CopyReason, takenAt: string): Taken {
  refuseUnlessWhole(unfinished, file);
  keepPrivate(unfinished);
  syncFile(unfinished);
  const folder = copiesFolder(file);
  const name = newCopyName(
    file,
    takenAt,
    reason,
    copiesIn(folder, file).map((copy) => copy.name),
  );
  renameSync(unfinished, join(folder, name));
  syncFolder(folder);
  thin(folder, file);
  const copy = copiesIn(folder, file).find((one) => one.name === name);
  if (!copy) throw new FarmFileRefused("disk-failing", join(folder, name));
  return { copy, secondPlaceProblem: putInSecondPlace(copy, file) };
}

function refuseUnlessWhole(path: string, file: string): void {
  const copy = new Database(path, { readonly: true });
  try {
    const faults = faultsOf(copy);
    if (faults.length) throw new FarmFileRefused("damaged", file, `The copy was not kept: ${faults.join("; ")}`);
  } finally {
    copy.close();
  }
}

const DAY_MS = 86_400_000;

/** Takes away the copies that have had their time, and what a kill left unfinished a day ago or longer. */
function thin(folder: string, file: string): void {
  for (const name of readdirSync(folder).filter((entry) => entry.startsWith("unfinished-"))) {
    const path = join(folder, name);
    const found = statSync(path, { throwIfNoEntry: false });
    if (found && Date.now() - found.mtimeMs > DAY_MS) rmSync(path, { recursive: true, force: true });
  }
  const copies = copiesIn(folder, file);
  const kept = new Set(keptCopies(copies));
  for (const copy of copies) if (!kept.has(copy)) rmSync(copy.path, { force: true });
}

/** A stick that is not there today must not stop a copy at home: what is wrong is told instead. */
function putInSecondPlace(copy: Copy, file: string): string | null {
  const folder = secondPlace(file);
  if (folder === null) return null;
  const there = join(folder, copy.name);
  try {
    if (!existsSync(folder)) return `The second place, ${folder}, is not there.`;
    const bytes = readFileSync(copy.path);
    writeOverFile(there, bytes);
    if (!readFileSync(there).equals(bytes)) return `What ${folder} gives back is not what was written there.`;
    thin(folder, file);
    return null;
  } catch (error) {
    return `The second place, ${folder}, could not be written: ${error instanceof Error ? error.message : error}`;
  }
}
