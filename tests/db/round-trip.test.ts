import fc from "fast-check";
import { expect, test } from "vitest";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import type { Booking } from "#lib/domain/records/booking";
import { anyReview } from "../any-review";
import { anyVariety } from "../any-traits";
import { anyFirstCuts } from "./any-first-cut";
import { budLookDraft, lossDraft } from "./any-look";
import {
  bedDraft,
  bookingDraft,
  cropDraft,
  curveDraft,
  cutDraft,
  farmSettings,
  name,
  orderDraft,
  plantingDraft,
  recipeDraft,
  stockDraft,
} from "./arbitraries";
import { done, kept, withDatabase } from "./kept-farm";
import { moveDraft, purchaseDraft } from "./store-arbitraries";

const SEED = 20_270_918;

const several = <T, Key>(drafts: fc.Arbitrary<T>, nameOf: (draft: T) => Key) =>
  fc.uniqueArray(drafts, { selector: nameOf, minLength: 1, maxLength: 4 });

const anyFarm = fc.record({
  farm: farmSettings,
  crops: several(cropDraft, (crop) => crop.name),
  curves: fc.uniqueArray(curveDraft, { selector: ({ treatment }) => treatment, maxLength: 3 }),
  recipes: several(recipeDraft, (recipe) => recipe.name),
  variety: anyVariety(name),
  beds: several(bedDraft, (bed) => bed.name),
  plantings: fc.array(plantingDraft, { maxLength: 4 }),
  bookings: several(bookingDraft, ({ client, eventOn }) => `${eventOn} ${client}`),
  stock: fc.array(stockDraft, { maxLength: 3 }),
  orders: fc.array(orderDraft, { maxLength: 3 }),
  moves: fc.array(moveDraft, { maxLength: 3 }),
  purchases: fc.array(purchaseDraft, { maxLength: 3 }),
  budLooks: fc.uniqueArray(budLookDraft, { selector: ({ lookedOn }) => lookedOn, maxLength: 4 }),
  losses: fc.uniqueArray(lossDraft, { selector: ({ seenOn }) => seenOn, maxLength: 4 }),
  firstCuts: anyFirstCuts,
  reviews: fc.uniqueArray(anyReview, { selector: ({ role }) => role, maxLength: 3 }),
  cuts: fc.uniqueArray(cutDraft, { selector: ({ cutOn }) => cutOn, maxLength: 4 }),
});

/** Every other cut or move is for the first booking. */
const whoseCut = (at: number): number | null => (at % 2 === 0 ? 1 : null);
const nameOfWhose = (at: number, { client, eventOn }: Pick<Booking, "client" | "eventOn">) =>
  whoseCut(at) === null ? { client: null, eventOn: null } : { client, eventOn };

test("everything that the domain allows is kept, and comes back equal", () => {
  fc.assert(
    fc.property(
      anyFarm,
      ({
        farm,
        crops,
        curves,
        recipes,
        variety,
        beds,
        plantings,
        bookings,
        stock,
        orders,
        cuts,
        budLooks,
        losses,
        firstCuts,
        reviews,
        moves,
        purchases,
      }) =>
        withDatabase((database) => {
          const whose = { crop: crops[0].name, ...variety };
          const { variety: called, ...own } = variety;
          const namingCrop = <Line extends { cropId: number | null }>(line: Line) => ({
            ...line,
            crop: line.cropId === null ? null : crops[line.cropId % crops.length].name,
          });
          done(
            startFarm(database, {
              farm,
              crops: crops.map((crop, index) => ({ ...crop, curves: index === 0 ? curves : [] })),
              recipes,
            }),
          );
          done(
            importRecords(database, {
              curves: curves.map((curve) => ({ ...curve, crop: whose.crop, variety: whose.variety })),
              varieties: [whose],
              beds,
              plantings: plantings.map((planting) => ({ ...planting, ...whose, bed: beds[0].name })),
              bookings: bookings.map(({ unacceptableCropIds, ...booking }) => ({
                ...booking,
                unacceptableCrops: unacceptableCropIds.map((at) => crops[at % crops.length].name),
                pieces: booking.pieces.map((piece) => ({
                  ...piece,
                  recipe: recipes[piece.recipeId % recipes.length].name,
                })),
                stemLines: booking.stemLines.map(namingCrop),
                promises: booking.promises.map(namingCrop),
              })),
              coolerStock: stock.map((line) => ({ ...line, ...whose })),
              budLooks: budLooks.map(({ bedId: _bed, varietyId: _variety, ...look }) => ({
                ...look,
                ...whose,
                bed: beds[0].name,
              })),
              losses: losses.map(({ bedId: _bed, varietyId: _variety, ...loss }) => ({
                ...loss,
                ...whose,
                bed: beds[0].name,
              })),
              firstCuts: firstCuts.flatMap((first) => [
                { ...first, crop: crops[0].name, variety: null },
                { ...first, crop: crops[0].name, variety: variety.variety },
              ]),
              reviews: reviews.map(({ bookingId: _booking, ...review }) => ({
                ...review,
                client: bookings[0].client,
                eventOn: bookings[0].eventOn,
              })),
              standingOrders: orders.map(({ cropId, recipeId, ...order }) => ({
                ...namingCrop({ ...order, cropId }),
                recipe: recipeId === null ? null : recipes[recipeId % recipes.length].name,
              })),
              cuts: cuts.map(({ bedId: _bed, varietyId: _variety, bookingId: _booking, ...cut }, at) => ({
                ...cut,
                ...whose,
                bed: beds[0].name,
                ...nameOfWhose(at, bookings[0]),
              })),
              purchases: purchases.map(({ varietyId: _variety, bookingId: _booking, ...purchase }, at) => ({
                ...purchase,
                ...whose,
                ...nameOfWhose(at, bookings[0]),
              })),
              coolerMoves: moves.map(({ varietyId: _variety, bookingId: _booking, ...move }, at) => ({
                ...move,
                ...whose,
                ...nameOfWhose(at, bookings[0]),
              })),
            }),
          );

          const cropIds = crops.map((_, index) => index + 1);
          const ofCropOnFarm = <Line extends { cropId: number | null }>(line: Line) => ({
            ...line,
            cropId: line.cropId === null ? null : cropIds[line.cropId % cropIds.length],
          });
          const drafts = bookings.map((booking, index) => ({
            ...booking,
            id: index + 1,
            unacceptableCropIds: booking.unacceptableCropIds.map((at) => cropIds[at % cropIds.length]),
            pieces: booking.pieces.map((piece) => ({ ...piece, recipeId: 1 + (piece.recipeId % recipes.length) })),
            stemLines: booking.stemLines.map(ofCropOnFarm),
            promises: booking.promises.map(ofCropOnFarm),
          }));
          const ofCrop = curves.map((curve) => ({ ...curve, cropId: 1, varietyId: null, plantingId: null }));
          const ofVariety = curves.map((curve) => ({ ...curve, cropId: 1, varietyId: 1, plantingId: null }));
          expect(kept(database)).toEqual({
            farm,
            crops: numbered(crops),
            varieties: [{ id: 1, cropId: 1, name: called, ...own }],
            curves: numbered<object>([...ofCrop, ...ofVariety]),
            recipes: numbered(recipes),
            beds: numbered(beds),
            plantings: numbered(plantings.map((planting) => ({ ...planting, bedId: 1, varietyId: 1 }))),
            bookings: drafts,
            coolerStock: numbered(stock.map((line) => ({ ...line, varietyId: 1 }))),
            budLooks: numbered(budLooks.map((look) => ({ ...look, bedId: 1, varietyId: 1 }))),
            losses: numbered(losses.map((loss) => ({ ...loss, bedId: 1, varietyId: 1 }))),
            firstCuts: numbered(
              firstCuts.flatMap((first) => [null, 1].map((varietyId) => ({ ...first, cropId: 1, varietyId }))),
            ),
            reviews: numbered(reviews.map((review) => ({ ...review, bookingId: 1 }))),
            standingOrders: numbered(
              orders.map((order) => ({
                ...ofCropOnFarm(order),
                recipeId: order.recipeId === null ? null : 1 + (order.recipeId % recipes.length),
              })),
            ),
            purchases: numbered(purchases.map((row, at) => ({ ...row, varietyId: 1, bookingId: whoseCut(at) }))),
            coolerMoves: numbered(moves.map((move, at) => ({ ...move, varietyId: 1, bookingId: whoseCut(at) }))),
            cuts: numbered(cuts.map((cut, at) => ({ ...cut, bedId: 1, varietyId: 1, bookingId: whoseCut(at) }))),
            weather: null,
          });
        }),
    ),
    { seed: SEED, numRuns: 30 },
  );
});

const numbered = <Row extends object>(rows: readonly Row[]) => rows.map((row, index) => ({ id: index + 1, ...row }));
