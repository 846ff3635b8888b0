import { asc } from "drizzle-orm";
import type { SQLiteColumn, SQLiteTable } from "drizzle-orm/sqlite-core";
import type { FarmDatabase } from "#db/client";
import { revision } from "#db/journal/journal";
import { touchedTables } from "#db/journal/touched-tables";
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
import { RowParser, type Schema } from "./row-parser";

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
  const newest = revision(database);
  const known = memory.knownUpTo(database);
  const rows = new RowParser(memory, known === null ? null : touchedTables(database, known));
  // What is only half read is not known.
  memory.doubt();
  const settings = database.select().from(farm).get();
  if (!settings) return { ok: false, problems: [{ place: "farm", message: "the farm has not been started yet" }] };
  const parsedFarm = rows.one("farm", farmSchema, farmOfRow(settings));
  const list = listsOf(database, rows);
  const lists = {
    crops: list("crops", cropSchema, crop, cropOfRow),
    varieties: list("varieties", varietySchema, variety),
    curves: list("curves", bloomCurveSchema, bloomCurve, curveOfRow),
    recipes: rows.unlessKnown("recipes", [recipe, recipeLine], () => readRecipes(database, rows)),
    beds: list("beds", bedSchema, bed),
    plantings: list("plantings", plantingSchema, planting, plantingOfRow),
    bookings: rows.unlessKnown("bookings", BOOKING_TABLES, () => readBookings(database, rows)),
    coolerStock: list("coolerStock", coolerStockSchema, coolerStock),
    coolerMoves: list("coolerMoves", coolerMoveSchema, coolerMove),
    purchases: list("purchases", purchaseSchema, purchase),
    budLooks: list("budLooks", budLookSchema, budLook),
    losses: list("losses", lossSchema, loss),
    firstCuts: list("firstCuts", firstCutSchema, firstCut),
    standingOrders: list("standingOrders", standingOrderSchema, standingOrder),
    reviews: list("reviews", reviewSchema, review),
    cuts: list("cuts", cutSchema, cut),
  };
  const weather = memory.weather(list("weather", weatherYearSchema, weatherYear));
  if (!parsedFarm || rows.problems.length) return { ok: false, problems: rows.problems };
  const checked = checkSnapshot(memory.snapshot({ farm: parsedFarm, ...lists, weather }));
  if (checked.ok) memory.noteRead(database, newest);
  return checked;
}

/** A table of which each row is a record of its own. */
type RecordTable = SQLiteTable & { readonly id: SQLiteColumn };

/** The records of a table, in order of id; `shape` gives a row the form that `schema` parses, when it has not got it. */
const listsOf =
  (database: FarmDatabase, rows: RowParser) =>
  <Table extends RecordTable, T>(
    name: string,
    schema: Schema<T>,
    table: Table,
    shape?: (row: Table["$inferSelect"]) => unknown,
  ): readonly T[] =>
    rows.unlessKnown(name, [table], () => {
      const read = database.select().from<RecordTable>(table).orderBy(asc(table.id)).all();
      return rows.all(name, schema, read as (Table["$inferSelect"] & { readonly id: number })[], shape);
    });

/** The years of recorded weather as they are kept, those that do not parse left out. */
export const loadWeatherYears = (database: FarmDatabase): readonly WeatherYear[] =>
  listsOf(database, new RowParser())("weather", weatherYearSchema, weatherYear);

function readRecipes(database: FarmDatabase, rows: RowParser): readonly Recipe[] {
  const recipes = database.select().from(recipe).orderBy(asc(recipe.id)).all();
  const lines = database.select().from(recipeLine).orderBy(asc(recipeLine.recipeId), asc(recipeLine.position)).all();
  const linesOf = rows.byParent("recipeLines", recipes, lines, (line) => line.recipeId);
  return rows.all("recipes", recipeSchema, recipes, (row) => ({
    ...row,
    lines: linesOf(row.id).map(recipeLineOfRow),
  }));
}

const BOOKING_TABLES = [booking, bookingPiece, bookingStemLine, bookingPromise, bookingUnacceptableCrop];

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
  const parsed = listsOf(database, rows)("whatIfs", whatIfSchema, whatIf);
  return rows.problems.length ? { ok: false, problems: rows.problems } : { ok: true, parsed };
}
