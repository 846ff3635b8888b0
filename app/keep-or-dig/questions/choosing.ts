import type { ChoiceProgress } from "#lib/plan/winter/choose-beds";
import { countOf, inRoundMoney } from "#lib/plan/words/numbers";

/** How near the bound has come to the best: they meet at 1. */
export function closeness(progress: ChoiceProgress | null): number | null {
  if (!progress?.bestCents || !(progress.boundCents > 0)) return null;
  return Math.min(1, progress.boundCents / progress.bestCents);
}

/** How far the choice of beds has come: the best so far, what no choice can beat, and when they meet. */
export function choosingInWords(progress: ChoiceProgress | null): string {
  if (!progress) return "Laying out both futures of every bed…";
  const { bestCents, boundCents, keptCount, branchCount } = progress;
  const best =
    bestCents === null ? "No choice yet" : `Best so far ${inRoundMoney(bestCents)} with ${countOf(keptCount, "bed")}`;
  const bound = Number.isFinite(boundCents) ? `; no choice can cost less than ${inRoundMoney(boundCents)}` : "";
  return `${best}${bound}. They meet when it is proved. ${countOf(branchCount, "branch", "branches")} looked into.`;
}
