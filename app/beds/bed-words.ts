import { type Day, inShort } from "#lib/domain/day";
import { MEASURES, shown } from "#lib/domain/measures";
import { areaSquareMetres, type Bed } from "#lib/domain/records/bed";
import type { Units } from "#lib/domain/words";

/** "49.2 × 3.9 feet" */
export function sizeInWords({ lengthMetres, widthMetres }: Bed, units: Units): string {
  const { length } = MEASURES[units];
  return `${shown(length, lengthMetres)} × ${shown(length, widthMetres)} ${length.word}`;
}

/** "15,500 square feet", for all of the beds together. */
export function areaInWords(beds: readonly Bed[], units: Units): string {
  const { area } = MEASURES[units];
  const squareMetres = beds.reduce((sum, bed) => sum + areaSquareMetres(bed), 0);
  return `${Math.round(squareMetres * area.shownPerStored).toLocaleString("en-US")} ${area.word}`;
}

/** What a spray means on a day: closed now, closed later, or nothing any more. Null when there is nothing to say. */
export function sprayInWords({ noEntryFrom, noEntryUntil }: Bed, today: Day): string | null {
  if (!noEntryFrom || !noEntryUntil || today >= noEntryUntil) return null;
  return today >= noEntryFrom
    ? `sprayed: no entry until ${inShort(noEntryUntil)}`
    : `spray on ${inShort(noEntryFrom)}: no entry until ${inShort(noEntryUntil)}`;
}

/** Names with numbers in the order people count: S2 before S10. */
export const inNameOrder = <T extends { readonly name: string }>(rows: readonly T[]): T[] => {
  const order = new Intl.Collator("en", { numeric: true });
  return [...rows].sort((a, b) => order.compare(a.name, b.name));
};
