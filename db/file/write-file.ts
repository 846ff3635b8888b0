import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

/**
 * Files that are there whole or not at all, also after a power cut: written under another name, brought to the disk, then named. Read and
 * written by the grower alone.
 */

/** Writes a file that must not be there yet. Throws EEXIST when it is. */
export const writeNewFile = (file: string, bytes: Uint8Array): void => placed(file, bytes, nameNew);

/** Writes a file in place of the one that may be there. */
export const writeOverFile = (file: string, bytes: Uint8Array): void => placed(file, bytes, renameSync);

function placed(file: string, bytes: Uint8Array, name: (from: string, to: string) => void): void {
  mkdirSync(dirname(file), { recursive: true });
  removeUnfinished(file);
  const unfinished = `${file}${UNFINISHED}${process.pid}`;
  try {
    const handle = openSync(unfinished, "w", 0o600);
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    name(unfinished, file);
    syncFolder(dirname(file));
  } finally {
    rmSync(unfinished, { force: true });
  }
}

/** Between a file's name and the number of the process that is writing it. */
const UNFINISHED = ".unfinished-";

/** Takes away what processes that were killed while they wrote this file have left of it. */
function removeUnfinished(file: string): void {
  const folder = dirname(file);
  const start = basename(file) + UNFINISHED;
  for (const name of readdirSync(folder))
    if (name.startsWith(start) && !isAtWork(Number(name.slice(start.length))))
      rmSync(join(folder, name), { force: true });
}

function isAtWork(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // A process of another account may not be asked, and so is there.
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/** Gives a finished file its name, which nothing may have yet. Throws EEXIST when something has. */
export function nameNew(unfinished: string, file: string): void {
  try {
    linkSync(unfinished, file);
  } catch (error) {
    // A stick's file system often knows no second name for a file.
    if (!isUnknownThere(error) || existsSync(file)) throw error;
    renameSync(unfinished, file);
  }
}

/** Lets the grower alone read and write a file. A stick's file system often knows no owners: then it is as private as the stick. */
export function keepPrivate(file: string): void {
  try {
    chmodSync(file, 0o600);
  } catch (error) {
    if (!isUnknownThere(error)) throw error;
  }
}

/** FAT answers both with EPERM under Linux; others say it more plainly. */
const isUnknownThere = (error: unknown): boolean =>
  error instanceof Error &&
  "code" in error &&
  ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP"].includes(String(error.code));

/** Brings to the disk what another has written into the file. */
export function syncFile(file: string): void {
  const handle = openSync(file, "r+");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** A new name is on the disk only when its folder is. Windows knows no such call. */
export function syncFolder(folder: string): void {
  if (process.platform === "win32") return;
  const handle = openSync(folder, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
