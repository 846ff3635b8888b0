import { stemsAskedFor } from "#lib/domain/booking-stems";
import { type Day, toDay, toDayNumber, weekdayOfDayNumber, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { BuyInPrices } from "./buy-in";
import { type Match, match } from "./match";
import { needsOf } from "./needs";
import type { Lot, Stand, VarietySupply } from "./supply";

/** A standing order going out on a day. `booking` stands for it in needs, pick list and labels; its id is below 0, and no booking has it. */
export type Delivery = { readonly order: StandingOrder; readonly eventOn: Day; readonly booking: Booking };

/** The standing orders of the plan's seasons: every delivery, and what each gets of the stems that bookings leave. */
export type OrdersPlan = { readonly deliveries: readonly Delivery[]; readonly match: Match };

/** Whether a booking of a pick list stands for a standing order's delivery. */
export const isDelivery = ({ id }: Pick<Booking, "id">): boolean => id < 0;

/**
 * Matches standing orders with what bookings leave, so that nothing of a booking's changes by them [SO2]. A stem short costs what it would have earned;
 * this match is proved like the other. Null while no order goes out in these seasons.
 * @param ofBookings  the match of these seasons' bookings
 */
export function ordersPlan(
  snapshot: Snapshot,
  seasonYears: readonly number[],
  ofBookings: Match,
  buyIn: BuyInPrices,
): OrdersPlan | null {
  const deliveries = deliveriesOf(snapshot.standingOrders, seasonYears);
  if (deliveries.length === 0) return null;
  const recipes = new ById("recipe", snapshot.recipes);
  const centsOf = new Map<unknown, number>(deliveries.map(({ booking, order }) => [booking, order.stemCents]));
  const needs = deliveries
    .filter(({ booking }) => stemsAskedFor(booking, (id) => recipes.get(id).lines) <= MOST_STEMS)
    .flatMap(({ booking }) => needsOf(booking, recipes));
  // What an order would have earned is sure: it is weighed in full.
  const { statusWeights } = snapshot.farm;
  const farm = { ...snapshot.farm, statusWeights: { ...statusWeights, confirmed: 1 } };
  return {
    deliveries,
    match: match(farm, stemsLeft(ofBookings), needs, {
      // A crop's own price says what its stem loses at a stretch; no delivery is raised above that loss.
      centsOf: (asked) => ("booking" in asked ? centsOf.get(asked.booking) : undefined) ?? buyIn.centsOf(asked),
      middleCentsOf: buyIn.middleCentsOf,
      allCrops: [],
    }),
  };
}

/** More stems than anybody takes at once. A delivery of more, by a recipe grown out of hand, gets nothing, so that whole stems still fit into 32 bits. */
const MOST_STEMS = 100_000;

/** Every delivery in some years [SO1]: by day, on one day the order written down first. */
export const deliveriesOf = (orders: readonly StandingOrder[], seasonYears: readonly number[]): Delivery[] =>
  orders
    .flatMap((order) =>
      daysOf(order)
        .filter((day) => seasonYears.includes(yearOf(toDay(day))))
        .map((day) => deliveryOn(order, day)),
    )
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.order.id - b.order.id));

function daysOf({ weekday, firstOn, lastOn }: StandingOrder): number[] {
  const first = toDayNumber(firstOn);
  const next = first + ((weekday - weekdayOfDayNumber(first) + 7) % 7);
  const weekCount = Math.max(0, Math.floor((toDayNumber(lastOn) - next) / 7) + 1);
  return Array.from({ length: weekCount }, (_, week) => next + 7 * week);
}

/** More days than the calendar here has. */
const DAYS = 200_000;

function deliveryOn(order: StandingOrder, day: number): Delivery {
  const { role, cropId, recipeId, colours, askedCount } = order;
  const eventOn = toDay(day);
  const booking: Booking = {
    id: -(order.id * DAYS + day),
    client: order.buyer,
    status: "confirmed",
    lapsesAfter: null,
    eventOn,
    palette: [...colours],
    alternativeColours: [],
    unacceptableColours: [],
    spareShare: 0,
    priceCents: null,
    unacceptableCropIds: [],
    pieces: recipeId === null ? [] : [{ recipeId, pieceCount: askedCount, colours: [] }],
    stemLines:
      role === null
        ? []
        : [{ role, cropId, cropOnly: cropId !== null, asks: [], colours: [...colours], stemCount: askedCount }],
    promises: [],
    takenOn: null,
    note: "",
  };
  return { order, eventOn, booking };
}

/** The supply of a match less the stems that it gives away, lot by lot. */
function stemsLeft({ supplies, servings }: Pick<Match, "supplies" | "servings">): VarietySupply[] {
  // By supply too: what one stand gave a booking before today is the booking's own, and the rest of it is free.
  const taken = supplies.map(() => new Map<Stand, Map<number, number>>());
  for (const { supplyIndex, stand, cutDay, stems } of servings) {
    const days = taken[supplyIndex].get(stand) ?? new Map<number, number>();
    taken[supplyIndex].set(stand, days.set(cutDay, (days.get(cutDay) ?? 0) + stems));
  }
  const leftOn = (supplyIndex: number, ofDay: readonly Lot[], day: number): Lot[] =>
    ofDay.flatMap((lot) => {
      const stems = lot.stems - (taken[supplyIndex].get(lot.stand)?.get(day) ?? 0);
      return stems > 0 ? [{ ...lot, stems }] : [];
    });
  return supplies.flatMap((supply, supplyIndex) => {
    const { days, lots } = supply;
    const left = days
      .map((day, index) => ({ day, lots: leftOn(supplyIndex, lots[index], day) }))
      .filter(({ lots }) => lots.length > 0);
    if (left.length === 0) return [];
    return [
      {
        ...supply,
        days: left.map(({ day }) => day),
        stems: left.map(({ lots }) => lots.reduce((sum, lot) => sum + lot.stems, 0)),
        lots: left.map(({ lots }) => lots),
      },
    ];
  });
}
