"use server";

import { z } from "zod";
import { addBooking, removeBooking, setBookingStatus, updateBooking } from "#db/write/bookings";
import { yearOf } from "#lib/domain/day";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import { habitualLapse } from "#lib/plan/road/lapsed";
import { promisedDraft } from "#lib/plan/road/promised-draft";
import { takenToday } from "#lib/plan/road/taken-on";
import { action, idIn, readEntry } from "../action";
import { today } from "../clock";
import { loadPlan } from "../load";
import { oddEntries } from "./editor/odd-entries";
import { parseBookingForm } from "./editor/parse-form";
import { unknownChoices } from "./editor/unknown-choices";

/** Writes a booking, new or changed, and opens it; its final count stays as it was taken. A confirmed one is promised what the plan covers of it. */
export const saveBooking = action(
  (values, { farm, bookings, recipes }) =>
    readEntry(values, "bookingId", bookings, (before) => {
      const read = parseBookingForm(values.json("booking"), farm);
      const problems = read.ok ? oddEntries(read.parsed, { recipes, before, today: today() }) : [];
      if (!read.ok || problems.length > 0) return { ok: false, problems: read.ok ? problems : read.problems };
      const { finalOn, finalPieces, finalStems } = before ?? NO_FINAL_COUNT;
      return { ok: true, parsed: { ...read.parsed, finalOn, finalPieces, finalStems } };
    }),
  (database, { id, draft }, farm) => {
    const taken = takenToday(farm, draft, id, today());
    // What cannot be planned is refused by the write.
    const isPlannable = unknownChoices(taken).length === 0;
    const promised = isPlannable ? promisedDraft(loadPlan(yearOf(taken.eventOn)), taken, id) : taken;
    return id === null ? addBooking(database, promised) : updateBooking(database, id, promised);
  },
  (bookingId) => `/bookings/${bookingId}`,
);

/** Cancels a booking, or takes it back as an enquiry of today, which lapses by the farm's habit; what it was promised lapses, and an undo brings that back too. It is confirmed on its own page, by its form. */
export const changeStatus = action(
  z.object({ bookingId: z.coerce.number().int(), status: z.enum(["cancelled", "enquiry"]) }),
  (database, { bookingId, status }, { farm, bookings }) => {
    const booking = bookings.find(({ id }) => id === bookingId);
    const isReopened = booking?.status === "cancelled" && status === "enquiry";
    const lapsesAfter = booking ? habitualLapse({ ...booking, status }, farm, today()) : null;
    return setBookingStatus(database, bookingId, status, { lapsesAfter, ...(isReopened ? { takenOn: today() } : {}) });
  },
);

/** Takes a booking out of the farm's records altogether; the undo on the next page brings it back. */
export const deleteBooking = action(idIn("bookingId"), removeBooking, () => "/bookings");
