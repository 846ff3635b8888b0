"use server";

import { setFigure } from "#db/write/farm";
import { putRecipe } from "#db/write/recipes";
import { recordReviews, removeReviews } from "#db/write/reviews";
import { inPercent } from "#lib/plan/words/numbers";
import { action, idIn } from "../../action";
import { reviewsOfEvent } from "./review-values";
import { suggestedRecipe, suggestedSpare } from "./suggested";

/** Records what became of the stems of an event. */
export const saveReview = action(reviewsOfEvent, recordReviews);

/** Takes the review of an event back. */
export const takeBackReview = action(idIn("bookingId"), removeReviews);

/** Takes a suggested number of stems into its recipe. */
export const adoptRecipe = action(suggestedRecipe, putRecipe);

/** Takes the suggested spare for new bookings. */
export const adoptSpare = action(suggestedSpare, (database, spareShare, { farm }) =>
  setFigure(database, { ...farm, spareShare }, `set the spare of a new booking to ${inPercent(spareShare)}`),
);
