import type { BookingRecord, RecipeRecord } from "#lib/domain/farm-records";
import type { RecordOf } from "#lib/domain/records/field";
import { SHEETS } from "#lib/domain/records/sheets";
import type { Colour } from "#lib/domain/words";
import { BookingOwners } from "./booking-owners";
import { identityOf, type KeptRow, type KeptRows, type KnownFarm, type RecordSheet } from "./known-farm";
import { linkBookings } from "./link-bookings";
import { linkCrops, linkCurves, linkRecipes, linkVarieties } from "./link-crops";
import { withBooking } from "./link-cuts";
import { linkFirstCuts } from "./link-first-cuts";
import { linkBeds, linkCooler, linkPlantings } from "./link-ground";
import { linkOrders } from "./link-orders";
import { linkReviews } from "./link-reviews";
import { linkSeason } from "./link-season";
import { linkWeather } from "./link-weather";
import { matchRows } from "./match-rows";
import { cropBook, NameBook, recipeBook } from "./name-book";
import { linkRows, mapRecords, type SheetRows } from "./sheet-rows";
import { type RowOf, toBedRecord, toCropRecord, toCurveRecord, toRecipeLine, toStemLine } from "./to-records";
import { VarietyBook } from "./variety-book";

type RowsOf = <Name extends RecordSheet>(sheet: Name) => SheetRows<RowOf<Name>>;

/** The rows of every sheet as the records that they make, and the bookings gathered from four of them. */
export type LinkedSheets = ReturnType<typeof linkSheets>;

/**
 * Puts the rows of all sheets together, and beside the farm: names are looked up, each row gets the row of the farm that it stands for, and
 * what does not fit is said at its row. A thing that the upload renames is found by either name.
 */
export function linkSheets(rowsOf: RowsOf, { farm, rows: kept }: KnownFarm) {
  const matched = matcher(rowsOf, kept);
  const crops = cropBook(kept.crops.map(({ row }) => row.name));
  const recipes = recipeBook([...new Set(kept.recipes.map(({ row }) => row.name))]);
  const beds = new NameBook(
    "bed",
    "the beds sheet",
    kept.beds.map(({ row }) => row.name),
  );
  const cropRows = linkCrops(linkRows(matched("crops", "one"), toCropRecord), crops);
  const recipeRows = linkRecipes(linkRows(matched("recipes", "lines"), toRecipeLine), recipes);
  const bedRows = linkBeds(linkRows(matched("beds", "one"), toBedRecord), beds);

  const ofCrop = <Row extends { readonly crop: string }>(row: Row): Row => ({ ...row, crop: crops.named(row.crop) });
  const varieties = new VarietyBook(kept.varieties.map(({ row }) => ofCrop(row)));
  const varietyRows = linkVarieties(matched("varieties", "one", ofCrop), crops, varieties);
  const ofVariety = <Row extends { readonly crop: string; readonly variety: string; readonly colour: Colour | null }>(
    row: Row,
  ): Row => {
    const crop = crops.named(row.crop);
    const colour = varieties.colourMeant(crop, row.variety, row.colour);
    return { ...row, crop, variety: varieties.named(crop, row.variety), colour };
  };
  const inBed = <Row extends { readonly bed: string; crop: string; variety: string; colour: Colour | null }>(
    row: Row,
  ): Row => ofVariety({ ...row, bed: beds.named(row.bed) });
  const plantings = linkPlantings(matched("plantings", "several", inBed), beds, crops, varieties);
  const curves = linkCurves(
    linkRows(
      matched("curves", "one", (row) => curveIn(ofCrop(row), beds, varieties)),
      toCurveRecord,
    ),
    crops,
    varieties,
  );
  const named = matched("bookings", "one", bookingsIn(crops));
  const { records: bookings, ...booked } = linkBookings(
    { bookings: named, ...bookingLines(rowsOf) },
    { crops, recipes, unitOf: unitsOf(kept.recipes, recipeRows, recipes), farm, rows: kept },
  );
  const owners = new BookingOwners(booked.bookings.rows, kept.bookings);
  const season = linkSeason(
    {
      cuts: matched("cuts", "one", (row) => inBed(withBooking(row, owners))),
      moves: matched("moves", "several", (row) => ofVariety(withBooking(row, owners))),
      purchases: matched("purchases", "several", (row) => ofVariety(withBooking(row, owners))),
      buds: matched("buds", "one", inBed),
      losses: matched("losses", "one", inBed),
    },
    { beds, crops, varieties, owners },
  );
  return {
    bookings: bookings as readonly BookingRecord[],
    sheets: {
      crops: cropRows,
      recipes: recipeRows,
      beds: bedRows,
      varieties: varietyRows,
      plantings,
      cooler: linkCooler(matched("cooler", "several", ofVariety), crops, varieties),
      orders: linkOrders(matched("orders", "several", ordersIn(crops, recipes)), { crops, recipes }),
      ...season,
      firsts: linkFirstCuts(matched("firsts", "one", firstsIn(crops, varieties)), { crops, varieties }),
      reviews: linkReviews(matched("reviews", "one", owners.renamed.bind(owners)), owners),
      curves,
      weather: linkWeather(matched("weather", "one")),
      ...booked,
    },
  };
}

/** What each recipe is counted in: as its rows in the upload say, else as on the farm. One that is neither here nor there is taken for pieces. */
function unitsOf(kept: KeptRows["recipes"], rows: SheetRows<RecipeRecord>, recipes: NameBook) {
  const units = new Map(kept.map(({ row }) => [recipes.named(row.name), row.unit]));
  for (const { record } of rows.rows) if (record) units.set(record.name, record.unit);
  return (recipe: string): string => units.get(recipe) ?? "piece";
}

const curveIn = (row: RowOf<"curves">, beds: NameBook, varieties: VarietyBook): RowOf<"curves"> => ({
  ...inCrop(row, varieties),
  bed: row.bed === null ? null : beds.named(row.bed),
});

/** A row of a crop, or of one variety of it, under the names that they have after the upload. */
const inCrop = <Row extends { readonly crop: string; readonly variety: string | null }>(
  row: Row,
  varieties: VarietyBook,
): Row => ({ ...row, variety: row.variety === null ? null : varieties.named(row.crop, row.variety) });

const bookingsIn = (crops: NameBook) => (row: RowOf<"bookings">) => ({
  ...row,
  unacceptableCrops: row.unacceptableCrops.map(crops.named),
});

const firstsIn = (crops: NameBook, varieties: VarietyBook) => (row: RowOf<"firsts">) =>
  inCrop({ ...row, crop: crops.named(row.crop) }, varieties);

const ordersIn = (crops: NameBook, recipes: NameBook) => (row: RowOf<"orders">) => ({
  ...row,
  crop: row.crop === null ? null : crops.named(row.crop),
  recipe: row.recipe === null ? null : recipes.named(row.recipe),
});

const bookingLines = (rowsOf: RowsOf) => ({
  pieces: rowsOf("pieces"),
  stems: linkRows(rowsOf("stems"), toStemLine),
  promises: rowsOf("promises"),
});

/** Rows of a sheet, under the names that things have after the upload, each with the row of the farm that it stands for. */
const matcher =
  (rowsOf: RowsOf, kept: KeptRows) =>
  <Name extends RecordSheet>(
    sheet: Name,
    held: "one" | "several" | "lines",
    inNames: (row: RowOf<Name>) => RowOf<Name> = (row) => row,
  ): SheetRows<RowOf<Name>> => {
    const fields = SHEETS[sheet];
    const rows = mapRecords(rowsOf(sheet), inNames) as SheetRows<RecordOf<typeof fields>>;
    const keptRows = (kept[sheet] as readonly KeptRow<RowOf<Name>>[]).map((one) => ({ ...one, row: inNames(one.row) }));
    return matchRows(fields, rows, {
      kept: keptRows as readonly KeptRow<RecordOf<typeof fields>>[],
      identityOf: (row) => identityOf(sheet, row as RowOf<Name>),
      held,
    }) as SheetRows<RowOf<Name>>;
  };
