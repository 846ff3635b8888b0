import type { Snapshot } from "#lib/domain/snapshot";

/** The farm after one change; with a problem when the change, or a part of it, did not fit. */
export type Applied = { readonly snapshot: Snapshot; readonly problem?: string };

/** The farm with nothing changed, and why. */
export const unchanged = (snapshot: Snapshot, problem: string): Applied => ({ snapshot, problem });

type Row = { readonly id: number };

/**
 * The id of a row that a change adds: above every id the farm has or had before the changes, so that it is never taken for a row that a
 * change removed.
 */
export function newId(now: readonly Row[], before: readonly Row[]): number {
  let highest = 0;
  for (const { id } of before) highest = Math.max(highest, id);
  for (const { id } of now) highest = Math.max(highest, id);
  return highest + 1;
}

/** The rows with the one of this id replaced. */
export const withRow = <T extends Row>(rows: readonly T[], id: number, replacement: (row: T) => T): readonly T[] =>
  rows.map((row) => (row.id === id ? replacement(row) : row));

/** The rows without the one of this id. */
export const withoutRow = <T extends Row>(rows: readonly T[], id: number): readonly T[] =>
  rows.filter((row) => row.id !== id);
