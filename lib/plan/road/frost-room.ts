import { toDayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import { packedIntervals } from "#lib/maths/interval-packing";
import { buyInFinder } from "./buy-in";
import { isStored, storedLots } from "./cooler";
import { bucketsAhead, type InCooler, type Piece, placesLeft } from "./cooler-nights";
import type { Match, Serving } from "./match";
import { ordersFinder } from "./orders";
import type { Plan } from "./plan";

/** What can be cut ahead of a frost, parted by whether the cooler has a place for it [T15]: parts of the servings of a match. */
export type RoomAhead = { readonly finds: readonly Serving[]; readonly lacks: readonly Serving[] };

/** Whether stems of a crop in a place, cut on a day, are cut ahead: of a tender crop, from today to the eve. */
export type IsAhead = (crop: Crop, of: Pick<Serving, "stand" | "cutDay">) => boolean;

/**
 * Parts what a match cuts ahead of a frost into what finds a place in the cooler and what does not [T15].
 *
 * What stands there, and what the plan brings there anyway, has its places. What comes on top is chosen bucket by bucket, so that no night has more than there are
 * places, and what would be lost without it is the most there can be. Of these buckets no better choice exists.
 *
 * @param after  the match that the frost leaves
 */
export function roomAhead(plan: Plan, after: Match, isAhead: IsAhead): RoomAhead {
  const { snapshot, work, meetingSeasons, today } = plan;
  const { bucketPlaces } = snapshot.farm;
  const ahead = partedByPlan(work.match, after, isAhead);
  if (bucketPlaces === null || today === null) return { finds: [...ahead.due, ...ahead.onTop], lacks: [] };
  const orders = ordersFinder(snapshot, meetingSeasons, buyInFinder(snapshot))(after)?.match ?? null;
  const cooler = new Cooler(plan);
  cooler.putStored(after, orders, today);
  cooler.putServings(after, [...ahead.anyway, ...ahead.due]);
  if (orders && work.orders) {
    const sold = partedByPlan(work.orders.match, orders, isAhead);
    cooler.putServings(orders, [...sold.anyway, ...sold.due]);
  }
  cooler.putOnTop(after, ahead.onTop);
  const groups = cooler.groups();
  const until = groups.reduce((last, group) => Math.max(last, group.until), today);
  const buckets = groups.flatMap((group) => bucketsAhead(group, today));
  const taken = packedIntervals(buckets, placesLeft(groups, bucketPlaces, today, until));
  const partsOf = (isTaken: boolean) =>
    buckets.flatMap(({ contents }, index) =>
      taken[index] === isTaken ? contents.map(({ piece: { serving }, stems }) => ({ ...serving, stems })) : [],
    );
  return { finds: [...ahead.due, ...partsOf(true)], lacks: partsOf(false) };
}

/** The servings of a match: what is not cut ahead, and of what is the part that the plan cuts on that day for that booking anyway, and what comes on top. */
function partedByPlan(planned: Match, after: Match, isAhead: IsAhead) {
  const keys = new StandKeys();
  const dueStems = new Map<string, number>();
  for (const serving of planned.servings) {
    if (!isAhead(planned.supplies[serving.supplyIndex].crop, serving)) continue;
    const key = keys.of(planned, serving);
    dueStems.set(key, (dueStems.get(key) ?? 0) + serving.stems);
  }
  const [anyway, due, onTop]: [Serving[], Serving[], Serving[]] = [[], [], []];
  for (const serving of after.servings) {
    if (!isAhead(after.supplies[serving.supplyIndex].crop, serving)) {
      anyway.push(serving);
      continue;
    }
    const key = keys.of(after, serving);
    const left = dueStems.get(key) ?? 0;
    const stems = Math.min(left, serving.stems);
    dueStems.set(key, left - stems);
    if (stems > 0) due.push({ ...serving, stems });
    if (stems < serving.stems) onTop.push({ ...serving, stems: serving.stems - stems });
  }
  return { anyway, due, onTop };
}

/** Names what is cut in one place on one day for one booking. */
class StandKeys {
  readonly #places = new Map<Serving["stand"], number>();

  of({ needs }: Match, { stand, cutDay, needIndex }: Serving): string {
    const place = this.#places.get(stand) ?? this.#places.size;
    this.#places.set(stand, place);
    return `${place} ${cutDay} ${needs[needIndex].booking.id}`;
  }
}

type ServingPiece = Piece & { readonly serving: Serving };

/** What stands in the cooler over the nights to come, and what could. */
class Cooler {
  readonly #plan: Plan;
  readonly #groups = new Map<string, InCooler<ServingPiece>>();

  constructor(plan: Plan) {
    this.#plan = plan;
  }

  groups = (): InCooler<ServingPiece>[] => [...this.#groups.values()];

  /** What is in it by the records: for bookings and deliveries until they are delivered, for nobody to its last day of use. */
  putStored(after: Match, orders: Match | null, today: number): void {
    const { snapshot, match, forecast, meetingSeasons, orders: planned } = this.#plan;
    const work = { match: after, orders: orders && planned && { ...planned, match: orders } };
    for (const lot of storedLots({ snapshot, match, work, forecast, meetingSeasons, today })) {
      const { cutDay, lastDay, leftStems, claims, crop, variety } = lot;
      const claimed = claims.reduce((sum, { stems }) => sum + stems, 0);
      for (const { booking, stems } of claims)
        this.#ofBooking(cutDay, booking).filled += stems / crop.bucketStems.count;
      const ofNobody = this.#group(`${cutDay} variety ${variety.id}`, cutDay, lastDay);
      ofNobody.filled += Math.max(0, leftStems - claimed) / crop.bucketStems.count;
    }
  }

  /** What is still to come in, or came unrecorded. */
  putServings(match: Match, servings: readonly Serving[]): void {
    for (const { stand, cutDay, needIndex, supplyIndex, stems } of servings)
      if (!isStored(stand))
        this.#ofBooking(cutDay, match.needs[needIndex].booking).filled +=
          stems / match.supplies[supplyIndex].crop.bucketStems.count;
  }

  /** What could come in, by what it is worth: what a stem short costs its need [M4], and of those promised the loss too [M9], these the ones that come first. */
  putOnTop(match: Match, servings: readonly Serving[]): void {
    const sure = match.needs.map(({ stems }, index) => stems - match.shortStems[index]);
    for (const { needIndex, stems } of servings) sure[needIndex] -= stems;
    for (const serving of servings) {
      const { needIndex, supplyIndex, cutDay } = serving;
      const { booking, promisedStems } = match.needs[needIndex];
      const promised = Math.min(serving.stems, Math.max(0, promisedStems - sure[needIndex]));
      sure[needIndex] += serving.stems;
      const bucketStems = match.supplies[supplyIndex].crop.bucketStems.count;
      const { pieces } = this.#ofBooking(cutDay, booking);
      for (const [isPromised, stems] of [[true, promised] as const, [false, serving.stems - promised] as const]) {
        const worthCents = match.network.stemShortCents(needIndex, isPromised);
        if (stems > 0) pieces.push({ serving, stems, bucketStems, worthCents });
      }
    }
  }

  #ofBooking(cutDay: number, booking: Booking): InCooler<ServingPiece> {
    const { deliverDays } = eventDaysOf(this.#plan.snapshot.farm, booking);
    return this.#group(`${cutDay} booking ${booking.id}`, cutDay, toDayNumber(booking.eventOn) - deliverDays);
  }

  #group(key: string, from: number, until: number): InCooler<ServingPiece> {
    const known = this.#groups.get(key);
    if (known) return known;
    const made = { from, until, filled: 0, pieces: [] };
    this.#groups.set(key, made);
    return made;
  }
}
