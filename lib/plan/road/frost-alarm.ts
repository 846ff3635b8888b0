import { weekdayOfDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { buyInFinder } from "./buy-in";
import { type Match, match } from "./match";
import { type PickLine, pickList } from "./pick-list";
import { isOpenBed } from "./picking-days";
import type { Plan } from "./plan";
import { seasonOfBooking } from "./seasons";
import { Shelf } from "./shelf";
import type { Lot, VarietySupply } from "./supply";

/** Stems of a booking. */
type OfBooking = { readonly booking: Booking; readonly stems: number };

/** What a frost does to a plan, and what can be cut ahead of it [T12]. Day numbers. */
export type FrostAlarm = {
  /** The last day on which to cut: the eve of the frost. Before today where the frost is today's. */
  readonly eve: number;
  /** Stems of tender crops that the plan would cut for bookings on the morning of the frost or later, by booking. */
  readonly atRisk: readonly OfBooking[];
  /** What to cut from today to the eve in place of it: lines of tender crops, of which some were to be cut then anyway. */
  readonly cutAhead: readonly PickLine[];
  /** Stems that a booking goes short of all the same, beyond what it is short of now. */
  readonly stillLost: readonly OfBooking[];
  /** The match of the bookings that are cut for [N5] that the frost leaves, with its proof. */
  readonly match: Match;
};

/** What a plan of today loses by a frost on a morning, and the best that can be cut before it within the hold windows [T12]. @param morning  a day number */
export function frostAlarm(plan: Plan, morning: number): FrostAlarm {
  const { snapshot, seasonYear, today } = plan;
  const { match: planned } = plan.work;
  const from = today ?? Number.NEGATIVE_INFINITY;
  const eve = morning - 1;
  const supplies = suppliesBeforeFrost(plan, morning);
  const after = match(snapshot.farm, supplies, planned.needs, buyInFinder(snapshot));
  const ownNeeds = [...planned.needs.keys()].filter(
    (index) => seasonOfBooking(planned.needs[index].booking) === seasonYear,
  );
  const byBooking = (stemsOf: (needIndex: number) => number): OfBooking[] => {
    const stems = new Map<Booking, number>();
    for (const index of ownNeeds) {
      const { booking } = planned.needs[index];
      stems.set(booking, (stems.get(booking) ?? 0) + stemsOf(index));
    }
    return [...stems].flatMap(([booking, of]) => (of > 0 ? [{ booking, stems: of }] : []));
  };
  const risked = new Map<number, number>();
  for (const { needIndex, supplyIndex, stand, cutDay, stems } of planned.servings)
    if (
      planned.supplies[supplyIndex].crop.tender &&
      stand.kind === "planting" &&
      !stand.isRecorded &&
      cutDay >= morning
    )
      risked.set(needIndex, (risked.get(needIndex) ?? 0) + stems);
  return {
    eve,
    atRisk: byBooking((index) => risked.get(index) ?? 0),
    cutAhead: pickList(after, seasonYear).filter(
      ({ crop, stand, cutDay }) =>
        crop.tender && stand.kind === "planting" && !stand.isRecorded && cutDay >= from && cutDay <= eve,
    ),
    stillLost: byBooking((index) => after.shortStems[index] - planned.shortStems[index]),
    match: after,
  };
}

/**
 * What is left to give away when a frost takes all tender stems that stand: what was cut, hardy crops, tender ones cut before it, and of those that would be cut on
 * the first picking day from the frost on the part that is open on the eve [T12].
 */
function suppliesBeforeFrost({ match: { supplies }, snapshot, today }: Plan, morning: number): VarietySupply[] {
  const shelf = new Shelf();
  const isPicked = pickedOn(snapshot.farm.pickingWeekdays);
  const eve = morning - 1;
  for (const { variety, crop, bookingId, days, lots } of supplies) {
    const seen = new Set<Lot["stand"]>();
    const put = (day: number, lot: Lot) => shelf.put(variety.id, bookingId ?? null, day, lot);
    days.forEach((day, index) => {
      for (const lot of lots[index]) {
        const { stand, stems } = lot;
        if (!crop.tender || day < morning || stand.kind === "cooler" || stand.isRecorded) put(day, lot);
        else if (!seen.has(stand)) {
          seen.add(stand);
          const openStems = openOnEve(stems, day, eve, isPicked);
          if (openStems > 0 && (today === null || eve >= today) && isOpenBed(stand.planting.bed, eve))
            put(eve, { stand, stems: openStems });
        }
      }
    });
  }
  return shelf.supplies(snapshot);
}

/** Of the stems that a planting gives on a picking day those that are open on an eve before it: equal parts opened on each day since the picking day before. */
function openOnEve(stems: number, pickDay: number, eve: number, isPicked: (day: number) => boolean): number {
  let before = pickDay - 1;
  while (!isPicked(before)) before--;
  return eve <= before ? 0 : Math.floor((stems * (eve - before)) / (pickDay - before));
}

const pickedOn =
  (weekdays: readonly number[]) =>
  (day: number): boolean =>
    weekdays.includes(weekdayOfDayNumber(day));
