import { existsSync, readFileSync, rmSync, statSync } from "node:fs";
import { isAbsolute, join, resolve } from "node:path";
import { writeOverFile } from "#db/file/write-file";
import { copiesFolder } from "./copy-name";

/** A matter of this machine and not of the farm, so it lies with the copies and not in the farm's file. */
const noteOf = (file: string): string => join(copiesFolder(file), "second-place.txt");

/** The folder that every copy is put into as well: a stick, another disk, a folder that is synchronised. Null when none was named. */
export function secondPlace(file: string): string | null {
  const note = noteOf(file);
  return existsSync(note) ? readFileSync(note, "utf8").trim() || null : null;
}

/** Names the second place, or none. Gives what is wrong with it in words, and null when it was taken. */
export function nameSecondPlace(file: string, folder: string | null): string | null {
  if (folder === null) {
    rmSync(noteOf(file), { force: true });
    return null;
  }
  if (!isAbsolute(folder)) return "write the whole way to the folder, from the top of the disk on";
  const found = statSync(folder, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return "there is no such folder: make it first, or put the stick in";
  if (resolve(folder) === resolve(copiesFolder(file)))
    return "this is the first place already: name a folder on another disk";
  writeOverFile(noteOf(file), Buffer.from(`${resolve(folder)}\n`));
  return null;
}
