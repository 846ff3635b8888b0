import type {
  BookingRecord,
  CurveRecord,
  FarmRecords,
  PieceRecord,
  PromiseRecord,
  RecipeRecord,
  StemLineRecord,
} from "#lib/domain/farm-records";
import { climateColumns } from "#lib/domain/records/climate";
import { anchorColumns } from "#lib/domain/records/curve";
import { FARM_SETTINGS, type Farm } from "#lib/domain/records/farm-settings";
import type { SheetName } from "#lib/domain/records/sheets";
import { writeCell } from "./columns";
import type { RowOf } from "./to-records";

/** The rows of every sheet. */
export type RowsBySheet = { readonly [Name in SheetName]: readonly RowOf<Name>[] };

/** What the sheets say of records, in their order. */
export function rowsOfRecords({ farm, bookings = [], ...records }: FarmRecords): RowsBySheet {
  return {
    farm: farm ? settingRows(farm) : [],
    crops: records.crops ?? [],
    curves: (records.curves ?? []).map(curveRow),
    recipes: (records.recipes ?? []).flatMap(recipeRows),
    varieties: records.varieties ?? [],
    beds: records.beds ?? [],
    plantings: records.plantings ?? [],
    bookings: bookings.map(bookingRow),
    pieces: bookings.flatMap((booking) => booking.pieces.map((piece) => lineRow(booking, piece))),
    stems: bookings.flatMap((booking) => booking.stemLines.map((line) => lineRow(booking, line))),
    promises: bookings.flatMap((booking) => booking.promises.map((line) => lineRow(booking, line))),
    cooler: records.coolerStock ?? [],
    orders: records.standingOrders ?? [],
    moves: records.coolerMoves ?? [],
    purchases: records.purchases ?? [],
    cuts: records.cuts ?? [],
    buds: records.budLooks ?? [],
    losses: records.losses ?? [],
    firsts: records.firstCuts ?? [],
    reviews: records.reviews ?? [],
    weather: records.weather ?? [],
  };
}

export function settingRows(farm: Farm): RowOf<"farm">[] {
  const groups = { ...farm, climate: climateColumns(farm.climate) };
  return FARM_SETTINGS.map(({ heading, group, name, field }) => {
    const values: Record<string, unknown> = group ? groups[group] : farm;
    return { setting: heading, value: writeCell(field, values[name], farm.decimalMark) };
  });
}

/** A recipe, a row a line. */
export const recipeRows = ({ lines, ...recipe }: RecipeRecord): RowOf<"recipes">[] =>
  lines.map((line) => ({ ...recipe, ...line }));

export const curveRow = ({ anchor, planting, ...curve }: CurveRecord): RowOf<"curves"> => ({
  ...curve,
  bed: planting?.bed ?? null,
  seasonYear: planting?.seasonYear ?? null,
  plantedOn: planting?.plantedOn ?? null,
  ...anchorColumns(anchor),
});

export const bookingRow = ({ unacceptableCrops, ...booking }: BookingRecord): RowOf<"bookings"> => ({
  ...booking,
  unacceptableCrops: [...unacceptableCrops],
});

/** A line of a booking, which its sheet names by client and day. */
const lineRow = <Line extends PieceRecord | StemLineRecord | PromiseRecord>(
  { client, eventOn }: Pick<BookingRecord, "client" | "eventOn">,
  line: Line,
) => ({ client, eventOn, ...line });
