import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { placeKey, placeOf } from "./pick-list";
import { type PickRow, pickRows } from "./pick-rows";
import type { PickDay } from "./pick-sheets";
import type { Stand } from "./supply";

/** What is cut of one variety in one place over some days: the row of each day that has one, by day number. `stand` is the first in the place. */
export type PickWeekRow = {
  readonly stand: Stand;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly ofDay: ReadonlyMap<number, PickRow>;
};

/** Picking days side by side as one walk: a row for each place and variety, in the order of places; each day's rows are those of its own list. */
export function pickWeek(days: readonly PickDay[]): PickWeekRow[] {
  const found = new Map<string, Omit<PickWeekRow, "ofDay"> & { readonly ofDay: Map<number, PickRow> }>();
  for (const { cutDay, lines } of days)
    for (const row of pickRows(lines)) {
      const { stand, variety, crop } = row;
      const key = `${placeOf(stand)} ${variety.id}`;
      const known = found.get(key) ?? { stand, variety, crop, ofDay: new Map<number, PickRow>() };
      known.ofDay.set(cutDay, row);
      found.set(key, known);
    }
  // Places in their order; within each, varieties of one crop together, as they came first.
  const rows = [...found.values()];
  const firstOfCrop = new Map<string, number>();
  rows.forEach(({ stand, crop }, index) => {
    const key = `${placeOf(stand)} ${crop.id}`;
    firstOfCrop.set(key, firstOfCrop.get(key) ?? index);
  });
  const cropPlace = ({ stand, crop }: PickWeekRow) => firstOfCrop.get(`${placeOf(stand)} ${crop.id}`) ?? 0;
  return rows.sort((a, b) => compared(placeKey(a.stand), placeKey(b.stand)) || cropPlace(a) - cropPlace(b));
}

const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
