import { type Day, inFull } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { isLapsed } from "#lib/plan/road/lapsed";
import { countOf } from "./numbers";

/** Where a booking stands: "confirmed", "held until Friday 11 December 2026", "enquiry, lapsed after Friday 11 December 2026". */
export function standInWords({ status, lapsesAfter }: Pick<Booking, "status" | "lapsesAfter">, today: Day): string {
  if (lapsesAfter === null || (status !== "enquiry" && status !== "held")) return status;
  const word = isLapsed({ status, lapsesAfter }, today) ? ", lapsed after" : " until";
  return `${status}${word} ${inFull(lapsesAfter)}`;
}

/** What was done, for the list of changes: "reopened the enquiry of Ivy until Friday 11 December 2026". */
export const reopenedTitle = ({ client, status }: Pick<Booking, "client" | "status">, until: Day): string =>
  `reopened the ${status === "held" ? "hold" : "enquiry"} of ${client} until ${inFull(until)}`;

/** Bookings without a day on which they lapse, counted: "3 enquiries and 1 hold have no day on which they lapse". */
export function withoutDayInWords(bookings: readonly Pick<Booking, "status">[]): string {
  const holdCount = bookings.filter(({ status }) => status === "held").length;
  const enquiryCount = bookings.length - holdCount;
  const counted = [
    enquiryCount > 0 && countOf(enquiryCount, "enquiry", "enquiries"),
    holdCount > 0 && countOf(holdCount, "hold"),
  ].filter((part) => part !== false);
  return `${counted.join(" and ")} ${bookings.length === 1 ? "has" : "have"} no day on which ${bookings.length === 1 ? "it lapses" : "they lapse"}`;
}
