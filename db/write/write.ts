import type { FarmDatabase } from "#db/client";
import { recordChange } from "#db/journal/journal";
import type { Problem } from "#lib/domain/problem";
import { Refusal } from "./refusal";

/**
 * What every write of the farm's records returns. Written: the change (null when nothing differed), what was done in words, and the id of the
 * row, or ids where many were written. Refused: every reason, in plain words at its place ("pieces[1].recipeId"), and nothing was written.
 */
export type Written<T = number> =
  | { readonly ok: true; readonly changeId: number | null; readonly title: string; readonly result: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Runs `work` as one change, and turns a refusal inside it into a value. */
export function write<T>(
  database: FarmDatabase,
  work: () => { readonly title: string; readonly result: T },
): Written<T> {
  try {
    const { changeId, result: done } = recordChange(database, ({ title }) => title, work);
    return { ok: true, changeId, title: done.title, result: done.result };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}
