import { and, eq, ne } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bed, coolerStock, planting } from "#db/schema/beds";
import { bloomCurve } from "#db/schema/curves";
import { plantingRow } from "#db/schema/nested";
import type { Bed } from "#lib/domain/records/bed";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { PlantingDraft } from "#lib/domain/records/planting";
import { addRow, changeRow } from "./put-row";
import { refuseTwice } from "./refusal";

/** Writes of one bed, planting or line of cooler stock inside a change that is open. */

/** Adds a bed and gives its id. Refuses a second one of the same name. */
export const insertBed = (database: FarmDatabase, draft: Omit<Bed, "id">): number =>
  refuseTwice("name", bedTwice(draft.name), () => addRow(database, bed, draft));

export function replaceBed(database: FarmDatabase, id: number, draft: Omit<Bed, "id">): void {
  refuseTwice("name", bedTwice(draft.name), () => changeRow(database, bed, id, draft));
}

const bedTwice = (name: string): string => `a bed called ${name} is there already: choose another name`;

export const insertPlanting = (database: FarmDatabase, draft: PlantingDraft): number =>
  addRow(database, planting, plantingRow(draft));

/** A planting that becomes one of another variety leaves its own bloom curves behind. */
export function replacePlanting(database: FarmDatabase, id: number, draft: PlantingDraft): void {
  database
    .delete(bloomCurve)
    .where(and(eq(bloomCurve.plantingId, id), ne(bloomCurve.varietyId, draft.varietyId)))
    .run();
  changeRow(database, planting, id, plantingRow(draft));
}

export const insertCoolerStock = (database: FarmDatabase, draft: Omit<CoolerStock, "id">): number =>
  addRow(database, coolerStock, draft);
