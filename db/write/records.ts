import type { FarmDatabase } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { coolerStock } from "#db/schema/beds";
import type { BookingRecord, CurveRecord, FarmRecords } from "#lib/domain/farm-records";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import type { PromisesMade } from "./bookings";
import { putFarm } from "./farm";
import { putFirstCut, replaceFirstCut } from "./first-cuts";
import { importTitle } from "./import-title";
import { known } from "./known";
import { Names, plantingNamed, VarietyNames } from "./names";
import { writeOrder } from "./orders";
import { insertBed, insertCoolerStock, insertPlanting, replaceBed, replacePlanting } from "./put-beds";
import { insertBooking, replaceBooking, replacePromises } from "./put-bookings";
import { insertCrop, putCurveRow, replaceCrop, replaceCurve } from "./put-crops";
import { putInPlace } from "./put-in-place";
import { putRecipeByName, replaceRecipe } from "./put-recipes";
import { changeRow } from "./put-row";
import { putSeasonRecords } from "./put-season";
import { Refusals, refuseOverfull } from "./refusal";
import { importReviews } from "./reviews";
import { putWeatherDays } from "./weather";
import { type Written, write } from "./write";

/**
 * Adds records, which know each other by name, to the farm as one change. A record with an id takes the place of that one; without, settings,
 * crops, curves and recipes replace those of the same name, recorded days those of the same day, beds, plantings, bookings and cooler stock
 * are added, and varieties that come along are made. Gives the number of records written. Refused as a whole, with every reason
 * ("plantings[3].bed"), when a name or id is not known, or a bed or booking of another is there already.
 * @param promised  what bookings are promised by it, told of the farm as it then stands, and written with it
 */
export const importRecords = (
  database: FarmDatabase,
  records: FarmRecords,
  promised: (farm: Snapshot) => PromisesMade = () => [],
): Written =>
  write(database, () => {
    const refusals = new Refusals();
    if (records.farm) putFarm(database, records.farm);
    const crops = new Names(database, "crop");
    putCrops(database, records, crops, refusals);
    const varieties = new VarietyNames(database, crops);
    putVarietiesAndCurves(database, records, crops, varieties, refusals);
    putBedsAndPlantings(database, records, varieties, refusals);
    putCurves(database, records, crops, varieties, refusals, ({ planting }) => planting !== undefined);
    putBookings(database, records, crops, refusals);
    putOrders(database, records, crops, refusals);
    refusals.each("coolerStock", records.coolerStock, (record) => {
      const row = { ...record, varietyId: varieties.put(record) };
      putInPlace(database, "cooler_stock", record.id, {
        add: () => insertCoolerStock(database, row),
        replace: (id) => changeRow(database, coolerStock, id, row),
      });
    });
    putSeasonRecords(database, records, varieties, refusals);
    putFirstCuts(database, records, crops, varieties, refusals);
    importReviews(database, records.reviews, refusals);
    putWeatherDays(database, records.weather ?? []);
    refusals.end();
    refuseOverfull(database);
    if (records.bookings?.length) putPromised(database, promised);
    return importTitle(records);
  });

function putPromised(database: FarmDatabase, promised: (farm: Snapshot) => PromisesMade): void {
  const farm = loadSnapshot(database);
  // A farm that cannot be read, or is none yet, has no plan to promise from.
  if (!farm.ok) return;
  for (const { bookingId, promises } of promised(farm.parsed)) replacePromises(database, bookingId, promises);
}

function putCrops(database: FarmDatabase, records: FarmRecords, crops: Names, refusals: Refusals): void {
  refusals.each("crops", records.crops, (record) => {
    const id = putInPlace(database, "crop", record.id ?? crops.find(record.name), {
      add: () => insertCrop(database, record),
      replace: (kept) => replaceCrop(database, kept, record),
    });
    crops.add(record.name, id);
  });
}

function putVarietiesAndCurves(
  database: FarmDatabase,
  records: FarmRecords,
  crops: Names,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  refusals.each("varieties", records.varieties, (record) => {
    if (record.id !== undefined) known(database, "variety", record.id);
    return varieties.replace(record.id ?? varieties.put(record), record);
  });
  putCurves(database, records, crops, varieties, refusals, ({ planting }) => !planting);
}

/** Those curves of the records that are `wanted`: a planting's own can be put only once its planting is there. */
function putCurves(
  database: FarmDatabase,
  records: FarmRecords,
  crops: Names,
  varieties: VarietyNames,
  refusals: Refusals,
  wanted: (record: CurveRecord) => boolean,
): void {
  refusals.each("curves", records.curves, ({ planting, ...record }) => {
    if (!wanted({ planting, ...record })) return;
    const cropId = crops.get(record.crop, "crop");
    const varietyId = record.variety === null ? null : varieties.get(record.crop, record.variety);
    const plantingId = planting && varietyId !== null ? plantingNamed(database, planting, varietyId) : null;
    const row = { ...record, cropId, varietyId, plantingId };
    putInPlace(database, "bloom_curve", record.id, {
      add: () => putCurveRow(database, row),
      replace: (id) => replaceCurve(database, id, row),
    });
  });
}

function putFirstCuts(
  database: FarmDatabase,
  records: FarmRecords,
  crops: Names,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  refusals.each("firstCuts", records.firstCuts, ({ crop, variety, ...record }) => {
    const cropId = crops.get(crop, "crop");
    const row = { ...record, cropId, varietyId: variety === null ? null : varieties.get(crop, variety) };
    putInPlace(database, "first_cut", record.id, {
      add: () => putFirstCut(database, row),
      replace: (id) => replaceFirstCut(database, id, row),
    });
  });
}

function putBedsAndPlantings(
  database: FarmDatabase,
  records: FarmRecords,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  refusals.each("beds", records.beds, (record) =>
    putInPlace(database, "bed", record.id, {
      add: () => insertBed(database, record),
      replace: (id) => replaceBed(database, id, record),
    }),
  );
  const beds = new Names(database, "bed");
  refusals.each("plantings", records.plantings, (record) => {
    const bedId = beds.get(record.bed, "bed");
    const row = { ...record, bedId, varietyId: varieties.put(record) };
    putInPlace(database, "planting", record.id, {
      add: () => insertPlanting(database, row),
      replace: (id) => replacePlanting(database, id, row),
    });
  });
}

function putBookings(database: FarmDatabase, records: FarmRecords, crops: Names, refusals: Refusals): void {
  refusals.each("recipes", records.recipes, (record) =>
    putInPlace(database, "recipe", record.id, {
      add: () => putRecipeByName(database, record),
      replace: (id) => replaceRecipe(database, id, record),
    }),
  );
  const recipes = new Names(database, "recipe");
  refusals.each("bookings", records.bookings, (record) => {
    const draft = bookingByIds(record, crops, recipes);
    putInPlace(database, "booking", record.id, {
      add: () => insertBooking(database, draft),
      replace: (id) => replaceBooking(database, id, draft),
    });
  });
}

/** Orders in place of ids where records have them, else new ones. */
function putOrders(database: FarmDatabase, records: FarmRecords, crops: Names, refusals: Refusals): void {
  const recipes = new Names(database, "recipe");
  const idOf = (names: Names, name: string | null, place: string) => (name === null ? null : names.get(name, place));
  refusals.each("standingOrders", records.standingOrders, ({ id, crop, recipe, ...order }) =>
    writeOrder(database, id, {
      ...order,
      cropId: idOf(crops, crop, "crop"),
      recipeId: idOf(recipes, recipe, "recipe"),
    }),
  );
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
    promises: record.promises.map(({ crop, ...line }, index) => ({
      ...line,
      cropId: crop === null ? null : cropId(crop, `promises[${index}]`),
    })),
  };
  refusals.end();
  return draft;
}
