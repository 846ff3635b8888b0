"use server";

import { z } from "zod";
import { setFinalCount } from "#db/write/bookings";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import { finalCountOf } from "#lib/plan/road/final-count";
import { isCutFor, isLapsed } from "#lib/plan/road/lapsed";
import { finalCountTitle } from "#lib/plan/words/final-count-words";
import { action, refusal } from "../../action";
import { today } from "../../clock";

const ofBooking = z.object({ bookingId: z.coerce.number().int() });

/** Takes the pieces of a booking, as they stand, as its final count [T13]; taken again, it stands in the place of the one before. */
export const takeFinalCount = action(ofBooking, (database, { bookingId }, { bookings, recipes }) => {
  const booking = bookings.find(({ id }) => id === bookingId);
  if (!booking) return refusal("", "this booking is not on the farm any more");
  if (!isCutFor(booking) || booking.status === "cancelled" || isLapsed(booking, today()))
    return refusal("", "only a held or confirmed booking has a final count: confirm it first");
  const count = finalCountOf(booking, recipes, today());
  return setFinalCount(database, bookingId, count, finalCountTitle(booking.client, count.finalStems ?? 0));
});

/** Opens a final count again, as if none had been taken. */
export const openFinalCount = action(ofBooking, (database, { bookingId }, { bookings }) => {
  const booking = bookings.find(({ id }) => id === bookingId);
  if (!booking || booking.finalOn === null) return refusal("", "this booking has no final count any more");
  return setFinalCount(database, bookingId, NO_FINAL_COUNT, `opened the final count of ${booking.client} again`);
});
