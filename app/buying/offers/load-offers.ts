import { toDayNumber, yearOf } from "#lib/domain/day";
import { type Offer, offers } from "#lib/plan/road/offers";
import { today } from "../../clock";
import { loadPlan, loadPoorYears } from "../../load";

/** What can be offered today. */
export function loadOffers(): Offer[] {
  const day = today();
  return offers(loadPlan(yearOf(day)), loadPoorYears(yearOf(day)), toDayNumber(day));
}
