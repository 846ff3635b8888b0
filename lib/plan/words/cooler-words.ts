import { inShort, toDay, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Booking } from "#lib/domain/records/booking";
import { type CoolerLot, isIn, type LotEntry, stemsIn } from "#lib/plan/road/cooler";
import { hasStretch, isTooShort } from "#lib/plan/road/hold-window";
import { countOf, inWholes, inWords } from "./numbers";

/** "212 stems in 9 lots. Use first: 24 Dahlia Maple Row, by Sat 12 Jun." Lots past their days are told apart. Day number. */
export function coolerLead(lots: readonly CoolerLot[], today: number): string {
  const standing = lots.filter(({ leftStems }) => leftStems > 0);
  if (standing.length === 0) return "The cooler is empty.";
  const [keeping, past] = [standing.filter((lot) => !isPast(lot, today)), standing.filter((lot) => isPast(lot, today))];
  const [first] = [...keeping].sort((a, b) => a.lastGoodDay - b.lastGoodDay);
  return [
    `${countOf(stemsIn(standing), "stem")} in ${countOf(standing.length, "lot")}.`,
    ...(first
      ? [
          `Use first: ${inWholes(first.leftStems)} ${first.crop.name} ${first.variety.name}, ${lastUseInWords(first, today)}.`,
        ]
      : []),
    ...(past.length > 0 ? [`${inWholes(stemsIn(past))} are past their days.`] : []),
  ].join(" ");
}

/** Whether no event ahead can have a lot any more. Day number. */
export const isPast = ({ lastDay }: Pick<CoolerLot, "lastDay">, today: number): boolean => lastDay < today;

/** "use by Sat 12 Jun", "use by Sat 12 Jun, at a stretch Mon 14 Jun", "past its days since Sat 12 Jun". Day number. */
export function lastUseInWords({ lastGoodDay, lastDay, hold }: CoolerLot, today: number): string {
  if (lastDay < today) return `past its days since ${withWeekday(toDay(lastDay))}`;
  if (lastGoodDay < today) return `only at a stretch, until ${withWeekday(toDay(lastDay))}`;
  const stretch = hasStretch(hold) ? `, at a stretch ${withWeekday(toDay(lastDay))}` : "";
  return `use by ${withWeekday(toDay(lastGoodDay))}${stretch}`;
}

/** Names in full up to three, then "and two more". */
const NAMED = 3;

/**
 * Which events ahead a lot could serve: "Could serve Ash, Sat 12 Jun, and Elm, Sun 13 Jun.", or why none. What is too short for any event says so.
 */
export function couldServeInWords({ hold, couldServe }: CoolerLot, leadDays: number): string {
  if (couldServe.length === 0 && isTooShort(hold, leadDays))
    return "It does not keep until an event: none can have it.";
  if (couldServe.length === 0) return "No event that it keeps for asks for it.";
  const named = couldServe.slice(0, NAMED).map(eventInWords);
  const rest = couldServe.length - NAMED;
  return `Could serve ${allOf(rest > 0 ? [...named, `${inWords(rest)} more`] : named)}.`;
}

/** "Ash, Sat 12 Jun" */
export const eventInWords = ({ client, eventOn }: Pick<Booking, "client" | "eventOn">): string =>
  `${client}, ${withWeekday(eventOn)}`;

/** An entry of a lot's history: "10 Jun: 40 cut in D8", "11 Jun: 12 thrown away". Clients by their name in `clientOf`, by booking id. */
export function entryInWords(entry: LotEntry, clientOf: (bookingId: number) => string): string {
  const stems = inWholes(entry.stems);
  const on = inShort(toDay(entry.day));
  switch (entry.kind) {
    case "put in":
      return `${on}: ${stems} put in`;
    case "cut":
      return `${on}: ${stems} cut in ${entry.place}`;
    case "arrived":
      return `${on}: ${stems} came from ${entry.purchase.supplier}`;
    case "used":
      return `${on}: ${stems} counted as used for ${entry.booking.client}, not recorded`;
    case "moved": {
      const { kind, bookingId } = entry.move;
      return `${on}: ${stems} ${kind}${bookingId === null ? "" : ` for ${clientOf(bookingId)}`}`;
    }
  }
}

/** "60 in, 45 out: 15 stand there." */
export function sumInWords({ entries, leftStems }: Pick<CoolerLot, "entries" | "leftStems">): string {
  const came = entries.filter(isIn).reduce((sum, { stems }) => sum + stems, 0);
  const left = entries.filter((entry) => !isIn(entry)).reduce((sum, { stems }) => sum + stems, 0);
  return `${inWholes(came)} in, ${inWholes(left)} out: ${inWholes(leftStems)} ${leftStems === 1 ? "stands" : "stand"} there.`;
}

/** "Dahlia Maple Row, cut 10 Jun" */
export const lotInWords = ({ crop, variety, cutDay }: Pick<CoolerLot, "crop" | "variety" | "cutDay">): string =>
  `${crop.name} ${variety.name}, cut ${inShort(toDay(cutDay))}`;

/** The lots that a screen leaves out: "33 more lots (477 stems) and 66 emptied lots". */
export const otherLotsInWords = (standing: readonly CoolerLot[], empty: readonly CoolerLot[]): string =>
  allOf([
    ...(standing.length > 0 ? [`${countOf(standing.length, "more lot")} (${countOf(stemsIn(standing), "stem")})`] : []),
    ...(empty.length > 0 ? [countOf(empty.length, "emptied lot")] : []),
  ]);
