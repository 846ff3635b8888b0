import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Hold, isTooShort } from "./hold-window";
import type { Match } from "./match";
import type { VarietySupply } from "./supply";

/**
 * A crop of which no stem still keeps when an event comes [M1]: its hold, and the stems of a plan that serve nobody for it. `variety` is the one that says
 * so of itself, null where the crop does.
 */
export type Unheld = {
  readonly crop: Crop;
  readonly variety: Variety | null;
  readonly hold: Hold;
  readonly stems: number;
};

/** The crops of a match that are cut, or stand in the cooler, and keep for less than the lead days; in order of crop, then of variety. */
export function unheldCrops({ farm, crops }: Pick<Snapshot, "farm" | "crops">, { supplies }: Match): Unheld[] {
  const tooShort = supplies.filter(({ hold }) => isTooShort(hold, farm.leadDays));
  if (tooShort.length === 0) return [];
  return crops.flatMap((crop) => {
    const byWord = new Map<Variety | null, VarietySupply[]>();
    for (const supply of tooShort) {
      if (supply.crop.id !== crop.id) continue;
      const { variety } = supply;
      const word = variety.holdDays === null && variety.stretchDays === null ? null : variety;
      byWord.set(word, [...(byWord.get(word) ?? []), supply]);
    }
    return [...byWord].map(([variety, ofWord]) => ({
      ...{ crop, variety, hold: ofWord[0].hold },
      stems: ofWord.reduce((sum, supply) => supply.stems.reduce((all, ofDay) => all + ofDay, sum), 0),
    }));
  });
}
