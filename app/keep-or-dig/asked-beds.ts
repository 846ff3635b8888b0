import { z } from "zod";
import type { Snapshot } from "#lib/domain/snapshot";
import { whatIfSchema } from "#lib/domain/what-if";
import { winterBeds } from "#lib/plan/winter/beds";
import { FLAG_WORDS } from "#lib/plan/words/flag-words";

/** Beds to keep in a season, as a page asks for them. */
export const askedBeds = z.object({
  seasonYear: whatIfSchema.shape.seasonYear,
  /** Each once and in order: the same beds make the same question. */
  keptBedIds: z
    .array(z.int())
    .max(10_000)
    .transform((ids) => [...new Set(ids)].sort((a, b) => a - b)),
});
export type AskedBeds = z.infer<typeof askedBeds>;

export const NOT_ASKED = "this is not a list of beds to keep";

/** What stands against keeping these beds, in words: a bed that is gone, or one with a flag. Null when nothing does. */
export function refusalOf(snapshot: Snapshot, { seasonYear, keptBedIds }: AskedBeds): string | null {
  const candidates = new Map(winterBeds(snapshot, seasonYear).map((row) => [row.bed.id, row]));
  for (const id of keptBedIds) {
    const row = candidates.get(id);
    if (!row) return "one of these beds is no longer a candidate: load the page again";
    if (row.forbidden.length)
      return `${row.bed.name} has a flag by now (${FLAG_WORDS[row.forbidden[0]]}): load the page again`;
  }
  return null;
}
