import { statSync } from "node:fs";
import { join } from "node:path";

/** Where a farm lies that nobody has named a place for. */
export const OWN_PLACE = ".data/farm.sqlite";

/** The farm's file: the one that `FARM_FILE` names, "farm.sqlite" in it where it names a folder, and {@link OWN_PLACE} where it names nothing. */
export function namedFile(named = process.env.FARM_FILE || OWN_PLACE): string {
  return statSync(named, { throwIfNoEntry: false })?.isDirectory() ? join(named, "farm.sqlite") : named;
}
