"use server";

import { addBooking } from "#db/write/bookings";
import type { Day } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import { HOLD } from "#lib/domain/records/enquiry";
import { heldBooking } from "#lib/plan/road/enquiry";
import { holdNote } from "#lib/plan/words/enquiry-words";
import { action } from "../action";
import { today } from "../clock";
import { formIn, readEnquiry } from "./asked-enquiry";

/** Holds an enquiry as a booking; the question is then empty again, with the booking named above it. */
export const holdEnquiry = action(
  (values, { farm }) => {
    const asked = readEnquiry(formIn(values.all()), farm);
    const hold = values.record(HOLD, farm);
    if (!asked.ok || !hold.ok)
      return { ok: false, problems: [asked, hold].flatMap((read) => (read.ok ? [] : read.problems)) };
    const { client, heldUntil } = hold.parsed;
    const problems = oddDays(asked.parsed.eventOn, heldUntil);
    if (problems.length > 0) return { ok: false, problems };
    const note = holdNote(asked.parsed, today());
    const held = heldBooking(asked.parsed, farm);
    return { ok: true, parsed: { ...held, client, lapsesAfter: heldUntil, note, takenOn: today() } };
  },
  addBooking,
  (bookingId) => `/enquiry?held=${bookingId}`,
);

/** A hold ends between today and the event, and an event that is over is not held. */
function oddDays(eventOn: Day, heldUntil: Day): Problem[] {
  if (eventOn < today()) return [{ place: "", message: "the day asked for is past" }];
  if (heldUntil < today()) return [{ place: "heldUntil", message: "this day is past: choose one from today on" }];
  if (heldUntil > eventOn) return [{ place: "heldUntil", message: "hold it until the event at most" }];
  return [];
}
