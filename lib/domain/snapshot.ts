import { stemsAskedFor, tooManyStems } from "./booking-stems";
import type { Parsed, Problem } from "./problem";
import type { Bed } from "./records/bed";
import type { Booking } from "./records/booking";
import type { BudLook } from "./records/bud-look";
import type { CoolerStock } from "./records/cooler-lot";
import type { CoolerMove } from "./records/cooler-move";
import type { Crop } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import type { Cut } from "./records/cut";
import type { Farm } from "./records/farm-settings";
import type { FirstCut } from "./records/first-cut";
import type { Loss } from "./records/loss";
import type { Planting } from "./records/planting";
import type { Purchase } from "./records/purchase";
import type { Recipe } from "./records/recipe";
import type { Review } from "./records/review";
import type { StandingOrder } from "./records/standing-order";
import type { Variety } from "./records/variety";
import type { DailyWeather } from "./weather";

/** What a season has shown of its plantings, by id: how many days later than expected they bloom, and how many times the stems they give. */
export type ShownSeason = ReadonlyMap<number, { readonly daysLate: number; readonly yieldFactor: number }>;

/** Everything a plan may know of the farm, each row parsed, every reference checked. Lists are in order of id. */
export type Snapshot = {
  readonly farm: Farm;
  readonly crops: readonly Crop[];
  readonly varieties: readonly Variety[];
  readonly curves: readonly BloomCurve[];
  readonly recipes: readonly Recipe[];
  readonly beds: readonly Bed[];
  readonly plantings: readonly Planting[];
  readonly bookings: readonly Booking[];
  readonly coolerStock: readonly CoolerStock[];
  /** What left the cooler, of all seasons. */
  readonly coolerMoves: readonly CoolerMove[];
  /** What was ordered from suppliers, and what of it arrived. */
  readonly purchases: readonly Purchase[];
  readonly standingOrders: readonly StandingOrder[];
  /** What was cut, of all seasons. */
  readonly cuts: readonly Cut[];
  readonly budLooks: readonly BudLook[];
  /** What winters, voles or hail left of plantings, of all seasons. */
  readonly losses: readonly Loss[];
  /** First cuts of past seasons that were written down to learn from. */
  readonly firstCuts: readonly FirstCut[];
  /** What became of the stems of events that are over. */
  readonly reviews: readonly Review[];
  /** The days that were recorded; null while there are none. The same object as long as no day changes. */
  readonly weather: DailyWeather | null;
  /** What is still ahead is forecast with this [O5]. No record of the farm, but read from its records; absent where nothing was shown or the farm does not go by it. */
  readonly shown?: ShownSeason;
};

/** The rows in order of id; the same list when they stand so. */
export const inOrderOfId = <T extends { readonly id: number }>(rows: readonly T[]): readonly T[] =>
  rows.every((row, index) => index === 0 || rows[index - 1].id <= row.id)
    ? rows
    : [...rows].sort((a, b) => a.id - b.id);

/** Rows by id. Throws RangeError when an id is unknown: a checked snapshot has none such. */
export class ById<T extends { readonly id: number }> {
  readonly #rows = new Map<number, T>();
  readonly #word: string;

  constructor(word: string, rows: readonly T[]) {
    this.#word = word;
    for (const row of rows) this.#rows.set(row.id, row);
  }

  has = (id: number): boolean => this.#rows.has(id);
  find = (id: number): T | undefined => this.#rows.get(id);
  get(id: number): T {
    const row = this.#rows.get(id);
    if (!row) throw new RangeError(`${this.#word} ${id} is not on this farm`);
    return row;
  }
}

/** Checks what one row alone cannot say: that every id named by a row exists, and then that no booking asks for more stems than a plan can reckon with. */
export function checkSnapshot(snapshot: Snapshot): Parsed<Snapshot> {
  const crops = new ById("crop", snapshot.crops);
  const varieties = new ById("variety", snapshot.varieties);
  const beds = new ById("bed", snapshot.beds);
  const plantings = new ById("planting", snapshot.plantings);
  const recipes = new ById("recipe", snapshot.recipes);
  const problems: Problem[] = [];
  const need = (known: { has: (id: number) => boolean }, id: number | null, place: string, word: string) => {
    if (id !== null && !known.has(id)) problems.push({ place, message: `${word} ${id} does not exist` });
  };
  snapshot.varieties.forEach((row) => {
    need(crops, row.cropId, `varieties[${row.id}].cropId`, "crop");
  });
  snapshot.curves.forEach((row) => {
    need(crops, row.cropId, `curves[${row.id}].cropId`, "crop");
    need(varieties, row.varietyId, `curves[${row.id}].varietyId`, "variety");
    need(plantings, row.plantingId, `curves[${row.id}].plantingId`, "planting");
  });
  snapshot.plantings.forEach((row) => {
    need(beds, row.bedId, `plantings[${row.id}].bedId`, "bed");
    need(varieties, row.varietyId, `plantings[${row.id}].varietyId`, "variety");
  });
  snapshot.coolerStock.forEach((row) => {
    need(varieties, row.varietyId, `coolerStock[${row.id}].varietyId`, "variety");
  });
  const bookings = new ById("booking", snapshot.bookings);
  snapshot.budLooks.forEach((row) => {
    need(beds, row.bedId, `budLooks[${row.id}].bedId`, "bed");
    need(varieties, row.varietyId, `budLooks[${row.id}].varietyId`, "variety");
  });
  snapshot.losses.forEach((row) => {
    need(beds, row.bedId, `losses[${row.id}].bedId`, "bed");
    need(varieties, row.varietyId, `losses[${row.id}].varietyId`, "variety");
  });
  snapshot.firstCuts.forEach((row) => {
    need(crops, row.cropId, `firstCuts[${row.id}].cropId`, "crop");
    need(varieties, row.varietyId, `firstCuts[${row.id}].varietyId`, "variety");
  });
  snapshot.reviews.forEach((row) => {
    need(bookings, row.bookingId, `reviews[${row.id}].bookingId`, "booking");
  });
  snapshot.standingOrders.forEach((row) => {
    need(crops, row.cropId, `standingOrders[${row.id}].cropId`, "crop");
    need(recipes, row.recipeId, `standingOrders[${row.id}].recipeId`, "recipe");
  });
  snapshot.cuts.forEach((row) => {
    need(beds, row.bedId, `cuts[${row.id}].bedId`, "bed");
    need(varieties, row.varietyId, `cuts[${row.id}].varietyId`, "variety");
    need(bookings, row.bookingId, `cuts[${row.id}].bookingId`, "booking");
  });
  snapshot.purchases.forEach((row) => {
    need(varieties, row.varietyId, `purchases[${row.id}].varietyId`, "variety");
    need(bookings, row.bookingId, `purchases[${row.id}].bookingId`, "booking");
  });
  snapshot.coolerMoves.forEach((row) => {
    need(varieties, row.varietyId, `coolerMoves[${row.id}].varietyId`, "variety");
    need(bookings, row.bookingId, `coolerMoves[${row.id}].bookingId`, "booking");
  });
  snapshot.bookings.forEach((row) => {
    row.pieces.forEach((piece, index) => {
      need(recipes, piece.recipeId, `bookings[${row.id}].pieces[${index}].recipeId`, "recipe");
    });
    row.stemLines.forEach((line, index) => {
      need(crops, line.cropId, `bookings[${row.id}].stemLines[${index}].cropId`, "crop");
    });
    row.promises.forEach((line, index) => {
      need(crops, line.cropId, `bookings[${row.id}].promises[${index}].cropId`, "crop");
    });
    row.unacceptableCropIds.forEach((id, index) => {
      need(crops, id, `bookings[${row.id}].unacceptableCropIds[${index}]`, "crop");
    });
  });
  if (problems.length) return { ok: false, problems };
  const overfull = snapshot.bookings.flatMap((row) => {
    const message = tooManyStems(stemsAskedFor(row, (id) => recipes.get(id).lines));
    return message ? [{ place: `bookings[${row.id}]`, message }] : [];
  });
  return overfull.length ? { ok: false, problems: overfull } : { ok: true, parsed: snapshot };
}
