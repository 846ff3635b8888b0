import type { Snapshot } from "#lib/domain/snapshot";
import type { Plan } from "#lib/plan/road/plan";
import type { KeepBoard } from "#lib/plan/what-if/keep-board";
import { type WinterBed, winterBeds } from "#lib/plan/winter/beds";
import { type KeepingTime, keepingTime } from "#lib/plan/winter/keeping-time";
import { bedsKeptNow, plantingsToChange } from "#lib/plan/winter/kept-beds";
import { rankedGaps } from "#lib/plan/words/season-lead";
import { today } from "../clock";
import { boardOf, type ThreeWinters, threeWinters } from "../keep-or-dig/tried-plan";
import { knownAnswer } from "../threads/asked-once";
import type { Jobs } from "../threads/jobs";

/**
 * What Season leads with while beds can be kept: that the choice is being worked out, that no choice keeps to the limits, or the choice. `none`: the
 * winter is not the question of the day, or there is nothing to choose.
 */
export type Decision =
  | { readonly kind: "none"; readonly time: KeepingTime }
  | { readonly kind: "working" }
  | { readonly kind: "no choice" }
  | KeepDecision;

/** The beds that the proven choice keeps, and the season under three winters. `isDone`: the farm stands so already. */
export type KeepDecision = {
  readonly kind: "choice";
  readonly kept: readonly WinterBed[];
  readonly winters: ThreeWinters;
  readonly board: KeepBoard;
  readonly isDone: boolean;
};

/** The decision of a season as far as it is known; nothing is worked out for it that takes long. */
export function decisionOf(stands: Plan): Decision {
  const { snapshot, seasonYear } = stands;
  const beds = winterBeds(snapshot, seasonYear);
  const time = keepingTime(snapshot, beds, seasonYear, today());
  const isShort = rankedGaps(stands.gaps, "focal").length > 0 || bedsKeptNow(snapshot, seasonYear).length > 0;
  if (time !== "open" || !isShort || beds.every(({ forbidden }) => forbidden.length > 0)) return { kind: "none", time };
  const answer = choiceKnown(snapshot, seasonYear);
  if (!answer) return { kind: "working" };
  if (answer.status !== "optimal") return { kind: "no choice" };
  const { keptBedIds } = answer;
  const winters = threeWinters(seasonYear, keptBedIds);
  return {
    kind: "choice",
    kept: beds.filter(({ bed }) => keptBedIds.includes(bed.id)),
    winters,
    board: boardOf(seasonYear, keptBedIds),
    isDone: plantingsToChange(snapshot, seasonYear, keptBedIds).length === 0,
  };
}

/** Beds that the proven choice keeps; null while nobody has asked for it. */
export function payingBedCount({ snapshot, seasonYear }: Plan): number | null {
  const answer = choiceKnown(snapshot, seasonYear);
  return answer?.status === "optimal" ? answer.keptBedIds.length : null;
}

/** The answer of the job that Keep or dig asks as well, when it is known. */
const choiceKnown = (snapshot: Snapshot, seasonYear: number) =>
  knownAnswer(snapshot, `cheapest ${seasonYear}`) as Jobs["cheapest"]["answer"] | undefined;
