import type { Crop } from "#lib/domain/records/crop";
import { colourFitCents, cropFitCents } from "./fit";
import type { Need } from "./needs";
import type { VarietySupply } from "./supply";

/** The varieties that may serve a need, by their place in the supply, each with its fit in cents; and those that only lack the colour. */
export type Fitting = {
  readonly varieties: readonly number[];
  readonly cents: readonly number[];
  readonly otherColours: readonly number[];
};

/** Finds which varieties fit a need. Needs of one kind have one answer, worked out once. */
export class Fits {
  readonly #supplies: readonly VarietySupply[];
  readonly #known = new Map<string, Fitting>();

  constructor(supplies: readonly VarietySupply[]) {
    this.#supplies = supplies;
  }

  of(need: Need): Fitting {
    const known = this.#known.get(need.kind);
    if (known) return known;
    const found = this.#find(need);
    this.#known.set(need.kind, found);
    return found;
  }

  #find(need: Need): Fitting {
    const varieties: number[] = [];
    const cents: number[] = [];
    const otherColours: number[] = [];
    // Varieties of one crop mostly follow each other: the crop's part is worked out anew only when the crop changes.
    let lastCrop: Crop | null = null;
    let cropCents: number | null = null;
    for (let index = 0; index < this.#supplies.length; index++) {
      const { variety, crop } = this.#supplies[index];
      if (crop !== lastCrop) cropCents = cropFitCents(need, crop);
      lastCrop = crop;
      if (cropCents === null) continue;
      if (need.booking.unacceptableColours.includes(variety.colour)) continue;
      const colourCents = colourFitCents(need, variety.colour);
      if (colourCents === null) otherColours.push(index);
      else {
        varieties.push(index);
        cents.push(cropCents + colourCents);
      }
    }
    return { varieties, cents, otherColours };
  }
}
