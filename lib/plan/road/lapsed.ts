import { addDays, type Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";

/** Whether an enquiry or a hold has lapsed on a day: its last day is over, and it asks for nothing [N4]. On no day (null) nothing has. */
export const isLapsed = (
  { status, lapsesAfter }: Pick<Booking, "status" | "lapsesAfter">,
  today: Day | null,
): boolean =>
  today !== null && lapsesAfter !== null && lapsesAfter < today && (status === "enquiry" || status === "held");

/** Whether a booking asks for stems on a day: it is neither cancelled [N3] nor lapsed [N4]. */
export const asksForStems = (booking: Pick<Booking, "status" | "lapsesAfter">, today: Day | null): boolean =>
  booking.status !== "cancelled" && !isLapsed(booking, today);

/** Whether anything is cut or bought in for a booking: for an enquiry nothing is, it only shows what it could have [N5]. */
export const isCutFor = ({ status }: Pick<Booking, "status">): boolean => status !== "enquiry";

/** The farm without the bookings that have lapsed on a day; the farm itself where none has. */
export function withoutLapsed(snapshot: Snapshot, today: Day | null): Snapshot {
  const bookings = snapshot.bookings.filter((booking) => !isLapsed(booking, today));
  return bookings.length === snapshot.bookings.length ? snapshot : { ...snapshot, bookings };
}

/** The day after which a booking lapses by the farm's habit, counted from today, and at the event at the latest; null for one that does not lapse. */
export function habitualLapse(
  { status, eventOn }: Pick<Booking, "status" | "eventOn">,
  { enquiryDays, holdDays }: Pick<Farm, "enquiryDays" | "holdDays">,
  today: Day,
): Day | null {
  if (status !== "enquiry" && status !== "held") return null;
  const day = addDays(today, status === "enquiry" ? enquiryDays : holdDays);
  return day < eventOn ? day : eventOn;
}
