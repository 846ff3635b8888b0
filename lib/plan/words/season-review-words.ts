import type { CropReview, SeasonReview } from "#lib/plan/learning/review/season-review";
import { countOf, inMoney, inPercent, inRoundMoney, inWholes } from "./numbers";

type Counted = Omit<CropReview, "crop">;

/** "Of 12,340 stems cut so far 8,200 were used at events and 2,100 went to standing orders; 310 were thrown away, and 1,730 were left." Of orders nothing is said where there were none, and of a season that is over not "so far". */
export function seasonReviewLead({ total }: Pick<SeasonReview, "total">, isOver: boolean): string {
  const { cutStems, usedStems, orderStems, thrownAwayStems, leftStems } = total;
  if (cutStems === 0) return isOver ? "Nothing of this season was cut." : "Nothing of this season has been cut yet.";
  const toOrders = orderStems === 0 ? "" : ` and ${inWholes(orderStems)} went to standing orders`;
  return `Of ${countOf(cutStems, "stem")} cut${isOver ? "" : " so far"} ${inWholes(usedStems)} were used at events${toOrders}; ${inWholes(thrownAwayStems)} were thrown away, and ${inWholes(leftStems)} were left.`;
}

/** "Events that are over bring $9,840, standing orders $2,730." Empty where no money is known; of events without a price nothing is said of what they bring. */
export function seasonMoneyInWords({ bookingCents, total }: Pick<SeasonReview, "bookingCents" | "total">): string {
  if (bookingCents === 0 && total.orderCents === 0) return "";
  if (total.orderStems === 0) return `Events that are over bring ${inRoundMoney(bookingCents)}.`;
  return bookingCents === 0
    ? `Standing orders bring ${inRoundMoney(total.orderCents)}; the events that are over have no price written down.`
    : `Events that are over bring ${inRoundMoney(bookingCents)}, standing orders ${inRoundMoney(total.orderCents)}.`;
}

/** The share of a crop's stems that found a use, at an event or with an order: "85 %". */
export const soldShareInWords = ({ usedStems, orderStems, cutStems }: Counted): string =>
  cutStems === 0 ? "" : inPercent((usedStems + orderStems) / cutStems);

/** What orders paid, empty where nothing. */
export const orderMoneyInWords = ({ orderCents }: Counted): string => (orderCents === 0 ? "" : inMoney(orderCents));
