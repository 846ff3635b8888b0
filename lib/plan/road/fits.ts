import type { Crop } from "#lib/domain/records/crop";
import { colourFitCents, hasAsked, plainFitCents } from "./fit";
import type { Need } from "./needs";
import type { VarietySupply } from "./supply";

/** The varieties that may serve a need, by their place in the supply, each with its fit in cents; those that only lack the colour, and those that only lack what is asked of the stem. */
export type Fitting = {
  readonly varieties: readonly number[];
  readonly cents: readonly number[];
  readonly otherColours: readonly number[];
  readonly otherStems: readonly number[];
};

/** Finds which varieties fit a need. Needs of one kind have one answer, worked out once, but for a booking with stems of its own. */
export class Fits {
  readonly #supplies: readonly VarietySupply[];
  readonly #known = new Map<string, Fitting>();
  readonly #withOwn = new Map<Need, Fitting>();
  /** Places of the supplies that are nobody's own, and of each booking's own. */
  readonly #free: number[] = [];
  readonly #ownOf = new Map<number, number[]>();

  constructor(supplies: readonly VarietySupply[]) {
    this.#supplies = supplies;
    supplies.forEach(({ bookingId }, place) => {
      const own = bookingId === undefined ? this.#free : (this.#ownOf.get(bookingId) ?? []);
      if (bookingId !== undefined) this.#ownOf.set(bookingId, own);
      own.push(place);
    });
  }

  of(need: Need): Fitting {
    const own = this.#ownOf.size === 0 ? undefined : this.#ownOf.get(need.booking.id);
    if (!own) return this.#ofFree(need);
    const known = this.#withOwn.get(need);
    if (known) return known;
    const found = this.#joined(this.#ofFree(need), this.#find(need, own));
    this.#withOwn.set(need, found);
    return found;
  }

  #joined(ofAll: Fitting, ofOwn: Fitting): Fitting {
    return {
      varieties: [...ofAll.varieties, ...ofOwn.varieties],
      cents: [...ofAll.cents, ...ofOwn.cents],
      otherColours: [...ofAll.otherColours, ...ofOwn.otherColours],
      otherStems: [...ofAll.otherStems, ...ofOwn.otherStems],
    };
  }

  /** The supplies that would fit a need, were they not cut for other bookings [T2]. */
  othersOwn(need: Need): number[] {
    const others = [...this.#ownOf].filter(([id]) => id !== need.booking.id);
    return others.flatMap(([, places]) => this.#find(need, places).varieties);
  }

  #ofFree(need: Need): Fitting {
    const known = this.#known.get(need.kind);
    if (known) return known;
    const found = this.#find(need, this.#free);
    this.#known.set(need.kind, found);
    return found;
  }

  #find(need: Need, places: readonly number[]): Fitting {
    const varieties: number[] = [];
    const cents: number[] = [];
    const otherColours: number[] = [];
    const otherStems: number[] = [];
    // Varieties of one crop mostly follow each other: the crop's part is worked out anew only when the crop changes.
    let lastCrop: Crop | null = null;
    let cropCents: number | null = null;
    let isAsAsked = true;
    for (const index of places) {
      const { variety, crop } = this.#supplies[index];
      if (crop !== lastCrop) {
        cropCents = plainFitCents(need, crop);
        isAsAsked = hasAsked(need.asks, crop);
      }
      lastCrop = crop;
      if (cropCents === null) continue;
      if (need.booking.unacceptableColours.includes(variety.colour)) continue;
      const colourCents = colourFitCents(need, variety.colour);
      if (!isAsAsked) {
        if (colourCents !== null) otherStems.push(index);
      } else if (colourCents === null) otherColours.push(index);
      else {
        varieties.push(index);
        cents.push(cropCents + colourCents);
      }
    }
    return { varieties, cents, otherColours, otherStems };
  }
}
