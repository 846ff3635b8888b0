import type { Snapshot } from "#lib/domain/snapshot";

/** Why a change does not fit the farm; with "held" in its kind it fits in part. */
export type Misfit =
  | { readonly kind: "gone"; readonly what: Gone }
  | { readonly kind: "booking-names-gone"; readonly client: string; readonly what: "recipe" | "crop" }
  | { readonly kind: "booking-overfull"; readonly client: string; readonly stems: number }
  | { readonly kind: "nothing-winters"; readonly bedName: string; readonly seasonYear: number }
  | { readonly kind: "stays-in-the-ground" }
  | { readonly kind: "frost-held" }
  | { readonly kind: "first-cut-held" }
  | { readonly kind: "yield-held" };

type Gone =
  | "this bed"
  | "this crop"
  | "this booking"
  | "this planting"
  | "the bed to plant"
  | "the bed to move it to"
  | "the variety to plant";

/** The farm after one change; with a misfit when the change, or a part of it, did not fit. */
export type Applied = { readonly snapshot: Snapshot; readonly misfit?: Misfit };

/** The farm with nothing changed, and why. */
export const unchanged = (snapshot: Snapshot, misfit: Misfit): Applied => ({ snapshot, misfit });

/** The farm with nothing changed, since what the change names is gone. */
export const unchangedSinceGone = (snapshot: Snapshot, what: Gone): Applied =>
  unchanged(snapshot, { kind: "gone", what });

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
