"use server";

import { z } from "zod";
import { setLapses } from "#db/write/bookings";
import { habitualLapse, isLapsed } from "#lib/plan/road/lapsed";
import { reopenedTitle } from "#lib/plan/words/lapse-words";
import { countOf } from "#lib/plan/words/numbers";
import { action, refusal } from "../../action";
import { today } from "../../clock";
import { withoutLapseDay } from "./without-lapse-day";

/** Reopens an enquiry or a hold that has lapsed: it asks for its stems again, for as many days as the farm keeps such a one. */
export const reopenBooking = action(
  z.object({ bookingId: z.coerce.number().int() }),
  (database, { bookingId }, { farm, bookings }) => {
    const booking = bookings.find(({ id }) => id === bookingId);
    if (!booking || !isLapsed(booking, today()))
      return refusal("", "this booking is not on the farm, or has not lapsed");
    const lapsesAfter = habitualLapse(booking, farm, today());
    if (lapsesAfter === null || lapsesAfter < today())
      return refusal("", "its event is over: move it to another day first");
    return setLapses(database, reopenedTitle(booking, lapsesAfter), [{ bookingId, lapsesAfter, takenOn: today() }]);
  },
);

/** Gives every enquiry and hold of a season that has no day on which it lapses the farm's habit, counted from today. */
export const giveLapses = action(
  z.object({ seasonYear: z.coerce.number().int() }),
  (database, { seasonYear }, { farm, bookings }) => {
    const set = withoutLapseDay(bookings, seasonYear, today()).map((booking) => ({
      bookingId: booking.id,
      lapsesAfter: habitualLapse(booking, farm, today()),
    }));
    if (set.length === 0) return refusal("", "every enquiry and hold has its day already");
    return setLapses(database, `said after which day ${countOf(set.length, "booking")} lapse`, set);
  },
);
