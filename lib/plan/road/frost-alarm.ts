import type { Booking } from "#lib/domain/records/booking";
import { buyInFinder } from "./buy-in";
import { type IsAhead, roomAhead } from "./frost-room";
import { isTenderStanding, suppliesBeforeFrost, suppliesBeside } from "./frost-supplies";
import { type Match, match, type Serving } from "./match";
import type { Need } from "./needs";
import { type PickLine, pickList } from "./pick-list";
import type { Plan } from "./plan";
import { seasonOfBooking } from "./seasons";

/** Stems of a booking. */
type OfBooking = { readonly booking: Booking; readonly stems: number };

/** What a frost does to a plan, and what can be cut ahead of it [T12] [T15]. Day numbers. */
export type FrostAlarm = {
  /** The last day on which to cut: the eve of the frost. Before today where the frost is today's. */
  readonly eve: number;
  /** Stems of tender crops that the plan would cut for bookings on the morning of the frost or later, by booking. */
  readonly atRisk: readonly OfBooking[];
  /** What to cut from today to the eve in place of it: lines of tender crops, of which some were to be cut then anyway. All of it finds room, but for what is cut anyway. */
  readonly cutAhead: readonly PickLine[];
  /** What would keep until its event too, and finds no place in the cooler: lines with the buckets that would hold them. */
  readonly noRoom: readonly PickLine[];
  /** Stems that a booking goes short of all the same, beyond what it is short of now. */
  readonly stillLost: readonly OfBooking[];
  /** The match of the bookings that are cut for [N5] that the frost leaves, with its proof, as if there were room for all. */
  readonly match: Match;
  /** The match of what they still ask for beside what is cut ahead; null where there is room for all. */
  readonly besideRoom: Match | null;
};

/** Stems of tender crops that a plan would cut for bookings on a morning or later, by booking: what a frost would take [T12]. @param morning  a day number */
export function stemsAtRisk({ work: { match: planned }, seasonYear }: Plan, morning: number): OfBooking[] {
  const risked = new Map<number, number>();
  for (const serving of planned.servings)
    if (serving.cutDay >= morning && isTenderStanding(planned.supplies[serving.supplyIndex].crop, serving.stand))
      risked.set(serving.needIndex, (risked.get(serving.needIndex) ?? 0) + serving.stems);
  return byBooking(planned, seasonYear, (index) => risked.get(index) ?? 0);
}

/** What a plan of today loses by a frost on a morning, and the best that can be cut before it within the hold windows [T12] and the places of the cooler [T15]. @param morning  a day number */
export function frostAlarm(plan: Plan, morning: number): FrostAlarm {
  const { snapshot, seasonYear, today } = plan;
  const { match: planned } = plan.work;
  const eve = morning - 1;
  const from = today ?? Number.NEGATIVE_INFINITY;
  const after = match(snapshot.farm, suppliesBeforeFrost(plan, morning), planned.needs, buyInFinder(snapshot));
  const isAhead: IsAhead = (crop, { stand, cutDay }) =>
    isTenderStanding(crop, stand) && cutDay >= from && cutDay <= eve;
  const room = roomAhead(plan, after, isAhead);
  const besideRoom = room.lacks.length > 0 ? matchBeside(plan, after, isAhead, room.finds) : null;
  const left = besideRoom ?? after;
  return {
    eve,
    atRisk: stemsAtRisk(plan, morning),
    cutAhead: pickList({ ...after, servings: room.finds }, seasonYear),
    noRoom: pickList({ ...after, servings: room.lacks }, seasonYear),
    stillLost: byBooking(planned, seasonYear, (index) => left.shortStems[index] - planned.shortStems[index]),
    match: after,
    besideRoom,
  };
}

/** The stems of the bookings of a season, by booking, those with any. */
function byBooking({ needs }: Match, seasonYear: number, stemsOf: (needIndex: number) => number): OfBooking[] {
  const stems = new Map<Booking, number>();
  needs.forEach(({ booking }, index) => {
    if (seasonOfBooking(booking) === seasonYear) stems.set(booking, (stems.get(booking) ?? 0) + stemsOf(index));
  });
  return [...stems].flatMap(([booking, of]) => (of > 0 ? [{ booking, stems: of }] : []));
}

/** What needs ask for beside what is cut ahead for them, matched with all that is not cut ahead. */
function matchBeside({ snapshot }: Plan, after: Match, isAhead: IsAhead, finds: readonly Serving[]): Match {
  const cut = new Map<number, number>();
  for (const { needIndex, stems } of finds) cut.set(needIndex, (cut.get(needIndex) ?? 0) + stems);
  const needs = after.needs.map((need, index): Need => {
    const stems = cut.get(index) ?? 0;
    const promisedStems = Math.max(0, need.promisedStems - stems);
    return stems === 0 ? need : { ...need, stems: need.stems - stems, promisedStems };
  });
  return match(snapshot.farm, suppliesBeside(snapshot, after, isAhead), needs, buyInFinder(snapshot));
}
