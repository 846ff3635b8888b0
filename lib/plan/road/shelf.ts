import { cropAs } from "#lib/domain/crop-of-variety";
import { ById, inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import { holdOf } from "./hold-window";
import type { Lot, VarietySupply } from "./supply";

/** Whose stems they are: those of a booking, by its id, or nobody's yet. */
export type Owner = number | null;

/** Gathers lots into supplies. Lots of one day keep the order in which they came; two of one stand are one. */
export class Shelf {
  readonly #lots = new Map<number, Map<Owner, Map<number, Lot[]>>>();
  readonly #fromDay: number;

  /** @param fromDay  the day on which what is nobody's stands there: events before it have passed. A day number */
  constructor(fromDay = Number.NEGATIVE_INFINITY) {
    this.#fromDay = fromDay;
  }

  /** Puts stems of a variety, cut on a day, on the shelf. Day numbers. */
  put(varietyId: number, owner: Owner, day: number, lot: Lot): void {
    const ofVariety = this.#lots.get(varietyId) ?? new Map<Owner, Map<number, Lot[]>>();
    this.#lots.set(varietyId, ofVariety);
    const byDay = ofVariety.get(owner) ?? new Map<number, Lot[]>();
    ofVariety.set(owner, byDay);
    const lots = byDay.get(day) ?? [];
    byDay.set(day, lots);
    const place = lots.findIndex(({ stand }) => stand === lot.stand);
    if (place < 0) lots.push(lot);
    else lots[place] = { stand: lot.stand, stems: lots[place].stems + lot.stems };
  }

  /** In order of variety id; of a variety first what is nobody's yet, then each booking's own by id. Days ascend. */
  supplies({ farm, varieties, crops }: Pick<Snapshot, "farm" | "varieties" | "crops">): VarietySupply[] {
    const cropOf = new ById("crop", crops);
    return inOrderOfId(varieties).flatMap((variety) => {
      const crop = cropAs(variety, cropOf.get(variety.cropId));
      const hold = holdOf(crop, farm);
      const byOwner = [...(this.#lots.get(variety.id) ?? [])].sort(([a], [b]) => (a ?? -1) - (b ?? -1));
      return byOwner.map(([owner, byDay]) => {
        const { days, stems, lots } = supplyOfDays(byDay);
        // Field by field: spread copies have many shapes, and every look at such a supply costs several times as much.
        return owner === null
          ? { variety, crop, hold, days, stems, lots, fromDay: this.#fromDay }
          : { variety, crop, hold, days, stems, lots, bookingId: owner };
      });
    });
  }
}

function supplyOfDays(byDay: ReadonlyMap<number, readonly Lot[]>) {
  const days = [...byDay.keys()];
  // Most come in order.
  if (days.some((day, index) => day < days[index - 1])) days.sort((a, b) => a - b);
  const lots = days.map((day) => byDay.get(day) ?? []);
  const stems = lots.map(stemsOf);
  return { days, stems, lots };
}

function stemsOf(lots: readonly Lot[]): number {
  let stems = 0;
  for (const lot of lots) stems += lot.stems;
  return stems;
}
