import { closeSync, fsyncSync, linkSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Files that are there whole or not at all, also after a power cut: written under another name, brought to the disk, then named. Read and
 * written by the grower alone.
 */

/** Writes a file that must not be there yet. Throws EEXIST when it is. */
export const writeNewFile = (file: string, bytes: Uint8Array): void => placed(file, bytes, linkSync);

/** Writes a file in place of the one that may be there. */
export const writeOverFile = (file: string, bytes: Uint8Array): void => placed(file, bytes, renameSync);

function placed(file: string, bytes: Uint8Array, name: (from: string, to: string) => void): void {
  mkdirSync(dirname(file), { recursive: true });
  const unfinished = `${file}.unfinished-${process.pid}`;
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
