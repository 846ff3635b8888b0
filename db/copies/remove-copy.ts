import { rmSync } from "node:fs";
import { join } from "node:path";
import { refusingFile } from "#db/file/farm-file-refused";
import { type Copy, copiesFolder } from "./copy-name";
import { secondPlace } from "./second-place";

/** Whether a copy stays until somebody deletes it; all others go by themselves when they have had their time. */
export const isKeptForGood = ({ reason }: Copy): boolean => reason === "by-hand";

/** Takes a copy away for good, from the second place too. Throws RangeError for one that goes by itself, FarmFileRefused where it cannot be. */
export function removeCopy(copy: Copy, file: string): void {
  if (!isKeptForGood(copy)) throw new RangeError(`only a copy taken by hand is deleted, not one ${copy.reason}`);
  for (const folder of [copiesFolder(file), secondPlace(file)])
    if (folder !== null) refusingFile(copy.path, () => rmSync(join(folder, copy.name), { force: true }));
}
