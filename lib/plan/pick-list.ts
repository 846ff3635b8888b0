import type { Booking } from "#lib/domain/booking";
import type { Crop, Variety } from "#lib/domain/crop";
import type { Role } from "#lib/domain/words";
import type { Match, Serving } from "./match";
import type { Origin } from "./supply";

/**
 * One line to cut, or to take from the cooler: stems of one variety from one bed on one day for one booking. `stems` are saleable and sum to the match
 * [P1]; `stemsToCut` adds what will be graded out. Bunches and buckets are whole, rounded up.
 */
export type PickLine = {
  readonly booking: Booking;
  readonly cutDay: number;
  readonly origin: Origin;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly roles: readonly Role[];
  readonly stems: number;
  readonly stemsToCut: number;
  readonly bunchCount: number;
  readonly bucketCount: number;
  /** Days from the cut to the event. */
  readonly heldDays: number;
};

/** The pick list of a season: lines in order of day, then bed, then variety, then booking. */
export function pickList(match: Match): PickLine[] {
  const groups = new Map<Origin, Map<number, Serving[]>>();
  for (const serving of match.servings) {
    const byKey = groups.get(serving.origin) ?? new Map<number, Serving[]>();
    groups.set(serving.origin, byKey);
    const key = match.needs[serving.needIndex].booking.id * 100_000 + serving.cutDay;
    const group = byKey.get(key);
    if (group) group.push(serving);
    else byKey.set(key, [serving]);
  }
  const lines: PickLine[] = [];
  for (const byKey of groups.values()) for (const group of byKey.values()) lines.push(lineOf(match, group));
  return lines.sort(
    (a, b) =>
      a.cutDay - b.cutDay ||
      inOrder(placeOf(a.origin), placeOf(b.origin)) ||
      a.variety.id - b.variety.id ||
      a.booking.id - b.booking.id,
  );
}

/** The bed's name, or "Cooler". */
export const placeOf = (origin: Origin): string => (origin.kind === "cooler" ? "Cooler" : origin.planting.bed.name);

const byName = new Intl.Collator("en", { numeric: true });
const inOrder = byName.compare;

function lineOf({ needs, supplies }: Match, group: readonly Serving[]): PickLine {
  const { origin, cutDay, needIndex, supplyIndex } = group[0];
  const { variety, crop } = supplies[supplyIndex];
  const need = needs[needIndex];
  const stems = group.reduce((sum, serving) => sum + serving.stems, 0);
  const gradeOutShare = origin.kind === "planting" ? origin.planting.planting.gradeOutShare : 0;
  return {
    booking: need.booking,
    cutDay,
    origin,
    variety,
    crop,
    roles: [...new Set(group.map((serving) => needs[serving.needIndex].role))],
    stems,
    stemsToCut: gradeOutShare < 1 ? Math.ceil(Number((stems / (1 - gradeOutShare)).toPrecision(12))) : stems,
    bunchCount: Math.ceil(stems / crop.bunchStems.count),
    bucketCount: Math.ceil(stems / crop.bucketStems.count),
    heldDays: need.eventDay - cutDay,
  };
}
