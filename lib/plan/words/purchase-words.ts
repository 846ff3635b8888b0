import { toDay, toDayNumber, withWeekday } from "#lib/domain/day";
import { isOnTheWay, type PurchaseLine, type PurchaseSlip, stemsNotDelivered } from "#lib/plan/road/purchase-slips";
import type { Mistimed } from "#lib/plan/road/purchase-timing";
import { countOf, inWholes } from "./numbers";

/** "Garden rose, white" */
export const flowerInWords = ({ crop, variety }: Pick<PurchaseLine, "crop" | "variety">): string =>
  isNamedByColour(variety) ? `${crop.name}, ${variety.colour}` : `${crop.name} ${variety.name}, ${variety.colour}`;

/** The name of the variety that stands for a colour as a supplier sells it: "bought white". */
export const nameOfBought = (colour: string): string => `bought ${colour}`;

const isNamedByColour = ({ name, colour }: PurchaseLine["variety"]): boolean => name === nameOfBought(colour);

/**
 * How a purchase stands: "comes Thu 8 Jul", "was to come Thu 8 Jul: has it?", "30 came Thu 8 Jul", "20 of 30 came Thu 8 Jul, 10 short",
 * "none of 30 came". Day number.
 */
export function arrivalInWords(line: PurchaseLine, today: number): string {
  const { purchase, orderedStems } = line;
  const { arrivesOn, arrivedOn, arrivedStems } = purchase;
  if (arrivedOn === null || arrivedStems === null)
    return arrivesOn < toDay(today)
      ? `was to come ${withWeekday(arrivesOn)}: has it?`
      : `comes ${withWeekday(arrivesOn)}`;
  const short = stemsNotDelivered(line);
  if (arrivedStems === 0) return `none of ${inWholes(orderedStems)} came`;
  const came = short > 0 ? `${inWholes(arrivedStems)} of ${inWholes(orderedStems)}` : inWholes(arrivedStems);
  return `${came} came ${withWeekday(arrivedOn)}${short > 0 ? `, ${inWholes(short)} short` : ""}`;
}

/**
 * Why an order does not serve the event it is for: "too early: it keeps until Mon 5 Jul, and the event is Sat 10 Jul", or "too late: it comes on Sat 10 Jul, a day after
 * you make up the flowers for Sat 10 Jul".
 */
export function mistimedInWords(missed: Mistimed): string {
  if (missed.kind === "early")
    return `too early: it keeps until ${withWeekday(missed.keepsUntil)}, and the event is ${withWeekday(missed.eventOn)}`;
  const { openOn, designOn, eventOn, opensAsItComes } = missed;
  const daysAfter = toDayNumber(openOn) - toDayNumber(designOn);
  const after = daysAfter === 1 ? "a day" : countOf(daysAfter, "day");
  return `too late: it ${opensAsItComes ? "comes" : "is open"} on ${withWeekday(openOn)}, ${after} after you make up the flowers for ${withWeekday(eventOn)}`;
}

/** What a booking waits for: "24 stems Garden rose, white, ordered from Marl Street, comes Thu 8 Jul". Day number. */
export const orderedInWords = (line: PurchaseLine, today: number): string =>
  `${countOf(Math.min(line.purchase.stemsForBooking, line.orderedStems), "stem")} ${flowerInWords(line)}, ordered from ${line.purchase.supplier}, ${arrivalInWords(line, today)}`;

/** "2 days to open"; empty when a flower can be used as it comes. */
export const openingInWords = (daysToOpen: number): string =>
  daysToOpen === 0 ? "" : `${countOf(daysToOpen, "day")} to open`;

/** What is read out or pasted to a supplier: a line for each flower. */
export const purchaseText = ({ supplier, day, lines }: PurchaseSlip): string =>
  [
    `${supplier}, to arrive by ${withWeekday(toDay(day))}:`,
    ...lines.map(
      (line) =>
        `${countOf(line.purchase.bunchCount, "bunch", "bunches")} of ${inWholes(line.purchase.bunchStems)} ${flowerInWords(line)}`,
    ),
  ].join("\n");

/** What is on the way, in a sentence: "4 flowers are on the way; 1 was to come by now." Day number. */
export function onTheWayInWords(lines: readonly PurchaseLine[], today: number): string {
  const due = lines.filter((line) => isOnTheWay(line) && line.purchase.arrivesOn < toDay(today)).length;
  const all = `${countOf(lines.length, "flower")} ${lines.length === 1 ? "is" : "are"} on the way`;
  return due === 0 ? `${all}.` : `${all}; ${inWholes(due)} ${due === 1 ? "was" : "were"} to come by now.`;
}
