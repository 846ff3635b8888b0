import { asc } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bed, coolerStock, planting } from "#db/schema/beds";
import {
  booking,
  bookingPiece,
  bookingPromise,
  bookingStemLine,
  bookingUnacceptableCrop,
  recipe,
  recipeLine,
} from "#db/schema/bookings";
import { budLook } from "#db/schema/bud-looks";
import { coolerMove } from "#db/schema/cooler-moves";
import { crop, variety } from "#db/schema/crops";
import { bloomCurve } from "#db/schema/curves";
import { cut } from "#db/schema/cuts";
import { farm } from "#db/schema/farm";
import { firstCut } from "#db/schema/first-cuts";
import { loss } from "#db/schema/losses";
import { cropOfRow, curveOfRow, farmOfRow, plantingOfRow, recipeLineOfRow } from "#db/schema/nested";
import { standingOrder } from "#db/schema/orders";
import { purchase } from "#db/schema/purchases";
import { review } from "#db/schema/reviews";
import { weatherYear } from "#db/schema/weather";
import { whatIf } from "#db/schema/what-ifs";
import type { Parsed } from "#lib/domain/problem";
import { bedSchema } from "#lib/domain/records/bed";
import { type Booking, bookingSchema } from "#lib/domain/records/booking";
import { budLookSchema } from "#lib/domain/records/bud-look";
import { coolerStockSchema } from "#lib/domain/records/cooler-lot";
import { coolerMoveSchema } from "#lib/domain/records/cooler-move";
import { cropSchema } from "#lib/domain/records/crop";
import { bloomCurveSchema } from "#lib/domain/records/curve";
import { cutSchema } from "#lib/domain/records/cut";
import { farmSchema } from "#lib/domain/records/farm-settings";
import { firstCutSchema } from "#lib/domain/records/first-cut";
import { lossSchema } from "#lib/domain/records/loss";
import { plantingSchema } from "#lib/domain/records/planting";
import { purchaseSchema } from "#lib/domain/records/purchase";
import { type Recipe, recipeSchema } from "#lib/domain/records/recipe";
import { reviewSchema } from "#lib/domain/records/review";
import { standingOrderSchema } from "#lib/domain/records/standing-order";
import { varietySchema } from "#lib/domain/records/variety";
import { type WeatherYear, weatherYearSchema } from "#lib/domain/records/weather-day";
import { checkSnapshot, type Snapshot } from "#lib/domain/snapshot";
import { type WhatIf, whatIfSchema } from "#lib/domain/what-if";
import { RowMemory } from "./row-memory";
import { RowParser } from "./row-parser";

/** True once the farm has been started: it has its row of settings. */
export const hasFarm = (database: FarmDatabase): boolean =>
  database.select({ id: farm.id }).from(farm).get() !== undefined;

/**
 * The whole farm as it stands at one moment, each row parsed and every reference checked; or everything that is wrong with it, each problem
 * with its row: "plantings[12].plantedOn". Lists are in order of id, lines of bookings and recipes in the order they were given.
 * @param memory  what was read of this farm last: rows that say the same are not parsed again and stay the same objects
 */
export const loadSnapshot = (database: FarmDatabase, memory = new RowMemory()): Parsed<Snapshot> =>
  // One transaction, so that a write by another process cannot fall between two tables.
  database.transaction(() => readSnapshot(database, memory));

function readSnapshot(database: FarmDatabase, memory: RowMemory): Parsed<Snapshot> {
  const rows = new RowParser(memory);
  const settings = database.select().from(farm).get();
  if (!settings) return { ok: false, problems: [{ place: "farm", message: "the farm has not been started yet" }] };
  const parsedFarm = rows.one("farm", farmSchema, farmOfRow(settings));
  const lists = {
    crops: rows.all("crops", cropSchema, database.select().from(crop).orderBy(asc(crop.id)).all(), cropOfRow),
    varieties: rows.all("varieties", varietySchema, database.select().from(variety).orderBy(asc(variety.id)).all()),
    curves: rows.all(
      "curves",
      bloomCurveSchema,
      database.select().from(bloomCurve).orderBy(asc(bloomCurve.id)).all(),
      curveOfRow,
    ),
    recipes: readRecipes(database, rows),
    beds: rows.all("beds", bedSchema, database.select().from(bed).orderBy(asc(bed.id)).all()),
    plantings: rows.all(
      "plantings",
      plantingSchema,
      database.select().from(planting).orderBy(asc(planting.id)).all(),
      plantingOfRow,
    ),
    bookings: readBookings(database, rows),
    coolerStock: rows.all(
      "coolerStock",
      coolerStockSchema,
      database.select().from(coolerStock).orderBy(asc(coolerStock.id)).all(),
    ),
    coolerMoves: rows.all(
      "coolerMoves",
      coolerMoveSchema,
      database.select().from(coolerMove).orderBy(asc(coolerMove.id)).all(),
    ),
    purchases: rows.all("purchases", purchaseSchema, database.select().from(purchase).orderBy(asc(purchase.id)).all()),
    budLooks: rows.all("budLooks", budLookSchema, database.select().from(budLook).orderBy(asc(budLook.id)).all()),
    losses: rows.all("losses", lossSchema, database.select().from(loss).orderBy(asc(loss.id)).all()),
    firstCuts: rows.all("firstCuts", firstCutSchema, database.select().from(firstCut).orderBy(asc(firstCut.id)).all()),
    standingOrders: rows.all(
      "standingOrders",
      standingOrderSchema,
      database.select().from(standingOrder).orderBy(asc(standingOrder.id)).all(),
    ),
    reviews: rows.all("reviews", reviewSchema, database.select().from(review).orderBy(asc(review.id)).all()),
    cuts: rows.all("cuts", cutSchema, database.select().from(cut).orderBy(asc(cut.id)).all()),
  };
  const weather = memory.weather(readWeatherYears(database, rows));
  if (!parsedFarm || rows.problems.length) return { ok: false, problems: rows.problems };
  return checkSnapshot(memory.snapshot({ farm: parsedFarm, ...lists, weather }));
}

const readWeatherYears = (database: FarmDatabase, rows: RowParser): readonly WeatherYear[] =>
  rows.all("weather", weatherYearSchema, database.select().from(weatherYear).orderBy(asc(weatherYear.id)).all());

/** The years of recorded weather as they are kept, those that do not parse left out. */
export const loadWeatherYears = (database: FarmDatabase): readonly WeatherYear[] =>
  readWeatherYears(database, new RowParser());

function readRecipes(database: FarmDatabase, rows: RowParser): readonly Recipe[] {
  const recipes = database.select().from(recipe).orderBy(asc(recipe.id)).all();
  const lines = database.select().from(recipeLine).orderBy(asc(recipeLine.recipeId), asc(recipeLine.position)).all();
  const linesOf = rows.byParent("recipeLines", recipes, lines, (line) => line.recipeId);
  return rows.all("recipes", recipeSchema, recipes, (row) => ({
    ...row,
    lines: linesOf(row.id).map(recipeLineOfRow),
  }));
}

function readBookings(database: FarmDatabase, rows: RowParser): readonly Booking[] {
  const bookings = database.select().from(booking).orderBy(asc(booking.id)).all();
  const pieces = database
    .select()
    .from(bookingPiece)
    .orderBy(asc(bookingPiece.bookingId), asc(bookingPiece.position))
    .all();
  const stemLines = database
    .select()
    .from(bookingStemLine)
    .orderBy(asc(bookingStemLine.bookingId), asc(bookingStemLine.position))
    .all();
  const promises = database
    .select()
    .from(bookingPromise)
    .orderBy(asc(bookingPromise.bookingId), asc(bookingPromise.position))
    .all();
  const crops = database
    .select()
    .from(bookingUnacceptableCrop)
    .orderBy(asc(bookingUnacceptableCrop.bookingId), asc(bookingUnacceptableCrop.position))
    .all();
  const piecesOf = rows.byParent("bookingPieces", bookings, pieces, (line) => line.bookingId);
  const stemLinesOf = rows.byParent("bookingStemLines", bookings, stemLines, (line) => line.bookingId);
  const promisesOf = rows.byParent("bookingPromises", bookings, promises, (line) => line.bookingId);
  const cropsOf = rows.byParent("bookingUnacceptableCrops", bookings, crops, (line) => line.bookingId);
  return rows.all("bookings", bookingSchema, bookings, (row) => ({
    ...row,
    pieces: piecesOf(row.id),
    stemLines: stemLinesOf(row.id),
    promises: promisesOf(row.id),
    unacceptableCropIds: cropsOf(row.id).map(({ cropId }) => cropId),
  }));
}

/** The what-ifs that were kept under a name, in order of id. They are no part of a snapshot: they have written nothing yet. */
export function loadWhatIfs(database: FarmDatabase): Parsed<readonly WhatIf[]> {
  const rows = new RowParser();
  const parsed = rows.all("whatIfs", whatIfSchema, database.select().from(whatIf).orderBy(asc(whatIf.id)).all());
  return rows.problems.length ? { ok: false, problems: rows.problems } : { ok: true, parsed };
}
