import fc from "fast-check";
import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { recordBudLook } from "#db/write/bud-looks";
import { recordMoves, removeMove } from "#db/write/cooler-moves";
import { removeCuts } from "#db/write/cuts";
import { recordReviews, removeReviews } from "#db/write/reviews";
import { anyReview } from "../any-review";
import { among, budLookDraft, cutDraft, stockDraft } from "./arbitraries";
import { corrected, taken, tally } from "./counted-rows";
import { recordCuts } from "./record-cuts";
import { type Step, step } from "./step";
import { moveDraft } from "./store-arbitraries";

const pick = fc.nat();

/** One write of what happens in a season: stems in the cooler, cuts, looks at buds, reviews. */
export const seasonStep: fc.Arbitrary<Step> = fc.oneof(
  step("put stems into the cooler", fc.tuple(pick, stockDraft), (to, now, [at, stock]) =>
    putCoolerStock(to, { ...stock, varietyId: among(now.varieties, at) }),
  ),
  step("take stems out of the cooler", pick, (to, now, at) => removeCoolerStock(to, among(now.coolerStock, at))),
  step("move stems out of the cooler", moveDraft, (to, now, move) =>
    recordMoves(to, [
      {
        ...move,
        varietyId: among(now.varieties, move.varietyId),
        bookingId: move.bookingId === null ? null : among(now.bookings, move.bookingId),
      },
    ]),
  ),
  step("take a move back", pick, (to, now, at) => removeMove(to, among(now.coolerMoves, at))),
  {
    weight: 3,
    arbitrary: step("record cuts", fc.array(cutDraft, { minLength: 1, maxLength: 3 }), (to, now, cuts) =>
      recordCuts(
        to,
        cuts.map((cut) => ({
          ...cut,
          bedId: among(now.beds, cut.bedId),
          varietyId: among(now.varieties, cut.varietyId),
          bookingId: cut.bookingId === null ? null : among(now.bookings, cut.bookingId),
        })),
      ),
    ),
  },
  step("count a row", fc.tuple(cutDraft, fc.nat(3)), (to, now, [{ cutOn, bedId, varietyId, stemsCut }, seenStems]) =>
    taken(
      to,
      tally({
        ...{ cutOn, stemsCut, seenStems },
        bedId: among(now.beds, bedId),
        varietyId: among(now.varieties, varietyId),
      }),
      "Wren",
    ),
  ),
  {
    weight: 4,
    arbitrary: step("correct a row", fc.tuple(pick, pick), (to, now, [at, stemsCut]) => {
      const place = now.cuts.find(({ id }) => id === among(now.cuts, at)) ?? tally();
      return corrected(to, stemsCut % 1000, tally({ ...place, asked: [] }));
    }),
  },
  step("note buds", budLookDraft, (to, now, look) =>
    recordBudLook(to, { ...look, bedId: among(now.beds, look.bedId), varietyId: among(now.varieties, look.varietyId) }),
  ),
  step("review an event", fc.array(anyReview, { minLength: 1, maxLength: 3 }), (to, now, reviews) =>
    recordReviews(
      to,
      reviews.map((review) => ({ ...review, bookingId: among(now.bookings, review.bookingId) })),
    ),
  ),
  step("take back a review", pick, (to, now, at) => removeReviews(to, among(now.bookings, at))),
  // It comes through only where cuts were recorded before.
  {
    weight: 3,
    arbitrary: step("take back cuts", pick, (to, now, at) => removeCuts(to, [among(now.cuts, at)])),
  },
);
