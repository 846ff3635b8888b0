import type { PickLine } from "#lib/plan/road/pick-list";
import { pickTotals } from "#lib/plan/road/pick-sheets";
import { countOf } from "#lib/plan/words/numbers";

/** "118 stems, 17 bunches, 10 buckets" */
export function totalsInWords(lines: readonly PickLine[]): string {
  const { stems, bunchCount, bucketCount } = pickTotals(lines);
  return `${countOf(stems, "stem")}, ${countOf(bunchCount, "bunch", "bunches")}, ${countOf(bucketCount, "bucket")}`;
}
