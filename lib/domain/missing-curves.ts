import type { CatalogueCrop, CatalogueCurve } from "./catalogue-types";
import type { Crop } from "./records/crop";
import type { CurveDraft } from "./records/curve";
import type { Snapshot } from "./snapshot";

/** A crop of the farm, and a way to grow it of which the built-in list knows the bloom and the farm does not. */
export type MissingCurve = { readonly crop: Crop; readonly curve: CatalogueCurve };

/**
 * Built-in bloom curves that the farm lacks, in the order of its crops: a crop is known by its name, a curve by its treatment. Curves of one variety or
 * planting are not looked at, since they tell nothing of the crop's other plantings.
 */
export function missingCurves(
  { crops, curves }: Pick<Snapshot, "crops" | "curves">,
  catalogue: readonly CatalogueCrop[],
): MissingCurve[] {
  const builtIn = new Map(catalogue.map((crop) => [crop.name, crop]));
  const had = new Set(
    curves
      .filter(({ varietyId, plantingId }) => varietyId === null && plantingId === null)
      .map(({ cropId, treatment }) => `${cropId} ${treatment}`),
  );
  return crops.flatMap((crop) =>
    (builtIn.get(crop.name)?.curves ?? [])
      .filter(({ treatment }) => !had.has(`${crop.id} ${treatment}`))
      .map((curve) => ({ crop, curve })),
  );
}

/** Such a curve as a row of the farm, for the whole crop. */
export const addedCurve = ({ crop, curve }: MissingCurve): CurveDraft => ({
  ...curve,
  cropId: crop.id,
  varietyId: null,
  plantingId: null,
});
