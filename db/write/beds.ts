import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bed, coolerStock } from "#db/schema/beds";
import type { Bed } from "#lib/domain/records/bed";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import { known, refuseWhileNamed } from "./known";
import { insertBed, insertCoolerStock, replaceBed } from "./put-beds";
import { changeRow } from "./put-row";
import { type Written, write } from "./write";

/** A bed before it has an id. */
export type BedDraft = Omit<Bed, "id">;

/** Stems in the cooler before they have an id; with one, they stand in place of that line. */
export type CoolerStockDraft = Omit<CoolerStock, "id"> & { readonly id?: number | undefined };

/** Adds a bed and gives its id. Refused when another has its name. */
export const addBed = (database: FarmDatabase, draft: BedDraft): Written =>
  write(database, () => ({ result: insertBed(database, draft), title: `added bed ${draft.name}` }));

/** Makes a bed what `draft` says; its plantings stay. */
export const updateBed = (database: FarmDatabase, id: number, draft: BedDraft): Written =>
  write(database, () => {
    known(database, "bed", id);
    replaceBed(database, id, draft);
    return { title: `changed bed ${draft.name}`, result: id };
  });

/** Removes a bed with all of its plantings. Refused while cuts were recorded in it. */
export const removeBed = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "bed", id);
    refuseWhileNamed(database, `bed ${name}`, id, [
      { table: "cut", column: "bed_id", one: "recorded cut", many: "recorded cuts" },
    ]);
    database.delete(bed).where(eq(bed.id, id)).run();
    return { title: `removed bed ${name}`, result: id };
  });

/** Puts stems into the cooler, as a new line or in place of the line with the same id, and gives its id. */
export const putCoolerStock = (database: FarmDatabase, draft: CoolerStockDraft): Written =>
  write(database, () => {
    const name = known(database, "variety", draft.varietyId, "varietyId");
    const title = `put ${draft.stemCount} ${name} into the cooler`;
    if (draft.id === undefined) return { title, result: insertCoolerStock(database, draft) };
    known(database, "cooler_stock", draft.id);
    changeRow(database, coolerStock, draft.id, draft);
    return { title: `changed ${name} in the cooler to ${draft.stemCount}`, result: draft.id };
  });

/** Takes a line out of the cooler. */
export const removeCoolerStock = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "cooler_stock", id);
    database.delete(coolerStock).where(eq(coolerStock.id, id)).run();
    return { title: `took ${name} out of the cooler`, result: id };
  });
