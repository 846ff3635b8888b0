import type { BookingDraft } from "#lib/domain/records/booking";
import type { StandingOrderDraft } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { among } from "./arbitraries";

/** Drafts whose ids are places in a list, with the ids that a farm has at these places. */

export const booked = (now: Snapshot, draft: BookingDraft): BookingDraft => ({
  ...draft,
  unacceptableCropIds: draft.unacceptableCropIds.map((choice) => among(now.crops, choice)),
  pieces: draft.pieces.map((piece) => ({ ...piece, recipeId: among(now.recipes, piece.recipeId) })),
  stemLines: draft.stemLines.map((line) => ofCropOnFarm(now, line)),
  promises: draft.promises.map((line) => ofCropOnFarm(now, line)),
});

const ofCropOnFarm = <Line extends { cropId: number | null }>(now: Snapshot, line: Line): Line => ({
  ...line,
  cropId: line.cropId === null ? null : among(now.crops, line.cropId),
});

export const ordered = (now: Snapshot, draft: StandingOrderDraft): StandingOrderDraft => ({
  ...ofCropOnFarm(now, draft),
  recipeId: draft.recipeId === null ? null : among(now.recipes, draft.recipeId),
});
