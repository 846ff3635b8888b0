import type { ShownSeason } from "#lib/domain/snapshot";
import { countOf } from "./numbers";
import { ownSeasonInWords } from "./own-season-words";

/** Whether the plan goes by what the season has shown, and how many plantings that moves, as a sentence. */
export function followedInWords(followsSeason: boolean, shown: ShownSeason | undefined): string {
  if (!followsSeason) return "The plan leaves it aside: what is ahead is forecast by the curves, and by your own word.";
  if (!shown) return "It moves nothing of the plan yet: what is ahead is forecast by the curves, and by your own word.";
  return `The plan reckons with it: of ${countOf(shown.size, "planting")} what is still ahead is moved. Days that have passed, your own word and other years stay.`;
}

/** What the season has shown of one planting: "6 days late, 90 % of its stems". */
export const shownInWords = ({ daysLate, yieldFactor }: { daysLate: number; yieldFactor: number }): string | null =>
  ownSeasonInWords({ daysLate: daysLate || null, yieldFactor: yieldFactor === 1 ? null : yieldFactor });
