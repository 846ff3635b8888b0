import type { Booking } from "#lib/domain/booking";
import type { Crop, Variety } from "#lib/domain/crop";
import type { Role } from "#lib/domain/words";
import type { Match } from "./match";
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

/** The pick list of a season: lines in order of day, then bed, then planting, then booking. */
export function pickList(match: Match): PickLine[] {
  const { needs, servings } = match;
  const rank = originRanks(match);
  const bookingOf = (index: number) => needs[servings[index].needIndex].booking.id;
  // Day, place and serving in one number, far below 2^53: sorted as numbers, which is many times faster than by comparing.
  const orders = Float64Array.from(
    servings,
    ({ origin, cutDay }, index) => (cutDay * rank.size + (rank.get(origin) ?? 0)) * servings.length + index,
  ).sort();
  const lines: PickLine[] = [];
  for (let first = 0; first < orders.length; ) {
    const spot = Math.floor(orders[first] / servings.length);
    const here: number[] = [];
    for (; first < orders.length && Math.floor(orders[first] / servings.length) === spot; first++)
      here.push(orders[first] % servings.length);
    here.sort((a, b) => bookingOf(a) - bookingOf(b) || a - b);
    for (let from = 0, to = 0; from < here.length; from = to) {
      while (to < here.length && bookingOf(here[to]) === bookingOf(here[from])) to++;
      lines.push(lineOf(match, here.slice(from, to)));
    }
  }
  return lines;
}

/** The bed's name, or "Cooler". */
export const placeOf = (origin: Origin): string => (origin.kind === "cooler" ? "Cooler" : origin.planting.bed.name);

/** The place of each origin in the order of names, the cooler first, "D2" before "D10". */
function originRanks({ servings }: Match): Map<Origin, number> {
  const keyed = Array.from(new Set(servings.map((serving) => serving.origin)), (origin) => ({
    origin,
    key: origin.kind === "cooler" ? "" : placeOf(origin).replace(/\d+/g, (digits) => digits.padStart(8, "0")),
  }));
  keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  return new Map(keyed.map(({ origin }, index) => [origin, index]));
}

/** The line that some servings of one origin, day, variety and booking make; `indexes` are their places among the servings. */
function lineOf({ needs, supplies, servings }: Match, indexes: readonly number[]): PickLine {
  const { origin, cutDay, needIndex, supplyIndex } = servings[indexes[0]];
  const { variety, crop } = supplies[supplyIndex];
  const need = needs[needIndex];
  const gradeOutShare = origin.kind === "planting" ? origin.planting.planting.gradeOutShare : 0;
  const roles: Role[] = [];
  let stems = 0;
  for (const index of indexes) {
    const { role } = needs[servings[index].needIndex];
    stems += servings[index].stems;
    if (!roles.includes(role)) roles.push(role);
  }
  return {
    booking: need.booking,
    cutDay,
    origin,
    variety,
    crop,
    roles,
    stems,
    stemsToCut: stemsToCut(stems, gradeOutShare),
    bunchCount: Math.ceil(stems / crop.bunchStems.count),
    bucketCount: Math.ceil(stems / crop.bucketStems.count),
    heldDays: need.eventDay - cutDay,
  };
}

/** Stems to cut so that so many are saleable: rounded up, but not for a last digit of floating point. */
function stemsToCut(stems: number, gradeOutShare: number): number {
  if (gradeOutShare === 0 || gradeOutShare >= 1) return stems;
  return Math.ceil(stems / (1 - gradeOutShare) - 1e-9);
}
