import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bed, coolerStock, planting } from "#db/schema/beds";
import type { Bed, CoolerStock } from "#lib/domain/bed";
import type { PlantingDraft } from "#lib/domain/what-if";
import { addRow } from "./add-row";
import { refuseTwice } from "./refusal";
import { bedColumns, coolerStockColumns, plantingColumns } from "./to-columns";

/** Writes of one bed, planting or line of cooler stock inside a change that is open. */

/** Adds a bed and gives its id. Refuses a second one of the same name. */
export const insertBed = (database: FarmDatabase, draft: Omit<Bed, "id">): number =>
  refuseTwice("name", bedTwice(draft.name), () => addRow(database, bed, bedColumns(draft)));

export function replaceBed(database: FarmDatabase, id: number, draft: Omit<Bed, "id">): void {
  refuseTwice("name", bedTwice(draft.name), () =>
    database.update(bed).set(bedColumns(draft)).where(eq(bed.id, id)).run(),
  );
}

const bedTwice = (name: string): string => `a bed called ${name} is there already: choose another name`;

export const insertPlanting = (database: FarmDatabase, draft: PlantingDraft): number =>
  addRow(database, planting, plantingColumns(draft));

export function replacePlanting(database: FarmDatabase, id: number, draft: PlantingDraft): void {
  database.update(planting).set(plantingColumns(draft)).where(eq(planting.id, id)).run();
}

export const insertCoolerStock = (database: FarmDatabase, draft: Omit<CoolerStock, "id">): number =>
  addRow(database, coolerStock, coolerStockColumns(draft));
