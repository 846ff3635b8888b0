import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { PickLine } from "./pick-list";
import { bookingsOfLines } from "./pick-rows";

/** All stems of a variety that come to the bench on a day, whatever bed they stood in, and whose they are, the earliest event first. Stems are saleable ones. */
export type BenchShare = {
  readonly variety: Variety;
  readonly crop: Crop;
  readonly stems: number;
  readonly parts: readonly { readonly booking: Booking; readonly stems: number }[];
};

/** How what is cut on a day is shared on the bench [P2]. @param lines  the pick list's lines of the day; what lies in the cooler already is left out */
export function benchSplit(lines: readonly PickLine[]): BenchShare[] {
  const byVariety = new Map<number, PickLine[]>();
  for (const line of lines) {
    if (line.stand.kind !== "planting") continue;
    byVariety.set(line.variety.id, [...(byVariety.get(line.variety.id) ?? []), line]);
  }
  return [...byVariety.values()]
    .map((own) => ({
      variety: own[0].variety,
      crop: own[0].crop,
      stems: sumOf(own),
      parts: bookingsOfLines(own).map((booking) => ({
        booking,
        stems: sumOf(own.filter((line) => line.booking.id === booking.id)),
      })),
    }))
    .sort((a, b) => a.crop.name.localeCompare(b.crop.name) || a.variety.name.localeCompare(b.variety.name));
}

const sumOf = (lines: readonly PickLine[]): number => lines.reduce((sum, { stems }) => sum + stems, 0);
