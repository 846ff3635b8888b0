import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { LimitMet } from "#lib/plan/winter/limits";
import { countOf, forCount, inTenths } from "./numbers";

/**
 * A limit of the winter in the farm's own units. Passed: "40.1 cubic yards of leaves, and 31.2 are at hand". Kept to: what is at hand alone,
 * "31.2 cubic yards of leaves at hand".
 */
export function limitInWords({ resource, atHand, takes }: LimitMet, units: Units): string {
  if (resource === "beds") {
    const most = `at most ${atHand} may be kept`;
    return takes > atHand ? `${countOf(takes, "bed")} kept, and ${most}` : most;
  }
  const { volume, area } = MEASURES[units];
  const measure = { leaves: volume, tarp: area, hours: { word: "hours", shownPerStored: 1 } }[resource];
  const [has, wants] = [atHand, takes].map((stored) => stored * measure.shownPerStored);
  const what = `${measure.word}${{ leaves: " of leaves", tarp: " of tarp", hours: " of keeping and digging" }[resource]}`;
  if (takes <= atHand) return `${inTenths(has)} ${what} at hand`;
  // Where tenths do not tell them apart, as many digits as do.
  const isNear = inTenths(has) === inTenths(wants);
  const written = (count: number) => (isNear ? String(Number(count.toPrecision(9))) : inTenths(count));
  return `${written(wants)} ${what}, and ${written(has)} ${forCount(has, "is", "are")} at hand`;
}

/** Why no choice of beds keeps to the limits: the least that any takes of what is short, or limits that clash only together. */
export function infeasibleInWords(because: readonly LimitMet[], units: Units): string {
  const limits = because.map((limit) => limitInWords(limit, units)).join("; ");
  return because.some(({ takes, atHand }) => takes > atHand)
    ? `Any choice takes at least ${limits}.`
    : `Each of these can be kept to alone, but not all together: ${limits}.`;
}
