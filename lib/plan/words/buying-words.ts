import { toDay, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { BuyIn } from "#lib/plan/road/buying";
import { type BuyingSlip, buyingTotals } from "#lib/plan/road/buying-slips";
import { countOf, inRoundMoney, inWholes, inWords } from "./numbers";

/** "11 bunches, about $279" */
export function purchasesInWords(lines: readonly BuyIn[]): string {
  const { bunchCount, costCents } = buyingTotals(lines);
  return `${countOf(bunchCount, "bunch", "bunches")}, about ${inRoundMoney(costCents)}`;
}

/** Names in full up to three, then "and two others". */
const NAMED = 3;

/** "for The Withy Lane wedding and The Cressbank wedding" */
export function forWhomInWords(slips: readonly BuyingSlip[]): string {
  const clients = [...new Set(slips.flatMap(({ bookings }) => bookings.map(({ client }) => client)))];
  const rest = clients.length - NAMED;
  const named = rest > 0 ? [...clients.slice(0, NAMED), `${inWords(rest)} other${rest === 1 ? "" : "s"}`] : clients;
  return `for ${allOf(named)}`;
}

/** "Call now: they were to be ordered by Sat 29 May, 12 days ago." Of several days the first is named. */
export function lateInWords(late: readonly BuyingSlip[], now: number): string {
  const first = Math.min(...late.map(({ orderBy }) => orderBy));
  const which = late.every(({ orderBy }) => orderBy === first) ? "they were" : "the first were";
  return `Call now: ${which} to be ordered by ${withWeekday(toDay(first))}, ${countOf(now - first, "day")} ago.`;
}

/** What is read out or pasted to a grower or wholesaler: a line for each flower. */
export const orderText = ({ arriveBy, lines }: BuyingSlip): string =>
  [
    `To arrive by ${withWeekday(toDay(arriveBy))}:`,
    ...lines.map(
      ({ crop, colour, bunchCount }) =>
        `${countOf(bunchCount, "bunch", "bunches")} of ${inWholes(crop.bunchStems.count)} ${crop.name.toLowerCase()}, ${colour ?? "any colour"}`,
    ),
  ].join("\n");
