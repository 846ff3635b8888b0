import { COLOURS } from "#lib/domain/words";
import { colourFitCents, cropFitCents } from "./fit";
import type { Need } from "./needs";
import type { VarietySupply } from "./supply";

/** The varieties that may serve a need, by their place in the supply, each with its fit in cents; and those that only lack the colour. */
export type Fitting = { readonly varieties: Int32Array; readonly cents: Int32Array; readonly otherColours: Int32Array };

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
    const ofCrop = new Map<number, number | null>();
    const ofColour = new Map(COLOURS.map((colour) => [colour, colourFitCents(need, colour)]));
    const varieties: number[] = [];
    const cents: number[] = [];
    const otherColours: number[] = [];
    for (let index = 0; index < this.#supplies.length; index++) {
      const { variety, crop } = this.#supplies[index];
      let cropCents = ofCrop.get(crop.id);
      if (cropCents === undefined) {
        cropCents = cropFitCents(need, crop);
        ofCrop.set(crop.id, cropCents);
      }
      if (cropCents === null) continue;
      const colourCents = ofColour.get(variety.colour) ?? null;
      if (colourCents === null) otherColours.push(index);
      else {
        varieties.push(index);
        cents.push(cropCents + colourCents);
      }
    }
    return {
      varieties: Int32Array.from(varieties),
      cents: Int32Array.from(cents),
      otherColours: Int32Array.from(otherColours),
    };
  }
}
