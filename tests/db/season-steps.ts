import fc from "fast-check";
import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { recordBudLook } from "#db/write/bud-looks";
import { recordMoves, removeMove } from "#db/write/cooler-moves";
import { removeCuts } from "#db/write/cuts";
import { changeFirstCut, keepFirstCuts, removeFirstCut } from "#db/write/first-cuts";
import { recordLoss, removeLoss } from "#db/write/losses";
import { changePurchase, placePurchases, recordArrivals, removePurchase, takeBackArrival } from "#db/write/purchases";
import { recordReviews, removeReviews } from "#db/write/reviews";
import { anyReview } from "../any-review";
import { anyFirstCut, anyFirstCuts } from "./any-first-cut";
import { budLookDraft, lossDraft } from "./any-look";
import { among, cutDraft, day, stockDraft } from "./arbitraries";
import { corrected, taken, tally } from "./counted-rows";
import { recordCuts } from "./record-cuts";
import { type Step, step } from "./step";
import { moveDraft, purchaseDraft } from "./store-arbitraries";

const pick = fc.nat();

/** The writes of what happens in a season, each way back after what it takes back: stems in the cooler, orders, cuts, looks at buds, reviews. */
export const SEASON_STEPS: readonly fc.Arbitrary<Step>[] = [
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
  step("record cuts", fc.array(cutDraft, { minLength: 1, maxLength: 3 }), (to, now, cuts) =>
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
  step("correct a row", fc.tuple(pick, pick), (to, now, [at, stemsCut]) => {
    const place = now.cuts.find(({ id }) => id === among(now.cuts, at)) ?? tally();
    return corrected(to, stemsCut % 1000, tally({ ...place, asked: [] }));
  }),
  step("note buds", budLookDraft, (to, now, look) =>
    recordBudLook(to, { ...look, bedId: among(now.beds, look.bedId), varietyId: among(now.varieties, look.varietyId) }),
  ),
  step("write down what is left", lossDraft, (to, now, loss) =>
    recordLoss(to, { ...loss, bedId: among(now.beds, loss.bedId), varietyId: among(now.varieties, loss.varietyId) }),
  ),
  step("take back what is left", pick, (to, now, at) => removeLoss(to, among(now.losses, at))),
  step("keep first cuts", fc.tuple(pick, anyFirstCuts), (to, now, [at, firstCuts]) =>
    keepFirstCuts(
      to,
      firstCuts.map((first) => ({ ...first, cropId: among(now.crops, at), varietyId: null })),
    ),
  ),
  step("change a first cut", fc.tuple(pick, anyFirstCut), (to, now, [at, first]) => {
    const id = among(now.firstCuts, at);
    const { cropId = 0, varietyId = null } = now.firstCuts.find((row) => row.id === id) ?? {};
    return changeFirstCut(to, id, { ...first, cropId, varietyId });
  }),
  step("take a first cut away", pick, (to, now, at) => removeFirstCut(to, among(now.firstCuts, at))),
  step("review an event", fc.array(anyReview, { minLength: 1, maxLength: 3 }), (to, now, reviews) =>
    recordReviews(
      to,
      reviews.map((review) => ({ ...review, bookingId: among(now.bookings, review.bookingId) })),
    ),
  ),
  step("take back a review", pick, (to, now, at) => removeReviews(to, among(now.bookings, at))),
  step("take back cuts", pick, (to, now, at) => removeCuts(to, [among(now.cuts, at)])),
  step("order from a supplier", purchaseDraft, (to, now, { varietyId, bookingId, ...order }) =>
    placePurchases(to, [
      {
        ...order,
        flower: among(now.varieties, varietyId),
        bookingId: bookingId === null ? null : among(now.bookings, bookingId),
      },
    ]),
  ),
  step("change an order", fc.tuple(pick, purchaseDraft), (to, now, [at, { varietyId, ...order }]) =>
    changePurchase(to, {
      ...order,
      id: among(now.purchases, at),
      varietyId: among(now.varieties, varietyId),
      bookingId: null,
    }),
  ),
  step("receive an order", fc.tuple(pick, day, fc.nat(500)), (to, now, [at, arrivedOn, arrivedStems]) =>
    recordArrivals(to, { arrivedOn, arrivals: [{ id: among(now.purchases, at), arrivedStems }] }),
  ),
  step("take back an arrival", pick, (to, now, at) => takeBackArrival(to, among(now.purchases, at))),
  step("cancel an order", pick, (to, now, at) => removePurchase(to, among(now.purchases, at))),
];

/** One of them. */
export const seasonStep: fc.Arbitrary<Step> = fc.oneof(...SEASON_STEPS);
