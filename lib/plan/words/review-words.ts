import type { RecipeAdvice, SpareAdvice } from "#lib/plan/learning/review/advice";
import type { EventReview, RoleReview } from "#lib/plan/learning/review/event-review";
import { countOf, inPercent, inRoundMoney, inTenths, inWholes, inWords } from "./numbers";

/** "Review two events", "Review the event". */
export const toReviewInWords = (eventCount: number): string =>
  eventCount === 1 ? "Review the event" : `Review ${inWords(eventCount)} events`;

/** "Two events are over and not reviewed: what was used of their stems?" */
export const reviewLead = (openCount: number, doneCount: number): string => {
  if (openCount > 0)
    return `${capital(inWords(openCount))} ${openCount === 1 ? "event is" : "events are"} over and not reviewed: how many stems were thrown away?`;
  return doneCount > 0
    ? `All ${countOf(doneCount, "event")} that are over are reviewed.`
    : "No event of this season is over yet. From the day after it, what became of its stems is asked here.";
};

/** "240 of 262 stems used, 22 thrown away", of an event that is reviewed. */
export function usedInWords(
  roles: readonly Pick<RoleReview, "cutStems" | "boughtStems" | "thrownAwayStems">[],
): string {
  const had = roles.reduce((sum, { cutStems, boughtStems }) => sum + cutStems + boughtStems, 0);
  const thrownAway = roles.reduce((sum, { thrownAwayStems }) => sum + (thrownAwayStems ?? 0), 0);
  return thrownAway === 0
    ? `all ${countOf(had, "stem")} used`
    : `${inWholes(had - thrownAway)} of ${countOf(had, "stem")} used, ${inWholes(thrownAway)} thrown away`;
}

/** "Stems worth $412 to buy, 28 % of the price of $1,480." Without a price, the first part alone. */
export const costInWords = (costCents: number, priceCents: number | null): string =>
  `Stems worth ${inRoundMoney(costCents)} to buy${priceCents ? `, ${inPercent(costCents / priceCents)} of the price of ${inRoundMoney(priceCents)}` : ""}.`;

/** "491 stems cut and 136 bought", of an event. */
export function hadInWords(roles: readonly Pick<RoleReview, "cutStems" | "boughtStems">[]): string {
  const sum = (of: "cutStems" | "boughtStems") => roles.reduce((all, role) => all + role[of], 0);
  return `${countOf(sum("cutStems"), "stem")} cut and ${inWholes(sum("boughtStems"))} bought`;
}

/** How sure the numbers of an event that is not reviewed are. */
export const cutSourceInWords = ({ isCutRecorded }: Pick<EventReview, "isCutRecorded">): string =>
  isCutRecorded
    ? "Cut as recorded, and as planned where nothing was."
    : "Nobody recorded the cut: it counts as planned.";

/** "12 focal stems in one Bridal bouquet, now 14". */
export const recipeAdviceInWords = ({ recipe, role, was, suggested }: RecipeAdvice): string =>
  `${inTenths(suggested)} ${role} stems in one ${recipe.name}, now ${inTenths(was)}`;

/** Why: "3 events all used fewer". */
export const becauseInWords = ({ was, suggested, eventCount }: SpareAdvice): string =>
  `${countOf(eventCount, "event")} all used ${suggested < was ? "fewer" : "more"}; this is what the most cautious of them bears out`;

/** "A spare of 4 % for new bookings, now 10 %". */
export const spareAdviceInWords = ({ was, suggested }: SpareAdvice): string =>
  `a spare of ${inPercent(suggested)} for new bookings, now ${inPercent(was)}`;

const capital = (words: string): string => words[0].toUpperCase() + words.slice(1);
