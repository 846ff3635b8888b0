import { CATALOGUE } from "#lib/domain/catalogue/crops";
import type { CatalogueCrop, CatalogueCurve } from "#lib/domain/catalogue-types";
import type { Treatment } from "#lib/domain/words";

/** A crop of the catalogue by its name. */
export function catalogueCrop(name: string): CatalogueCrop {
  const crop = CATALOGUE.find((row) => row.name === name);
  if (!crop) throw new RangeError(`the catalogue has no crop ${name}`);
  return crop;
}

/** A crop's bloom curve under a treatment. */
export function catalogueCurve(cropName: string, treatment: Treatment): CatalogueCurve {
  const curve = catalogueCrop(cropName).curves.find((row) => row.treatment === treatment);
  if (!curve) throw new RangeError(`${cropName} has no curve for ${treatment}`);
  return curve;
}

/** Stems of a plant in a full season. */
export const totalStemsPerPlant = (cropName: string, treatment: Treatment): number =>
  catalogueCurve(cropName, treatment).stemsPerPlantByWeek.reduce((sum, stems) => sum + stems, 0);
