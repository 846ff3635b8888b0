import { toDay, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { OFFERED_FROM_DAYS, OFFERED_UP_TO_DAYS, type Offer } from "#lib/plan/road/offers";
import { countOf, inWholes } from "./numbers";

/** "Sun 13 Jun to Thu 17 Jun": the days on which what is offered on a day is cut. Day number. */
const offeredDays = (today: number): string =>
  `${withWeekday(toDay(today + OFFERED_FROM_DAYS))} to ${withWeekday(toDay(today + OFFERED_UP_TO_DAYS))}`;

/** "white, long" */
const kindInWords = ({ colour, stemLength }: Pick<Offer, "colour" | "stemLength">): string =>
  stemLength === null ? colour : `${colour}, ${stemLength} stem`;

/** When all stems of an offer are there, and how long they keep: "all cut by Thu 17 Jun, keep until Sat 19 Jun"; "all of use on Thu 17 Jun" where that is the only day. */
export const whenInWords = ({ readyDay, keepsUntil }: Pick<Offer, "readyDay" | "keepsUntil">): string =>
  readyDay === keepsUntil
    ? `all of use on ${withWeekday(toDay(readyDay))}`
    : `all cut by ${withWeekday(toDay(readyDay))}, keep until ${withWeekday(toDay(keepsUntil))}`;

/** "120 stems in 12 bunches, cut Sun 13 Jun to Thu 17 Jun, are nobody’s even in a poor year." Day number. */
export function offersLead(some: readonly Offer[], today: number): string {
  const stems = some.reduce((sum, offer) => sum + offer.stems, 0);
  const bunches = some.reduce((sum, offer) => sum + offer.bunchCount, 0);
  return stems === 0
    ? `Nothing that is cut ${offeredDays(today)} is sure to be over: a poor year leaves no whole bunch.`
    : `${countOf(stems, "stem")} in ${countOf(bunches, "bunch", "bunches")}, cut ${offeredDays(today)}, are nobody’s even in a poor year.`;
}

/** What is sent to buyers: a line for each crop, colour and length. Day number. */
export const offersText = (some: readonly Offer[], today: number): string =>
  [
    `To offer, cut ${offeredDays(today)}:`,
    ...some.map(
      (offer) =>
        `${countOf(offer.bunchCount, "bunch", "bunches")} of ${inWholes(offer.crop.bunchStems.count)} ${offer.crop.name.toLowerCase()}, ${kindInWords(offer)}, ${whenInWords(offer)}`,
    ),
  ].join("\n");

/** Who buys every week from a day on: "The market and The corner florist"; null when nobody does. */
export function buyersInWords(orders: readonly StandingOrder[], today: string): string | null {
  const buyers = [...new Set(orders.filter(({ lastOn }) => lastOn >= today).map(({ buyer }) => buyer))];
  return buyers.length === 0 ? null : allOf(buyers);
}
