import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { crop, variety } from "#db/schema/crops";
import { bloomCurve } from "#db/schema/curves";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Variety } from "#lib/domain/records/variety";
import { called, known, refuseWhileNamed } from "./known";
import { insertCrop, insertVariety, putCurveRow, replaceCrop, replaceVariety } from "./put-crops";
import { type Written, write } from "./write";

/** A crop, a variety and a bloom curve before they have an id. */
export type CropDraft = Omit<Crop, "id">;
export type VarietyDraft = Omit<Variety, "id">;
export type CurveDraft = Omit<BloomCurve, "id">;

/** Adds a crop and gives its id. Refused when another has its name. */
export const addCrop = (database: FarmDatabase, draft: CropDraft): Written =>
  write(database, () => ({ result: insertCrop(database, draft), title: `added the crop ${draft.name}` }));

/** Makes a crop what `draft` says; its varieties and curves stay. */
export const updateCrop = (database: FarmDatabase, id: number, draft: CropDraft): Written =>
  write(database, () => {
    known(database, "crop", id);
    replaceCrop(database, id, draft);
    return { title: `changed the crop ${draft.name}`, result: id };
  });

/** Removes a crop with its bloom curves. Refused while varieties, or stems that a booking or standing order asks for or a booking was promised, name it. */
export const removeCrop = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "crop", id);
    refuseWhileNamed(database, name, id, [
      { table: "variety", column: "crop_id", one: "variety", many: "varieties" },
      {
        table: "booking_stem_line",
        column: "crop_id",
        one: "line of stems in a booking",
        many: "lines of stems in bookings",
      },
      { table: "standing_order", column: "crop_id", one: "standing order", many: "standing orders" },
      { table: "booking_promise", column: "crop_id", one: "promise to a client", many: "promises to clients" },
    ]);
    database.delete(crop).where(eq(crop.id, id)).run();
    return { title: `removed the crop ${name}`, result: id };
  });

/** Adds a variety and gives its id. Refused when its crop is not on the farm or has one of that name. */
export const addVariety = (database: FarmDatabase, draft: VarietyDraft): Written =>
  write(database, () => {
    const cropName = known(database, "crop", draft.cropId, "cropId");
    return { result: insertVariety(database, draft), title: `added the variety ${draft.name} (${cropName})` };
  });

/** Makes a variety what `draft` says. Moved to another crop, it takes its own bloom curves along. */
export const updateVariety = (database: FarmDatabase, id: number, draft: VarietyDraft): Written =>
  write(database, () => {
    known(database, "variety", id);
    known(database, "crop", draft.cropId, "cropId");
    replaceVariety(database, id, draft);
    return { title: `changed the variety ${draft.name}`, result: id };
  });

/** Removes a variety with its own bloom curves. Refused while plantings, stems in the cooler or cuts are of it. */
export const removeVariety = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "variety", id);
    refuseWhileNamed(database, name, id, [
      { table: "planting", column: "variety_id", one: "planting", many: "plantings" },
      { table: "cooler_stock", column: "variety_id", one: "line in the cooler", many: "lines in the cooler" },
      { table: "cut", column: "variety_id", one: "recorded cut", many: "recorded cuts" },
      { table: "cooler_move", column: "variety_id", one: "move out of the cooler", many: "moves out of the cooler" },
      { table: "purchase", column: "variety_id", one: "purchase", many: "purchases" },
    ]);
    database.delete(variety).where(eq(variety.id, id)).run();
    return { title: `removed the variety ${name}`, result: id };
  });

/** Adds a bloom curve, or replaces the one of the same crop, variety and treatment, and gives its id. */
export const putCurve = (database: FarmDatabase, draft: CurveDraft): Written =>
  write(database, () => {
    known(database, "crop", draft.cropId, "cropId");
    if (draft.varietyId !== null) known(database, "variety", draft.varietyId, "varietyId");
    const result = putCurveRow(database, draft);
    return { title: `set the bloom curve of ${called(database, "bloom_curve", result)}`, result };
  });

/** Adds bloom curves, or replaces those of the same crop, variety and treatment, as one change. Gives how many. */
export const addCurves = (database: FarmDatabase, drafts: readonly CurveDraft[]): Written =>
  write(database, () => {
    for (const draft of drafts) {
      known(database, "crop", draft.cropId, "cropId");
      putCurveRow(database, draft);
    }
    const what = drafts.length === 1 ? "a built-in bloom curve" : `${drafts.length} built-in bloom curves`;
    return { title: `added ${what}`, result: drafts.length };
  });

/** Removes a bloom curve. */
export const removeCurve = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "bloom_curve", id);
    database.delete(bloomCurve).where(eq(bloomCurve.id, id)).run();
    return { title: `removed the bloom curve of ${name}`, result: id };
  });
