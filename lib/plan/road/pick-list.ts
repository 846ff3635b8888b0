import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { Role } from "#lib/domain/words";
import { sortedByKey } from "#lib/maths/counting-sort";
import type { Match } from "./match";
import { goodShareOn } from "./saleable-share";
import { seasonOfBooking, seasonOfStems } from "./seasons";
import type { Stand } from "./supply";

/**
 * One line to cut, or to take from the cooler: stems of one variety from one bed on one day for one booking. `stems` are saleable and sum to the match
 * [P1]; `stemsToCut` adds what will be graded out, and what the crop is cut beyond its use. Bunches are whole, rounded up. `bucketCount` are the buckets that this line is the first to fill from: what
 * is cut on a day for one booking shares buckets, so a part of the list always adds up to the buckets it fills.
 */
export type PickLine = {
  readonly booking: Booking;
  readonly cutDay: number;
  readonly stand: Stand;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly roles: readonly Role[];
  readonly stems: number;
  readonly stemsToCut: number;
  readonly bunchCount: number;
  readonly bucketCount: number;
  /** Days from the cut to the event. */
  readonly heldDays: number;
  /** Held longer than it keeps as good as fresh [M3]. */
  readonly isStretched: boolean;
};

/**
 * The pick list of a season: all that its plantings and cooler give, and all that its bookings get, which over New Year may be another season's.
 * Lines in order of day, then bed, then planting, then booking.
 */
export function pickList(match: Match, seasonYear: number): PickLine[] {
  const keys = sortKeys(match);
  const isOwn = (index: number) => {
    const { stand, needIndex } = match.servings[index];
    return seasonOfStems(stand) === seasonYear || seasonOfBooking(match.needs[needIndex].booking) === seasonYear;
  };
  let order = Int32Array.from(match.servings, (_, index) => index).filter(isOwn);
  for (const { ofServing, count } of [keys.booking, keys.stand, keys.day]) order = sortedByKey(order, ofServing, count);
  const isSameLine = (a: number, b: number) =>
    keys.booking.ofServing[a] === keys.booking.ofServing[b] &&
    keys.stand.ofServing[a] === keys.stand.ofServing[b] &&
    keys.day.ofServing[a] === keys.day.ofServing[b];
  const lines: OpenLine[] = [];
  for (let first = 0, end = 0; first < order.length; first = end) {
    while (end < order.length && isSameLine(order[first], order[end])) end++;
    lines.push(lineOf(match, order.subarray(first, end)));
  }
  countBuckets(lines);
  return lines;
}

/** A line before its buckets are counted. */
type OpenLine = PickLine & { bucketCount: number };

/** A last digit of floating point is no further bucket. */
export const NOT_A_BUCKET = 1e-9;

/** Counts buckets: the lines of one day and booking fill them one after the other, and each has those that it is the first to need. */
function countBuckets(lines: readonly OpenLine[]): void {
  const filled = new Map<number, number>();
  let day = Number.NaN;
  for (const line of lines) {
    if (line.cutDay !== day) filled.clear();
    day = line.cutDay;
    const before = filled.get(line.booking.id) ?? 0;
    const after = before + line.stems / line.crop.bucketStems.count;
    filled.set(line.booking.id, after);
    line.bucketCount = Math.ceil(after - NOT_A_BUCKET) - Math.ceil(before - NOT_A_BUCKET);
  }
}

/** What the servings are sorted by, as small whole numbers: day, stand in the order of names, booking in the order of ids. */
function sortKeys({ needs, servings }: Match) {
  const stands = standRanks(servings);
  const ids = [...new Set(needs.map((need) => need.booking.id))].sort((a, b) => a - b);
  const bookings = new Map(ids.map((id, index) => [id, index]));
  const firstDay = servings.reduce((day, serving) => Math.min(day, serving.cutDay), Number.POSITIVE_INFINITY);
  const day = new Int32Array(servings.length);
  const stand = new Int32Array(servings.length);
  const booking = new Int32Array(servings.length);
  let dayCount = 1;
  servings.forEach((serving, index) => {
    day[index] = serving.cutDay - firstDay;
    dayCount = Math.max(dayCount, day[index] + 1);
    stand[index] = stands.get(serving.stand) ?? 0;
    booking[index] = bookings.get(needs[serving.needIndex].booking.id) ?? 0;
  });
  return {
    day: { ofServing: day, count: dayCount },
    stand: { ofServing: stand, count: stands.size },
    booking: { ofServing: booking, count: ids.length },
  };
}

const COOLER = "Cooler";

/** The bed's name, or "Cooler". A bed that is called so is "Bed Cooler": nobody shall look for its stems in the cooler. */
export function placeOf(stand: Stand): string {
  if (stand.kind === "cooler") return COOLER;
  const { name } = stand.planting.bed;
  return name.toLowerCase() === COOLER.toLowerCase() ? `Bed ${name}` : name;
}

/** What places are walked in the order of: their names, the cooler first, "D2" before "D10". */
export const placeKey = (stand: Stand): string =>
  stand.kind === "cooler" ? "" : placeOf(stand).replace(/\d+/g, (digits) => digits.padStart(8, "0"));

/** Two pick lists as one to walk: by day, then by bed, in each bed the first list's lines before the second's. */
export function walkedTogether(first: readonly PickLine[], second: readonly PickLine[]): PickLine[] {
  const keyed = [...first, ...second].map((line) => ({ line, key: placeKey(line.stand) }));
  keyed.sort((a, b) => a.line.cutDay - b.line.cutDay || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  return keyed.map(({ line }) => line);
}

/** The place of each stand in the order of names, the cooler first, "D2" before "D10". */
function standRanks(servings: Match["servings"]): Map<Stand, number> {
  const stands = new Set<Stand>();
  for (const serving of servings) stands.add(serving.stand);
  const keyed = Array.from(stands, (stand) => ({
    stand,
    key: placeKey(stand),
  }));
  keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  return new Map(keyed.map(({ stand }, index) => [stand, index]));
}

/** The line that some servings of one stand, day, variety and booking make; `indexes` are their places among the servings. */
function lineOf({ needs, supplies, servings }: Match, indexes: Int32Array): OpenLine {
  const { stand, cutDay, needIndex, supplyIndex } = servings[indexes[0]];
  const { variety, crop, hold } = supplies[supplyIndex];
  const need = needs[needIndex];
  const goodShare = stand.kind === "planting" ? goodShareOn(stand.planting, cutDay) : 1;
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
    stand,
    variety,
    crop,
    roles,
    stems,
    stemsToCut: stemsToCut(stems, goodShare, stand.kind === "planting" ? crop.cutSpareShare.count : 0),
    bunchCount: Math.ceil(stems / crop.bunchStems.count),
    bucketCount: 0,
    heldDays: need.eventDay - cutDay,
    isStretched: need.eventDay - cutDay > hold.days,
  };
}

/** Stems to cut so that so many are saleable and left: rounded up once, but not for a last digit of floating point. */
function stemsToCut(stems: number, goodShare: number, cutSpareShare: number): number {
  return Math.ceil((stems * (1 + cutSpareShare)) / (goodShare || 1) - 1e-9);
}
