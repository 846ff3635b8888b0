import type { FarmRecords, RecipeRecord } from "#lib/domain/farm-records";
import { groupsOf } from "#lib/domain/groups-of";
import type { Fields, RecordOf } from "#lib/domain/records/field";
import { SHEETS } from "#lib/domain/records/sheets";
import type { KnownFarm } from "./known-farm";
import type { LinkedSheets } from "./link-sheets";
import { isUnchanged } from "./row-differences";
import { curveRow, recipeRows } from "./rows-of-records";
import type { SheetRows } from "./sheet-rows";

/** The records that the clean rows add, and those that they change, each with the id of the one of the farm; lists that are empty are absent. */
export function changedRecords({ sheets, bookings }: LinkedSheets, known: KnownFarm): FarmRecords {
  const itself = <T>(record: T): T => record;
  return {
    ...given("crops", changed(SHEETS.crops, sheets.crops, itself)),
    ...given("curves", changed(SHEETS.curves, sheets.curves, curveRow)),
    ...given("recipes", changedRecipes(sheets.recipes, known)),
    ...given("varieties", changed(SHEETS.varieties, sheets.varieties, itself)),
    ...given("beds", changed(SHEETS.beds, sheets.beds, itself)),
    ...given("plantings", changed(SHEETS.plantings, sheets.plantings, itself)),
    ...given("bookings", bookings),
    ...given("coolerStock", changed(SHEETS.cooler, sheets.cooler, itself)),
    ...given("standingOrders", changed(SHEETS.orders, sheets.orders, itself)),
    ...given("cuts", changed(SHEETS.cuts, sheets.cuts, itself)),
    ...given("coolerMoves", changed(SHEETS.moves, sheets.moves, itself)),
    ...given("purchases", changed(SHEETS.purchases, sheets.purchases, itself)),
    ...given("budLooks", changed(SHEETS.buds, sheets.buds, itself)),
    ...given("losses", changed(SHEETS.losses, sheets.losses, itself)),
    ...given("firstCuts", changed(SHEETS.firsts, sheets.firsts, itself)),
    ...given("reviews", changed(SHEETS.reviews, sheets.reviews, itself)),
    ...given("weather", changed(SHEETS.weather, sheets.weather, itself)),
  };
}

/** A list of records under its name, or nothing when it is empty. */
const given = <Key extends keyof FarmRecords>(key: Key, list: NonNullable<FarmRecords[Key]> & readonly unknown[]) =>
  list.length ? { [key]: list } : {};

const changed = <F extends Fields, T extends object>(
  fields: F,
  { rows }: SheetRows<T>,
  rowOf: (record: T) => RecordOf<F>,
): T[] =>
  rows.flatMap(({ record, kept }) =>
    record === null || isUnchanged(kept, rowOf(record), fields)
      ? []
      : [kept?.key ? { ...record, id: kept.id } : record],
  );

/** One recipe for each name, with the lines of all its rows. */
function changedRecipes({ rows }: SheetRows<RecipeRecord>, known: KnownFarm): RecipeRecord[] {
  const clean = rows.flatMap(({ record, kept }) => (record === null ? [] : [{ record, kept }]));
  const byName = groupsOf(clean, ({ record }) => record.name);
  const linesOnFarm = groupsOf(known.rows.recipes, ({ id }) => id);
  return [...byName.values()].flatMap((ofOne) => {
    const [{ record, kept }] = ofOne;
    const recipe = { ...record, lines: ofOne.flatMap((row) => row.record.lines) };
    if (!kept) return [recipe];
    const isSame =
      linesOnFarm.get(kept.id)?.length === ofOne.length &&
      ofOne.every((row) => recipeRows(row.record).every((line) => isUnchanged(row.kept, line, SHEETS.recipes)));
    return isSame ? [] : [{ ...recipe, id: kept.id }];
  });
}
