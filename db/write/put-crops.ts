import { and, eq, isNull } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bloomCurve, crop, variety } from "#db/schema/crops";
import type { BloomCurve } from "#lib/domain/bloom-curve";
import type { Crop, Variety } from "#lib/domain/crop";
import { addRow } from "./add-row";
import { refuse, refuseTwice } from "./refusal";
import { cropColumns, curveColumns, varietyColumns } from "./to-columns";

/** Writes of one crop, variety or bloom curve inside a change that is open. */

/** Adds a crop and gives its id. Refuses a second one of the same name. */
export const insertCrop = (database: FarmDatabase, draft: Omit<Crop, "id">): number =>
  refuseTwice("name", cropTwice(draft.name), () => addRow(database, crop, cropColumns(draft)));

export function replaceCrop(database: FarmDatabase, id: number, draft: Omit<Crop, "id">): void {
  refuseTwice("name", cropTwice(draft.name), () =>
    database.update(crop).set(cropColumns(draft)).where(eq(crop.id, id)).run(),
  );
}

/** Adds a variety and gives its id. Refuses a second one of the same name in its crop. */
export const insertVariety = (database: FarmDatabase, draft: Omit<Variety, "id">): number =>
  refuseTwice("name", varietyTwice(draft.name), () => addRow(database, variety, varietyColumns(draft)));

/** Moved to another crop, a variety takes its bloom curves along. */
export function replaceVariety(database: FarmDatabase, id: number, draft: Omit<Variety, "id">): void {
  refuseTwice("name", varietyTwice(draft.name), () =>
    database.update(variety).set(varietyColumns(draft)).where(eq(variety.id, id)).run(),
  );
}

const cropTwice = (name: string): string => `a crop called ${name} is there already: choose another name`;
const varietyTwice = (name: string): string => `this crop has a variety called ${name} already: choose another name`;

/** Adds a curve, or replaces the one of the same crop, variety and treatment, and gives its id. */
export function putCurveRow(database: FarmDatabase, draft: Omit<BloomCurve, "id">): number {
  const { cropId, varietyId, treatment } = draft;
  if (varietyId !== null) {
    const named = database.select({ cropId: variety.cropId }).from(variety).where(eq(variety.id, varietyId)).get();
    if (named?.cropId !== cropId)
      refuse("varietyId", "this variety is of another crop: choose one of the curve's own crop");
  }
  const kept = database
    .select({ id: bloomCurve.id })
    .from(bloomCurve)
    .where(
      and(
        eq(bloomCurve.cropId, cropId),
        varietyId === null ? isNull(bloomCurve.varietyId) : eq(bloomCurve.varietyId, varietyId),
        eq(bloomCurve.treatment, treatment),
      ),
    )
    .get();
  if (!kept) return addRow(database, bloomCurve, curveColumns(draft));
  database.update(bloomCurve).set(curveColumns(draft)).where(eq(bloomCurve.id, kept.id)).run();
  return kept.id;
}
