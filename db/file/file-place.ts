import { statSync } from "node:fs";
import type { Database } from "better-sqlite3";
import { FarmFileRefused } from "./farm-file-refused";

type Place = { readonly file: string; readonly device: number; readonly inode: number };

/** One for all bundles that Next makes: the farm that one has opened is written through another. */
const shared: typeof globalThis & { farmPlaces?: WeakMap<Database, Place> } = globalThis;
shared.farmPlaces ??= new WeakMap();
const places = shared.farmPlaces;

/** Remembers which file an open connection writes to. On Unix a deleted file lives on, unseen, for those who have it open. */
export function standAt(sqlite: Database, file: string): void {
  const { dev, ino } = statSync(file);
  places.set(sqlite, { file, device: dev, inode: ino });
}

/** Whether the file at its place is the one that is open. True for a farm in memory. */
export function isInPlace(sqlite: Database): boolean {
  const place = places.get(sqlite);
  if (!place) return true;
  const found = statSync(place.file, { throwIfNoEntry: false });
  return found?.ino === place.inode && found.dev === place.device;
}

/** Refuses to go on when the open file was taken away or another one was put in its place. Opens nothing, so it may stand inside a write. */
export function refuseUnlessInPlace(sqlite: Database): void {
  const place = places.get(sqlite);
  if (place && !isInPlace(sqlite)) throw new FarmFileRefused("moved", place.file);
}

/** Moves when another connection has written. Source: https://www.sqlite.org/pragma.html#pragma_data_version */
export const writesOfOthers = (sqlite: Database): number => Number(sqlite.pragma("data_version", { simple: true }));
