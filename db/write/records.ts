import type { FarmDatabase } from "#db/client";
import type { BookingRecord, FarmRecords } from "#lib/domain/farm-records";
import type { BookingDraft } from "#lib/domain/records/booking";
import { putFarm } from "./farm";
import { counted } from "./known";
import { Names, VarietyNames } from "./names";
import { insertBed, insertCoolerStock, insertPlanting } from "./put-beds";
import { insertBooking } from "./put-bookings";
import { insertCrop, putCurveRow, replaceCrop } from "./put-crops";
import { putRecipeByName } from "./put-recipes";
import { Refusals, refuseOverfull } from "./refusal";
import { putWeatherDays } from "./weather";
import { type Written, write } from "./write";

/**
 * Adds records, which know each other by name, to the farm as one change: settings, crops, curves and recipes replace those of the same name,
 * recorded days those of the same day, beds, plantings, bookings and cooler stock are added, and varieties that come along are made. Gives the number of records written.
 * Refused as a whole, with every reason ("plantings[3].bed"), when a name is not known, or a bed or booking is there already.
 */
export const importRecords = (database: FarmDatabase, records: FarmRecords): Written =>
  write(database, () => {
    const refusals = new Refusals();
    if (records.farm) putFarm(database, records.farm);
    const crops = new Names(database, "crop");
    putCrops(database, records, crops, refusals);
    const varieties = new VarietyNames(database, crops);
    putVarietiesAndCurves(database, records, crops, varieties, refusals);
    putBedsAndPlantings(database, records, varieties, refusals);
    putBookings(database, records, crops, refusals);
    (records.coolerStock ?? []).forEach((record, index) => {
      refusals.gather(`coolerStock[${index}]`, () =>
        insertCoolerStock(database, { ...record, varietyId: varieties.put(record) }),
      );
    });
    putWeatherDays(database, records.weather ?? []);
    refusals.end();
    refuseOverfull(database);
    return summary(records);
  });

function putCrops(database: FarmDatabase, records: FarmRecords, crops: Names, refusals: Refusals): void {
  (records.crops ?? []).forEach((record, index) => {
    refusals.gather(`crops[${index}]`, () => {
      const kept = crops.find(record.name);
      if (kept === undefined) crops.add(record.name, insertCrop(database, record));
      else replaceCrop(database, kept, record);
    });
  });
}

function putVarietiesAndCurves(
  database: FarmDatabase,
  records: FarmRecords,
  crops: Names,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  (records.varieties ?? []).forEach((record, index) => {
    refusals.gather(`varieties[${index}]`, () => varieties.put(record));
  });
  (records.curves ?? []).forEach((record, index) => {
    refusals.gather(`curves[${index}]`, () => {
      const cropId = crops.get(record.crop, "crop");
      const varietyId = record.variety === null ? null : varieties.get(record.crop, record.variety);
      putCurveRow(database, { ...record, cropId, varietyId });
    });
  });
}

function putBedsAndPlantings(
  database: FarmDatabase,
  records: FarmRecords,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  (records.beds ?? []).forEach((record, index) => {
    refusals.gather(`beds[${index}]`, () => insertBed(database, record));
  });
  const beds = new Names(database, "bed");
  (records.plantings ?? []).forEach((record, index) => {
    refusals.gather(`plantings[${index}]`, () => {
      const bedId = beds.get(record.bed, "bed");
      insertPlanting(database, { ...record, bedId, varietyId: varieties.put(record) });
    });
  });
}

function putBookings(database: FarmDatabase, records: FarmRecords, crops: Names, refusals: Refusals): void {
  for (const record of records.recipes ?? []) putRecipeByName(database, record);
  const recipes = new Names(database, "recipe");
  (records.bookings ?? []).forEach((record, index) => {
    refusals.gather(`bookings[${index}]`, () => insertBooking(database, bookingByIds(record, crops, recipes)));
  });
}

/** The booking with ids in place of names; every unknown name is told. */
function bookingByIds(record: BookingRecord, crops: Names, recipes: Names): BookingDraft {
  const refusals = new Refusals();
  const cropId = (name: string, place: string) => refusals.gather(place, () => crops.get(name, "crop")) ?? null;
  const draft = {
    ...record,
    unacceptableCropIds: record.unacceptableCrops.flatMap(
      (name, index) => cropId(name, `unacceptableCrops[${index}]`) ?? [],
    ),
    pieces: record.pieces.flatMap(({ recipe, ...piece }, index) => {
      const recipeId = refusals.gather(`pieces[${index}]`, () => recipes.get(recipe, "recipe"));
      return recipeId === undefined ? [] : { ...piece, recipeId };
    }),
    stemLines: record.stemLines.map(({ crop, ...line }, index) => ({
      ...line,
      cropId: crop === null ? null : cropId(crop, `stemLines[${index}]`),
    })),
  };
  refusals.end();
  return draft;
}

/** "imported 3 beds, 12 plantings, 4 bookings" */
function summary({ farm, ...lists }: FarmRecords): { title: string; result: number } {
  const counts = [
    { count: lists.crops?.length ?? 0, one: "crop", many: "crops" },
    { count: lists.curves?.length ?? 0, one: "bloom curve", many: "bloom curves" },
    { count: lists.recipes?.length ?? 0, one: "recipe", many: "recipes" },
    { count: lists.varieties?.length ?? 0, one: "variety", many: "varieties" },
    { count: lists.beds?.length ?? 0, one: "bed", many: "beds" },
    { count: lists.plantings?.length ?? 0, one: "planting", many: "plantings" },
    { count: lists.bookings?.length ?? 0, one: "booking", many: "bookings" },
    { count: lists.coolerStock?.length ?? 0, one: "line in the cooler", many: "lines in the cooler" },
    { count: lists.weather?.length ?? 0, one: "day of weather", many: "days of weather" },
  ].filter(({ count }) => count > 0);
  const words = counts.map(({ count, one, many }) => counted(count, one, many));
  return {
    title: `imported ${[...(farm ? ["the settings"] : []), ...words].join(", ") || "nothing"}`,
    result: counts.reduce((sum, { count }) => sum + count, farm ? 1 : 0),
  };
}
