import { nameKey } from "#lib/domain/nearest-name";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { SheetName } from "#lib/domain/records/sheets";
import type { Snapshot } from "#lib/domain/snapshot";
import { farmRecordsOf } from "./farm-records-of";
import { rowKey } from "./row-key";
import { type RowsBySheet, rowsOfRecords } from "./rows-of-records";
import type { RowOf } from "./to-records";

/**
 * A row of the farm as its sheet says it. `id` is that of its record; lines of a booking and of a recipe have that of the booking or recipe.
 * `key` names it in the sheets that go out; a day of weather has none, its date is enough.
 */
export type KeptRow<Row = unknown> = { readonly id: number; readonly key: string; readonly row: Row };

/** The sheets whose rows are records of the farm; its settings are none. */
export type RecordSheet = Exclude<SheetName, "farm">;

export type KeptRows = { readonly [Name in RecordSheet]: readonly KeptRow<RowOf<Name>>[] };

/** What is on the farm before sheets are read. */
export type KnownFarm = { readonly farm: Farm; readonly rows: KeptRows };

/** The column that names the row of the farm which a row of a sheet came from. */
export const KEY_HEADING = "key";

/** Settings are known by their name, and days of weather by their date. */
export const hasKeys = (sheet: SheetName): sheet is Exclude<RecordSheet, "weather"> =>
  sheet !== "farm" && sheet !== "weather";

/** What a row of each sheet is known by beside its key. */
const KNOWN_BY = {
  crops: ["name"],
  curves: ["crop", "variety", "treatment", "bed", "seasonYear", "plantedOn"],
  recipes: ["name"],
  varieties: ["crop", "variety"],
  beds: ["name"],
  plantings: ["bed", "crop", "variety", "seasonYear", "plantedOn"],
  bookings: ["client", "eventOn"],
  pieces: ["client", "eventOn", "recipe"],
  stems: ["client", "eventOn", "role", "crop"],
  promises: ["client", "eventOn", "role", "crop"],
  orders: ["buyer", "weekday", "role", "crop", "recipe"],
  cooler: ["crop", "variety", "cutOn"],
  cuts: ["cutOn", "bed", "crop", "variety", "client", "eventOn"],
  moves: ["movedOn", "crop", "variety", "cutOn", "kind", "client", "eventOn"],
  purchases: ["supplier", "arrivesOn", "crop", "variety", "client", "eventOn"],
  buds: ["lookedOn", "bed", "crop", "variety"],
  losses: ["seenOn", "bed", "crop", "variety", "cause"],
  firsts: ["crop", "variety", "treatment", "seasonYear", "plantedOn"],
  reviews: ["client", "eventOn", "role"],
  weather: ["date"],
} as const satisfies { readonly [Name in RecordSheet]: readonly (keyof RowOf<Name>)[] };

/** What a row is known by, as people read it: "D8, Dahlia, Maple Row, 2027, 2027-05-20". */
export const knownBy = (sheet: SheetName, row: object): string => {
  const cells: Readonly<Record<string, unknown>> = { ...row };
  const names: readonly string[] = sheet === "farm" ? ["setting"] : KNOWN_BY[sheet];
  return names.flatMap((name) => (cells[name] === null ? [] : String(cells[name]))).join(", ");
};

/** What a row is known by, as one text. */
export const identityOf = (sheet: RecordSheet, row: object): string => {
  const cells: Readonly<Record<string, unknown>> = { ...row };
  return JSON.stringify(
    KNOWN_BY[sheet].map((name) => (typeof cells[name] === "string" ? nameKey(cells[name]) : cells[name])),
  );
};

/** The rows of a farm, each with its key, in the order of the snapshot. */
export function knownFarm(snapshot: Snapshot): KnownFarm {
  const rows = rowsOfRecords(farmRecordsOf(snapshot));
  const idsOf = (records: readonly { readonly id: number }[]) => records.map(({ id }) => ({ id }));
  const placed = <T extends { readonly id: number }>(records: readonly T[], lines: (record: T) => readonly unknown[]) =>
    records.flatMap((record) => lines(record).map((_, place) => ({ id: record.id, place })));
  const kept = <Name extends RecordSheet>(sheet: Name, places: readonly { id: number; place?: number }[]) =>
    (rows[sheet] as RowsBySheet[Name]).map((row, index): KeptRow<RowOf<Name>> => {
      const { id, place } = places[index] ?? { id: 0 };
      return { id, key: rowKey(id, identityOf(sheet, row), place), row };
    });
  return {
    farm: snapshot.farm,
    rows: {
      crops: kept("crops", idsOf(snapshot.crops)),
      curves: kept("curves", idsOf(snapshot.curves)),
      recipes: kept(
        "recipes",
        placed(snapshot.recipes, ({ lines }) => lines).map(({ id }) => ({ id })),
      ),
      varieties: kept("varieties", idsOf(snapshot.varieties)),
      beds: kept("beds", idsOf(snapshot.beds)),
      plantings: kept("plantings", idsOf(snapshot.plantings)),
      bookings: kept("bookings", idsOf(snapshot.bookings)),
      pieces: kept(
        "pieces",
        placed(snapshot.bookings, ({ pieces }) => pieces),
      ),
      stems: kept(
        "stems",
        placed(snapshot.bookings, ({ stemLines }) => stemLines),
      ),
      promises: kept(
        "promises",
        placed(snapshot.bookings, ({ promises }) => promises),
      ),
      cooler: kept("cooler", idsOf(snapshot.coolerStock)),
      orders: kept("orders", idsOf(snapshot.standingOrders)),
      cuts: kept("cuts", idsOf(snapshot.cuts)),
      moves: kept("moves", idsOf(snapshot.coolerMoves)),
      purchases: kept("purchases", idsOf(snapshot.purchases)),
      buds: kept("buds", idsOf(snapshot.budLooks)),
      losses: kept("losses", idsOf(snapshot.losses)),
      firsts: kept("firsts", idsOf(snapshot.firstCuts)),
      reviews: kept("reviews", idsOf(snapshot.reviews)),
      weather: rows.weather.map((row) => ({ id: 0, key: "", row })),
    },
  };
}
