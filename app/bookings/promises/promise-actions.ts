"use server";

import { z } from "zod";
import { putPromises } from "#db/write/bookings";
import { yearOf } from "#lib/domain/day";
import { promiseState } from "#lib/plan/road/promise-state";
import { coveredPromises } from "#lib/plan/road/promises";
import { countOf } from "#lib/plan/words/numbers";
import { promiseTitle } from "#lib/plan/words/promise-words";
import { action, refusal } from "../../action";
import { today } from "../../clock";
import { loadPlan } from "../../load";
import { unpromised } from "./unpromised";

/** Promises a confirmed booking what the plan covers of it now: more than before, or less, which is the grower's choice. */
export const promiseCovered = action(
  z.object({ bookingId: z.coerce.number().int() }),
  (database, { bookingId }, farm) => {
    const booking = farm.bookings.find(({ id }) => id === bookingId);
    if (booking?.status !== "confirmed")
      return refusal("", "only a confirmed booking on the farm can be promised stems");
    const { match } = loadPlan(yearOf(booking.eventOn));
    const { promisedStems, coveredStems } = promiseState(match, bookingId);
    const title = promiseTitle(booking.client, promisedStems, coveredStems);
    return putPromises(database, title, [{ bookingId, promises: coveredPromises(match, bookingId) }]);
  },
);

/** Promises every confirmed booking of a season that is to come, and was promised nothing yet, what the plan covers of it. */
export const promiseAllCovered = action(
  z.object({ seasonYear: z.coerce.number().int() }),
  (database, { seasonYear }) => {
    const { match } = loadPlan(seasonYear);
    const made = unpromised(match, seasonYear, today()).map(({ id }) => ({
      bookingId: id,
      promises: coveredPromises(match, id),
    }));
    const stems = made.flatMap(({ promises }) => promises).reduce((sum, { stemCount }) => sum + stemCount, 0);
    return putPromises(database, `promised ${countOf(stems, "stem")} to ${countOf(made.length, "booking")}`, made);
  },
);
