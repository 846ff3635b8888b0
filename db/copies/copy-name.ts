import { existsSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** Why a copy was taken. */
const COPY_REASONS = ["daily", "by-hand", "before-migration", "before-import", "before-restore"] as const;
export type CopyReason = (typeof COPY_REASONS)[number];

/** A copy of the farm as it lies in the folder of copies. `takenAt` is UTC, "YYYY-MM-DDThh:mm:ssZ". */
export type Copy = {
  readonly name: string;
  readonly path: string;
  readonly takenAt: string;
  readonly reason: CopyReason;
  readonly byteCount: number;
};

const NAME = new RegExp(
  `-(\\d{4}-\\d{2}-\\d{2})T(\\d{2})-(\\d{2})-(\\d{2})Z(?:-(\\d+))?-(${COPY_REASONS.join("|")})\\.sqlite$`,
);

/** Where the copies of a farm lie: a folder beside its file. */
export const copiesFolder = (file: string): string => join(dirname(file), "copies");

/** What the names of all copies of a farm begin with: its file's own name. */
const stemOf = (file: string): string => basename(file).replace(/\.[^.]*$/, "");

/** The number of a copy among those of its second, from 1. */
const numberOf = (name: string): number => Number(NAME.exec(name)?.[5] ?? 1);

/**
 * A name that no copy has yet, with the next number among those of its second: "farm-2026-11-25T18-04-12Z-daily.sqlite", then
 * "farm-2026-11-25T18-04-12Z-2-daily.sqlite".
 */
export function newCopyName(file: string, takenAt: string, reason: CopyReason, taken: readonly string[]): string {
  const start = `${stemOf(file)}-${takenAt.replaceAll(":", "-")}-`;
  const number = 1 + Math.max(0, ...taken.filter((name) => name.startsWith(start)).map(numberOf));
  return `${start}${number === 1 ? "" : `${number}-`}${reason}.sqlite`;
}

/** The copies of a farm in a folder, newest first. A folder that is not there holds none. */
export function copiesIn(folder: string, file: string): Copy[] {
  if (!existsSync(folder)) return [];
  const stem = `${stemOf(file)}-`;
  const names = readdirSync(folder, { withFileTypes: true }).filter(
    (entry) => entry.isFile() && entry.name.startsWith(stem),
  );
  return names
    .flatMap(({ name }) => {
      const match = NAME.exec(name);
      if (!match || match.index !== stem.length - 1) return [];
      const [, day, hour, minute, second, , reason] = match;
      const path = join(folder, name);
      const byteCount = statSync(path).size;
      return [{ name, path, takenAt: `${day}T${hour}:${minute}:${second}Z`, reason: reason as CopyReason, byteCount }];
    })
    .sort((a, b) => b.takenAt.localeCompare(a.takenAt) || numberOf(b.name) - numberOf(a.name));
}

/** This moment, as copies are named by. */
export const momentNow = (): string => `${new Date().toISOString().slice(0, 19)}Z`;
