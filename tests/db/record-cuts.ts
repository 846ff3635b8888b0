import type { FarmDatabase } from "#db/client";
import { putCut } from "#db/write/cuts";
import { Refusals } from "#db/write/refusal";
import { type Written, write } from "#db/write/write";
import type { CutDraft } from "#lib/domain/records/cut";

/** Records cuts as they are, all of them as one change, and gives their ids: what a tally does beside its adding up. */
export const recordCuts = (database: FarmDatabase, drafts: readonly CutDraft[]): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const result = refusals.each("cuts", drafts, (draft) => putCut(database, draft));
    refusals.end();
    return { title: `recorded ${drafts.length} cuts`, result };
  });
