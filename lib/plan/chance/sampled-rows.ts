import type { Snapshot } from "#lib/domain/snapshot";
import { type Grown, grown } from "#lib/plan/road/grown";

/** What chance turns out: a planting, or what takes the places of its clumps that die in the ground. */
export type SampledRow = { readonly row: Grown; readonly isReplanted: boolean };

/** The rows of a season in the order in which its samples stand: each planting, and after it what is replanted where the farm replants. */
export const sampledRows = (snapshot: Snapshot, seasonYear: number): SampledRow[] =>
  grown(snapshot, seasonYear).flatMap((row) => {
    const standing = { row, isReplanted: false };
    const isLate = row.replanted !== null && row.firstCut !== null && snapshot.farm.winter.replantDeadShare > 0;
    return isLate && row.replanted ? [standing, { row: row.replanted, isReplanted: true }] : [standing];
  });
