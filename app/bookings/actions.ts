"use server";

import { z } from "zod";
import { addBooking, removeBooking, setBookingStatus, updateBooking } from "#db/write/bookings";
import { STATUSES } from "#lib/domain/words";
import { action, idIn, readEntry } from "../action";
import { today } from "../clock";
import { oddEntries } from "./editor/odd-entries";
import { parseBookingForm } from "./editor/parse-form";

/** Writes a booking, new or changed, and opens it. */
export const saveBooking = action(
  (values, { farm, bookings, recipes }) =>
    readEntry(values, "bookingId", bookings, (before) => {
      const read = parseBookingForm(values.json("booking"), farm);
      const problems = read.ok ? oddEntries(read.parsed, { recipes, before, today: today() }) : [];
      return problems.length > 0 ? { ok: false, problems } : read;
    }),
  (database, { id, draft }) => (id === null ? addBooking(database, draft) : updateBooking(database, id, draft)),
  (bookingId) => `/bookings/${bookingId}`,
);

/** Sets where a booking stands: to cancel it is to set it to cancelled, and can be undone. */
export const changeStatus = action(
  z.object({ bookingId: z.coerce.number().int(), status: z.enum(STATUSES) }),
  (database, { bookingId, status }) => setBookingStatus(database, bookingId, status),
);

/** Takes a booking out of the farm's records altogether; the undo on the next page brings it back. */
export const deleteBooking = action(idIn("bookingId"), removeBooking, () => "/bookings");
