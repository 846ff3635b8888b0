import { and, eq, isNull } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { planting } from "#db/schema/beds";
import { crop, variety } from "#db/schema/crops";
import { bloomCurve } from "#db/schema/curves";
import { cropRow, curveRow } from "#db/schema/nested";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Variety } from "#lib/domain/records/variety";
import { addRow, changeRow } from "./put-row";
import { refuse, refuseTwice } from "./refusal";

/** Writes of one crop, variety or bloom curve inside a change that is open. */

/** Adds a crop and gives its id. Refuses a second one of the same name. */
export const insertCrop = (database: FarmDatabase, draft: Omit<Crop, "id">): number =>
  refuseTwice("name", cropTwice(draft.name), () => addRow(database, crop, cropRow(draft)));

export function replaceCrop(database: FarmDatabase, id: number, draft: Omit<Crop, "id">): void {
  refuseTwice("name", cropTwice(draft.name), () => changeRow(database, crop, id, cropRow(draft)));
}

/** Adds a variety and gives its id. Refuses a second one of the same name in its crop. */
export const insertVariety = (database: FarmDatabase, draft: Omit<Variety, "id">): number =>
  refuseTwice("name", varietyTwice(draft.name), () => addRow(database, variety, draft));

/** Moved to another crop, a variety takes its bloom curves along. */
export function replaceVariety(database: FarmDatabase, id: number, draft: Omit<Variety, "id">): void {
  refuseTwice("name", varietyTwice(draft.name), () => changeRow(database, variety, id, draft));
}

const cropTwice = (name: string): string => `a crop called ${name} is there already: choose another name`;
const varietyTwice = (name: string): string => `this crop has a variety called ${name} already: choose another name`;

/** Makes the curve with this id what `draft` says. Refuses a second one of the same crop, variety, planting and treatment. */
export function replaceCurve(database: FarmDatabase, id: number, draft: Omit<BloomCurve, "id">): void {
  if (draft.plantingId !== null) refuseStrayPlanting(database, draft.plantingId, draft.varietyId);
  const twice = "this crop, variety or planting has a curve for that way of growing already: change that one";
  refuseTwice("treatment", twice, () => changeRow(database, bloomCurve, id, curveRow(draft)));
}

/** Adds a curve, or replaces the one of the same crop, variety, planting and treatment, and gives its id. */
export function putCurveRow(database: FarmDatabase, draft: Omit<BloomCurve, "id">): number {
  const { cropId, varietyId, plantingId, treatment } = draft;
  if (varietyId !== null) {
    const named = database.select({ cropId: variety.cropId }).from(variety).where(eq(variety.id, varietyId)).get();
    if (named?.cropId !== cropId)
      refuse("varietyId", "this variety is of another crop: choose one of the curve's own crop");
  }
  if (plantingId !== null) refuseStrayPlanting(database, plantingId, varietyId);
  const kept = database
    .select({ id: bloomCurve.id })
    .from(bloomCurve)
    .where(
      and(
        eq(bloomCurve.cropId, cropId),
        varietyId === null ? isNull(bloomCurve.varietyId) : eq(bloomCurve.varietyId, varietyId),
        plantingId === null ? isNull(bloomCurve.plantingId) : eq(bloomCurve.plantingId, plantingId),
        eq(bloomCurve.treatment, treatment),
      ),
    )
    .get();
  if (!kept) return addRow(database, bloomCurve, curveRow(draft));
  changeRow(database, bloomCurve, kept.id, curveRow(draft));
  return kept.id;
}

/** A planting's own curve is of its own variety. */
function refuseStrayPlanting(database: FarmDatabase, plantingId: number, varietyId: number | null): void {
  const named = database
    .select({ varietyId: planting.varietyId })
    .from(planting)
    .where(eq(planting.id, plantingId))
    .get();
  if (!named) refuse("plantingId", "this planting is not on the farm");
  if (named?.varietyId !== varietyId)
    refuse("plantingId", "this planting is of another variety now: open its bed’s page again");
}
