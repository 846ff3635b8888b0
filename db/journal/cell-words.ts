import type { Database } from "better-sqlite3";
import { getTableColumns } from "drizzle-orm";
import { bed, coolerStock, planting } from "#db/schema/beds";
import { booking, bookingPiece, bookingPromise, bookingStemLine, recipe, recipeLine } from "#db/schema/bookings";
import { budLook } from "#db/schema/bud-looks";
import { coolerMove } from "#db/schema/cooler-moves";
import { crop, variety } from "#db/schema/crops";
import { bloomCurve } from "#db/schema/curves";
import { cut } from "#db/schema/cuts";
import { farm } from "#db/schema/farm";
import { firstCut } from "#db/schema/first-cuts";
import { loss } from "#db/schema/losses";
import { standingOrder } from "#db/schema/orders";
import { purchase } from "#db/schema/purchases";
import { review } from "#db/schema/reviews";
import { BED } from "#lib/domain/records/bed";
import { BOOKING } from "#lib/domain/records/booking";
import { BUD_LOOK } from "#lib/domain/records/bud-look";
import { CLIMATE } from "#lib/domain/records/climate";
import { COOLER_LOT } from "#lib/domain/records/cooler-lot";
import { COOLER_MOVE } from "#lib/domain/records/cooler-move";
import { CROP } from "#lib/domain/records/crop";
import { CURVE } from "#lib/domain/records/curve";
import { CUT } from "#lib/domain/records/cut";
import { EARLIER_ASKS } from "#lib/domain/records/earlier-ask";
import { FARM, FROST, STATUS_WEIGHTS } from "#lib/domain/records/farm-settings";
import type { Field, Fields } from "#lib/domain/records/field";
import { FINAL_COUNT } from "#lib/domain/records/final-count";
import { FIRST_CUT } from "#lib/domain/records/first-cut";
import { type Manner, valueInWords } from "#lib/domain/records/form";
import { KILLING_FROSTS } from "#lib/domain/records/killing-frosts";
import { LEARNED_WINTERS } from "#lib/domain/records/learned-winters";
import { LOSS } from "#lib/domain/records/loss";
import { PIECE } from "#lib/domain/records/piece";
import { GRADE_OUT_TOLD, PLANTING } from "#lib/domain/records/planting";
import { PROMISED_STEMS } from "#lib/domain/records/promised-stems";
import { PURCHASE } from "#lib/domain/records/purchase";
import { OR_NEUTRAL, RECIPE, RECIPE_LINE } from "#lib/domain/records/recipe";
import { REVIEW } from "#lib/domain/records/review";
import { STANDING_ORDER } from "#lib/domain/records/standing-order";
import { STEM_LINE } from "#lib/domain/records/stem-line";
import { VARIETY } from "#lib/domain/records/variety";
import { WINTER_COSTS } from "#lib/domain/records/winter-costs";

/** What a cell of the journal's row images holds. */
export type Cell = string | number | null;

const columns = (table: Parameters<typeof getTableColumns>[0], fields: Fields): ReadonlyMap<string, Field<unknown>> =>
  new Map(
    Object.entries(getTableColumns(table)).flatMap(([property, { name }]) => {
      const field = fields[property];
      // The column of a number with an origin holds the number alone.
      return field ? [[name, field.parts?.count ?? field] as const] : [];
    }),
  );

/** The field of each column, by table. Marks and sources of numbers, and places of lines, have none. */
const FIELDS = new Map([
  [
    "farm",
    columns(farm, {
      ...FARM,
      ...KILLING_FROSTS,
      ...LEARNED_WINTERS,
      ...FROST,
      ...CLIMATE,
      ...STATUS_WEIGHTS,
      ...WINTER_COSTS,
    }),
  ],
  ["crop", columns(crop, CROP)],
  ["variety", columns(variety, VARIETY)],
  ["bloom_curve", columns(bloomCurve, CURVE)],
  ["recipe", columns(recipe, RECIPE)],
  ["recipe_line", columns(recipeLine, { ...RECIPE_LINE, orNeutral: OR_NEUTRAL })],
  ["bed", columns(bed, BED)],
  ["planting", columns(planting, { ...PLANTING, gradeOutTold: GRADE_OUT_TOLD })],
  ["booking", columns(booking, { ...BOOKING, ...FINAL_COUNT, ...EARLIER_ASKS })],
  ["booking_piece", columns(bookingPiece, PIECE)],
  ["booking_stem_line", columns(bookingStemLine, STEM_LINE)],
  ["standing_order", columns(standingOrder, STANDING_ORDER)],
  ["booking_promise", columns(bookingPromise, PROMISED_STEMS)],
  ["cooler_stock", columns(coolerStock, COOLER_LOT)],
  ["cooler_move", columns(coolerMove, COOLER_MOVE)],
  ["purchase", columns(purchase, PURCHASE)],
  ["cut", columns(cut, CUT)],
  ["bud_look", columns(budLook, BUD_LOOK)],
  ["loss", columns(loss, LOSS)],
  ["review", columns(review, REVIEW)],
  ["first_cut", columns(firstCut, FIRST_CUT)],
]);

/** How the farm shows its numbers. */
export const mannerOf = (sqlite: Database): Manner =>
  sqlite.prepare<[], Manner>("SELECT units, decimal_mark AS decimalMark FROM farm").get() ?? { units: "us" };

/** Says a change of one cell by the label and in the unit of its field: "Length was 49.2 feet and is now 50 feet". */
export const cellChange =
  (sqlite: Database, manner: Manner) =>
  (table: string, column: string, was: Cell, is: Cell): string => {
    const field = FIELDS.get(table)?.get(column);
    const shown = (cell: Cell) =>
      field === undefined || cell === null || cell === ""
        ? plain(cell)
        : field.kind.input === "hidden"
          ? plain(nameOf(sqlite, column, cell))
          : valueInWords(field, heldIn(field, cell), manner);
    return `${field?.label ?? column.replaceAll("_", " ")} was ${shown(was)} and is now ${shown(is)}`;
  };

const plain = (cell: Cell): string => (cell === null || cell === "" ? "empty" : `“${cell}”`);

/** The value that a cell holds: yes and no are kept as 1 and 0, lists as JSON, which the tables check. */
function heldIn({ kind, schema }: Field<unknown>, cell: string | number): unknown {
  if (kind.input === "yes-no") return cell === 1;
  const isList = typeof cell === "string" && cell.startsWith("[") && !schema.safeParse(cell).success;
  return isList ? JSON.parse(cell) : cell;
}

/** What the row is called that a column such as `bed_id` names. */
function nameOf(sqlite: Database, column: string, id: string | number): string {
  const table = column.replace(/_id$/, "");
  const name = sqlite
    .prepare<[string | number], string>(`SELECT ${table === "booking" ? "client" : "name"} FROM ${table} WHERE id = ?`)
    .pluck()
    .get(id);
  return name ?? "one that is gone";
}
