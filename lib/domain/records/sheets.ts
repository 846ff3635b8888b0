import { z } from "zod";
import { BED } from "./bed";
import { BOOKING_SHEET } from "./booking";
import { BUD_LOOK_SHEET } from "./bud-look";
import { COOLER_SHEET } from "./cooler-lot";
import { COOLER_MOVE_SHEET } from "./cooler-move";
import { CROP_SHEET } from "./crop";
import { CURVE_SHEET } from "./curve";
import { CUT_SHEET } from "./cut";
import { type Field, type Fields, field, headingOf } from "./field";
import { FIRST_CUT_SHEET } from "./first-cut";
import { prose, word } from "./kinds";
import { LOSS_SHEET } from "./loss";
import { PIECE_SHEET } from "./piece";
import { PLANTING_SHEET } from "./planting";
import { PROMISE_SHEET } from "./promised-stems";
import { PURCHASE_SHEET } from "./purchase";
import { RECIPE_SHEET } from "./recipe";
import { REVIEW_SHEET } from "./review";
import { ORDER_SHEET } from "./standing-order";
import { STEM_SHEET } from "./stem-line";
import { VARIETY_SHEET } from "./variety";
import { WEATHER_SHEET } from "./weather-day";

/** A setting a row. Settings that do not stand in the sheet keep the value they have. An empty value means "no limit" where there is one. */
const FARM_SHEET = {
  setting: field(word, z.string(), { label: "Setting" }),
  value: field(prose, z.string(), { label: "Value" }),
};

/**
 * The farm's spreadsheets and the fields of their rows, in the order they are written; reading takes columns in any order. Numbers carry
 * their unit in the column's name; shares run 0 to 1; lists are parted by "/".
 */
export const SHEETS = {
  farm: FARM_SHEET,
  crops: CROP_SHEET,
  curves: CURVE_SHEET,
  recipes: RECIPE_SHEET,
  varieties: VARIETY_SHEET,
  beds: BED,
  plantings: PLANTING_SHEET,
  bookings: BOOKING_SHEET,
  pieces: PIECE_SHEET,
  stems: STEM_SHEET,
  promises: PROMISE_SHEET,
  orders: ORDER_SHEET,
  cooler: COOLER_SHEET,
  cuts: CUT_SHEET,
  moves: COOLER_MOVE_SHEET,
  purchases: PURCHASE_SHEET,
  buds: BUD_LOOK_SHEET,
  losses: LOSS_SHEET,
  firsts: FIRST_CUT_SHEET,
  reviews: REVIEW_SHEET,
  weather: WEATHER_SHEET,
} satisfies Readonly<Record<string, Fields>>;

export type SheetName = keyof typeof SHEETS;

/** Every sheet, each after the sheets that it names things from. */
export const SHEET_NAMES: readonly SheetName[] = [
  "farm",
  "crops",
  "recipes",
  "varieties",
  "beds",
  "plantings",
  "cooler",
  "curves",
  "bookings",
  "pieces",
  "stems",
  "promises",
  "orders",
  "cuts",
  "moves",
  "purchases",
  "buds",
  "losses",
  "firsts",
  "reviews",
  "weather",
];

/** A column of a sheet: the field that it holds, or one part of a field that has several. */
export type Column = {
  readonly heading: string;
  readonly name: string;
  readonly part: "count" | "origin" | null;
  readonly field: Field<unknown>;
};

/** The columns of a sheet whose rows have these fields. Found once for each sheet, since every row of it is walked by them. */
export function columnsOf(fields: Fields): readonly Column[] {
  const found = columnsFound.get(fields) ?? columnsIn(fields);
  columnsFound.set(fields, found);
  return found;
}

const columnsFound = new WeakMap<Fields, readonly Column[]>();

const columnsIn = (fields: Fields): Column[] =>
  Object.entries(fields).flatMap(([name, field]): Column[] => {
    const heading = headingOf(name, field);
    if (!field.parts) return [{ heading, name, part: null, field }];
    const { count, origin } = field.parts;
    return [
      { heading, name, part: "count", field: count },
      { heading: headingOf(name, origin), name, part: "origin", field: origin },
    ];
  });

/** The names of a sheet's columns. */
export const headingsOf = (sheet: SheetName): string[] => columnsOf(SHEETS[sheet]).map(({ heading }) => heading);
