import { toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { CoolerMove } from "#lib/domain/records/cooler-move";
import { askedThen } from "./asked-then";
import { buyInFinder } from "./buy-in";
import { takeFromLot } from "./cooler-moves";
import type { CutLot } from "./cut-lots";
import type { PlantingForecast } from "./forecast";
import { isCutFor } from "./lapsed";
import {
  type CutStems,
  copied,
  DAYS_KEPT,
  type DayBegun,
  daysToLive,
  type LivedDays,
  type OwnStems,
  resumable,
  type ToDate,
} from "./lived-days";
import { type Match, match } from "./match";
import type { Need } from "./needs";
import { deliveriesOf, deliveryDays, isDelivery, ordersFinder } from "./orders";
import { lastOpenDay, purchasedStems } from "./purchases";
import { Shelf } from "./shelf";
import { rememberedCents, type WorstCents } from "./short-cents";
import { StandingStems } from "./standing-stems";
import { coolerLots, supplyOf, type VarietySupply } from "./supply";

/** What a plan may give away, and how the days that have passed were lived through. */
type SupplyToDate = { readonly supplies: VarietySupply[]; readonly lived: LivedDays | null };

/**
 * What the match may give away on a day. Behind it stands what was recorded, and of what nobody recorded as much as was planned for bookings,
 * each with the booking that it was cut for; from the day on, what is forecast [T1], as the season has shown it [O5]. The past is lived through once: the match is made anew
 * on every day with a record or with a booking that is taken [T7], and days pass with what the last match gave. So it does not matter in which order,
 * how late and how often cuts were recorded [T5].
 * @param before  days that were lived through for a plan before: the past is gone over from the first day of which something changed, as it would be afresh [L3]
 */
export function supplyToDate(of: ToDate, before: LivedDays | null = null): SupplyToDate {
  const { snapshot, plantings, seasons, today } = of;
  if (today === null) return { supplies: supplyOf(snapshot, plantings, ...seasons), lived: null };
  const passed = plantings.map((one) => one.asPassed ?? one);
  const days = daysToLive({ ...of, today }, passed);
  const known = before && resumable(before, of, passed, days);
  const stems = new StemsToDate(of, passed);
  const ahead = new StandingStems(snapshot.farm, plantings, today);
  const marks = new Map<number, DayBegun>();
  days.forEach(({ day, turns, lots, moves }, place) => {
    const mark = before?.marks.get(place);
    if (known !== null && place < known) stems.skip(day, turns, lots);
    else if (place === known && mark) stems.resume(day, mark);
    else stems.pass(day);
    if (known !== null && place < known && mark) marks.set(place, mark);
    else if (place >= (known ?? 0) && place >= days.length - DAYS_KEPT) marks.set(place, stems.begun());
    ahead.take(lots);
    if (known !== null && place < known) return;
    stems.turn(day, turns);
    stems.record(lots);
    for (const move of moves) stems.move(move);
  });
  ahead.dropBefore(today);
  return { supplies: stems.supplies(ahead), lived: { of, passed, days, marks } };
}

class StemsToDate {
  readonly #of: ToDate;
  /** The day of the event of each booking that asks for anything, and of each delivery. Day numbers. */
  readonly #eventDays: ReadonlyMap<number, number>;
  readonly #deliveryDays: readonly number[];
  readonly #buyIn: ReturnType<typeof buyInFinder>;
  readonly #worst: WorstCents;
  readonly #ordersBeside: ReturnType<typeof ordersFinder>;
  readonly #standing: StandingStems;
  /** In the cooler for anybody. */
  #free: CutStems[];
  /** Each booking's own, in the order in which they came. */
  readonly #own = new Map<number, OwnStems[]>();
  /** The first day that has not passed. */
  #day = Number.NEGATIVE_INFINITY;

  constructor(of: ToDate, passed: readonly PlantingForecast[]) {
    this.#of = of;
    const deliveries = of.snapshot.coolerMoves.length > 0 ? deliveriesOf(of.snapshot.standingOrders, of.seasons) : [];
    this.#eventDays = new Map([
      ...of.needs.map(({ booking, eventDay }) => [booking.id, eventDay] as const),
      ...deliveries.map(({ booking, eventOn }) => [booking.id, toDayNumber(eventOn)] as const),
    ]);
    this.#deliveryDays = [...deliveryDays(of.snapshot.standingOrders, of.seasons)];
    this.#buyIn = buyInFinder(of.snapshot);
    this.#worst = rememberedCents(of.snapshot.farm, this.#buyIn);
    this.#ordersBeside = ordersFinder(of.snapshot, of.seasons, this.#buyIn);
    this.#standing = new StandingStems(of.snapshot.farm, passed, Number.POSITIVE_INFINITY);
    this.#free = coolerLots(of.snapshot, of.seasons).map((lot) => ({ ...lot, bookingId: null }));
    const bookingOf = new Map<number | null, Booking>(of.needs.map(({ booking }) => [booking.id, booking]));
    for (const { purchase, varietyId, day, stand, ownStems, freeStems } of purchasedStems(of.snapshot, of.seasons)) {
      const { bookingId } = purchase;
      const booking = bookingOf.get(bookingId);
      // What opens after the event is made up is no use to it, and anybody's.
      const isOwn = booking !== undefined && day <= lastOpenDay(of.snapshot.farm, booking);
      const [own, free] = isOwn ? [ownStems, freeStems] : [0, ownStems + freeStems];
      if (own > 0 && bookingId !== null) this.#give({ varietyId, day, stand, bookingId, stems: own });
      if (free > 0) this.#free.push({ varietyId, day, stand, bookingId: null, stems: free });
    }
  }

  /** Lets the days before this one pass: each booking, and each delivery of a standing order, has what the match gave it, and what was given to nobody was not cut. */
  pass(day: number): void {
    const needs = this.#openNeeds(day);
    const isOver = (on: number) => on >= this.#day && on < day;
    const eventDays = needs.map(({ eventDay }) => eventDay);
    if (this.#standing.hasBefore(day) || [...eventDays, ...this.#deliveryDays].some(isOver)) this.#settle(day, needs);
    this.#standing.dropBefore(day);
    this.#day = day;
  }

  /** The stems as they are before anything of the day at hand is recorded. */
  begun = (): DayBegun => ({ free: this.#free.map(copied), own: [...this.#own.values()].flat().map(copied) });

  /** Goes over a day that was lived through before: what it recorded stands no more. */
  skip(day: number, turns: readonly PlantingForecast[], lots: readonly CutLot[]): void {
    this.turn(day, turns);
    this.#standing.take(lots);
  }

  /** From the day that is at hand on these plantings give otherwise: more was seen of their plants [PL1]. */
  turn = (day: number, turns: readonly PlantingForecast[]): void => this.#standing.turn(day, turns);

  /** Goes on from a day as it began. */
  resume(day: number, { free, own }: DayBegun): void {
    this.#free = free.map(copied);
    this.#own.clear();
    for (const stems of own) this.#give(copied(stems));
    this.#standing.dropBefore(day);
    this.#day = day;
  }

  #give(stems: OwnStems): void {
    const own = this.#own.get(stems.bookingId);
    if (own) own.push(stems);
    else this.#own.set(stems.bookingId, [stems]);
  }

  /** Takes the cuts of the day that is at hand in place of what was forecast for it. */
  record(lots: readonly CutLot[]): void {
    for (const { cut, day, stand, goodStems } of lots) {
      if (goodStems === 0) continue;
      const stems = { varietyId: cut.varietyId, day, stand, stems: goodStems };
      // A booking that asks for nothing any more, as a cancelled one, has no stems of its own.
      if (cut.bookingId !== null && this.#eventDays.has(cut.bookingId))
        this.#give({ ...stems, bookingId: cut.bookingId });
      else this.#free.push({ ...stems, bookingId: null });
    }
    this.#standing.take(lots);
  }

  /** Takes what left the cooler on the day that is at hand from its lot [ST1]: gone, or out for a booking. */
  move(move: CoolerMove): void {
    const { bookingId } = move;
    const taken = takeFromLot(
      [...this.#free, ...[...this.#own.values()].flat()],
      move,
      (id) => this.#eventDays.get(id) ?? null,
      this.#day,
    );
    if (move.kind === "thrown away" || bookingId === null || !this.#eventDays.has(bookingId)) return;
    for (const { from, stems } of taken) this.#give({ ...from, bookingId, stems, isOut: true });
  }

  /** What was cut, and what stands. */
  supplies = (standing: StandingStems): VarietySupply[] => this.#suppliesFor(() => true, standing);

  /** Needs that are cut for, of events that have not passed and of bookings taken before the day, as these asked then: nothing else can be given anything of the days before it. */
  #openNeeds(day: number): readonly Need[] {
    const open = this.#of.needs.filter(
      ({ eventDay, booking }) =>
        isCutFor(booking) && eventDay >= this.#day && (booking.takenOn === null || toDayNumber(booking.takenOn) < day),
    );
    return askedThen(open, day);
  }

  #suppliesFor(isAsked: (bookingId: number) => boolean, standing = this.#standing): VarietySupply[] {
    const shelf = new Shelf(this.#day);
    for (const { varietyId, day, stand, stems } of this.#free) shelf.put(varietyId, null, day, { stand, stems });
    for (const [bookingId, own] of this.#own)
      if (isAsked(bookingId))
        for (const { varietyId, day, stand, stems } of own) shelf.put(varietyId, bookingId, day, { stand, stems });
    for (const { planting, day, stand, stems } of standing.lots())
      shelf.put(planting.variety.id, null, day, { stand, stems });
    return shelf.supplies(this.#of.snapshot);
  }

  #settle(day: number, needs: readonly Need[]): void {
    const open = new Set(needs.map(({ booking }) => booking.id));
    const supplies = this.#suppliesFor((id) => isDelivery({ id }) || open.has(id));
    const ofBookings = match(this.#of.snapshot.farm, supplies, needs, this.#buyIn, this.#worst);
    this.#keep(day, ofBookings);
    const orders = this.#ordersBeside(ofBookings);
    if (orders) this.#keep(day, orders.match);
  }

  /** Makes what a match gave before a day each booking's own, or each delivery's. */
  #keep(day: number, { needs, supplies, servings }: Match): void {
    const freeOf = new Map(this.#free.map((lot) => [lot.stand, lot]));
    for (const { needIndex, supplyIndex, stand, cutDay, stems } of servings) {
      const { variety, bookingId } = supplies[supplyIndex];
      if (bookingId !== undefined) continue;
      const { booking, eventDay } = needs[needIndex];
      const free = freeOf.get(stand);
      // What stands in the cooler may go to another booking until the event; what is cut on a day is cut for the one it was planned for.
      if (free ? eventDay >= day : cutDay >= day) continue;
      this.#give({ varietyId: variety.id, bookingId: booking.id, day: cutDay, stand, stems });
      if (free) free.stems -= stems;
    }
  }
}
