import { MEASURES, type Measure, type Measures, PLAIN, shown } from "#lib/domain/measures";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change, Resource } from "#lib/domain/what-if";
import { changeInWords } from "#lib/plan/words/what-if-words";

/** The measure that each thing at hand is shown and typed in, by the farm's units. */
export const atHandMeasure = ({ volume, area }: Measures): Record<Resource, Measure> => ({
  leaves: volume,
  tarp: area,
  hours: { ...PLAIN, word: "hours" },
});

const OF_WHAT: Record<Resource, string> = { leaves: " of leaves", tarp: " of tarp", hours: "" };

/** A change as a grower would say it; what is at hand in the units that this farm types in. */
export function inFarmWords(change: Change, snapshot: Snapshot): string {
  if (change.kind !== "at-hand-set" || change.atHand === null) return changeInWords(change, snapshot);
  const measure = atHandMeasure(MEASURES[snapshot.farm.units])[change.resource];
  return `${shown(measure, change.atHand)} ${measure.word}${OF_WHAT[change.resource]} at hand`;
}
