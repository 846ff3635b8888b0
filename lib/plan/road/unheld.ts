import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Hold, isTooShort } from "./hold-window";
import type { Match } from "./match";

/** A crop of which no stem still keeps when an event comes [M1]: its hold, and the stems of a plan that serve nobody for it. */
export type Unheld = { readonly crop: Crop; readonly hold: Hold; readonly stems: number };

/** The crops of a match that are cut, or stand in the cooler, and keep for less than the lead days; in order of crop. */
export function unheldCrops({ farm, crops }: Pick<Snapshot, "farm" | "crops">, { supplies }: Match): Unheld[] {
  return crops.flatMap((crop) => {
    const ofCrop = supplies.filter((supply) => supply.crop.id === crop.id && isTooShort(supply.hold, farm.leadDays));
    if (ofCrop.length === 0) return [];
    const stems = ofCrop.reduce((sum, supply) => supply.stems.reduce((all, ofDay) => all + ofDay, sum), 0);
    return [{ crop, hold: ofCrop[0].hold, stems }];
  });
}
