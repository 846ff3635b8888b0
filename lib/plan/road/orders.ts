import { stemsAskedFor } from "#lib/domain/booking-stems";
import { type Day, toDay, toDayNumber, weekdayOfDayNumber, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { NEVER_LARGER } from "#lib/domain/records/earlier-ask";
import type { Farm } from "#lib/domain/records/farm-settings";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { BuyInPrices } from "./buy-in";
import { type Match, match } from "./match";
import { type Need, needsOf } from "./needs";
import { rememberedCents, type ShortPrices, type WorstCents } from "./short-cents";
import type { Lot, Stand, VarietySupply } from "./supply";
import { whenAsked } from "./when-asked";

/** A standing order going out on a day. `booking` stands for it in needs, pick list and labels; its id is below 0, and no booking has it. */
export type Delivery = { readonly order: StandingOrder; readonly eventOn: Day; readonly booking: Booking };

/** The standing orders of the plan's seasons: every delivery, and what each gets of the stems that bookings leave. */
export type OrdersPlan = { readonly deliveries: readonly Delivery[]; readonly match: Match };

/** What the standing orders of some seasons ask for, and by what they are weighed: the same whatever bookings leave. */
type OrdersAsked = {
  readonly deliveries: readonly Delivery[];
  readonly needs: readonly Need[];
  readonly farm: Farm;
  readonly prices: ShortPrices;
  readonly worst: WorstCents;
};

/** Whether a booking of a pick list stands for a standing order's delivery. */
export const isDelivery = ({ id }: Pick<Booking, "id">): boolean => id < 0;

/**
 * Matches standing orders with what bookings leave, so that nothing of a booking's changes by them [SO2]. A stem short costs what it would have earned;
 * this match is proved like the other. What they ask for hangs on no booking and is worked out once, when it is first asked for.
 * @returns what they get beside a match of these seasons' bookings; null where no order goes out in these seasons
 */
export function ordersFinder(
  snapshot: Snapshot,
  seasonYears: readonly number[],
  buyIn: BuyInPrices,
): (ofBookings: Match) => OrdersPlan | null {
  const asked = whenAsked(() => ordersAsked(snapshot, seasonYears, buyIn));
  return (ofBookings) => {
    const orders = asked();
    if (!orders) return null;
    const { deliveries, needs, farm, prices, worst } = orders;
    return { deliveries, match: match(farm, stemsLeft(ofBookings), needs, prices, worst) };
  };
}

function ordersAsked(snapshot: Snapshot, seasonYears: readonly number[], buyIn: BuyInPrices): OrdersAsked | null {
  const deliveries = deliveriesOf(snapshot.standingOrders, seasonYears);
  if (deliveries.length === 0) return null;
  const recipes = new ById("recipe", snapshot.recipes);
  const centsOf = new Map<unknown, number>(deliveries.map(({ booking, order }) => [booking, order.stemCents]));
  const needs = deliveries
    .filter(({ booking }) => stemsAskedFor(booking, (id) => recipes.get(id).lines) <= MOST_STEMS)
    .flatMap(({ booking }) => needsOf(booking, recipes, snapshot.farm));
  // What an order would have earned is sure: it is weighed in full.
  const { statusWeights } = snapshot.farm;
  const farm = { ...snapshot.farm, statusWeights: { ...statusWeights, confirmed: 1 } };
  const prices: ShortPrices = {
    // A crop's own price says what its stem loses at a stretch; no delivery is raised above that loss.
    centsOf: (asked) => ("booking" in asked ? centsOf.get(asked.booking) : undefined) ?? buyIn.centsOf(asked),
    middleCentsOf: buyIn.middleCentsOf,
    allCrops: [],
  };
  return { deliveries, needs, farm, prices, worst: rememberedCents(farm, prices) };
}

/** More stems than anybody takes at once. A delivery of more, by a recipe grown out of hand, gets nothing, so that whole stems still fit into 32 bits. */
const MOST_STEMS = 100_000;

/** Every delivery in some years [SO1]: by day, on one day the order written down first. */
export const deliveriesOf = (orders: readonly StandingOrder[], seasonYears: readonly number[]): Delivery[] =>
  orders
    .flatMap((order) => daysIn(order, seasonYears).map((day) => deliveryOn(order, day)))
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.order.id - b.order.id));

/** The days on which something goes out, as day numbers. */
export const deliveryDays = (orders: readonly StandingOrder[], seasonYears: readonly number[]): Set<number> =>
  new Set(orders.flatMap((order) => daysIn(order, seasonYears)));

const daysIn = (order: StandingOrder, seasonYears: readonly number[]): number[] =>
  daysOf(order).filter((day) => seasonYears.includes(yearOf(toDay(day))));

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
    finalDueOn: null,
    ...NO_FINAL_COUNT,
    ...NEVER_LARGER,
    unacceptableCropIds: [],
    pieces: recipeId === null ? [] : [{ recipeId, pieceCount: askedCount, colours: [] }],
    stemLines:
      role === null
        ? []
        : [{ role, cropId, cropOnly: cropId !== null, asks: [], colours: [...colours], stemCount: askedCount }],
    promises: [],
    // It goes out on its weekday, whenever the farm delivers events.
    ...{ leadDays: null, designDays: null, deliverDays: 0 },
    takenOn: null,
    note: "",
  };
  return { order, eventOn, booking };
}

/** The supply of a match less the stems that it gives away, lot by lot. */
function stemsLeft({ supplies, servings }: Pick<Match, "supplies" | "servings">): VarietySupply[] {
  // By supply too: what one stand gave a booking before today is the booking's own, and the rest of it is free.
  const taken = supplies.map((): Taken => new Map());
  for (const { supplyIndex, stand, cutDay, stems } of servings) {
    const ofDay = taken[supplyIndex].get(cutDay) ?? new Map<Stand, number>();
    taken[supplyIndex].set(cutDay, ofDay.set(stand, (ofDay.get(stand) ?? 0) + stems));
  }
  return supplies.flatMap((supply, index) => supplyLeft(supply, taken[index]) ?? []);
}

/** Stems taken of a supply, by the day they are cut and by stand. */
type Taken = Map<number, Map<Stand, number>>;

/** What is left of a supply; null where nothing is. Days of which nothing is taken stay as they are: they are most, and this is walked day after day. */
function supplyLeft(supply: VarietySupply, taken: Taken): VarietySupply | null {
  const days: number[] = [];
  const stems: number[] = [];
  const lots: (readonly Lot[])[] = [];
  supply.days.forEach((day, index) => {
    const left = lotsLeft(supply.lots[index], taken.get(day));
    if (left.length === 0) return;
    days.push(day);
    stems.push(left === supply.lots[index] ? supply.stems[index] : left.reduce((sum, lot) => sum + lot.stems, 0));
    lots.push(left);
  });
  if (days.length === 0) return null;
  const { variety, crop, hold, bookingId, fromDay } = supply;
  return bookingId === undefined
    ? { variety, crop, hold, days, stems, lots, fromDay }
    : { variety, crop, hold, days, stems, lots, bookingId };
}

function lotsLeft(ofDay: readonly Lot[], taken: ReadonlyMap<Stand, number> | undefined): readonly Lot[] {
  if (!taken) return ofDay.every(({ stems }) => stems > 0) ? ofDay : ofDay.filter(({ stems }) => stems > 0);
  return ofDay.flatMap((lot) => {
    const stems = lot.stems - (taken.get(lot.stand) ?? 0);
    return stems > 0 ? [{ stand: lot.stand, stems }] : [];
  });
}
