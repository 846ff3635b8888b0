import { toDayNumber } from "#lib/domain/day";
import type { CoolerMove } from "#lib/domain/records/cooler-move";
import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { movesInOrder, type StoredStems, takeFromLot } from "./cooler-moves";
import { type CutLot, cutLots } from "./cut-lots";
import type { PlantingForecast } from "./forecast";
import { isCutFor } from "./lapsed";
import { type Match, match } from "./match";
import type { Need } from "./needs";
import { deliveriesOf, isDelivery, ordersPlan } from "./orders";
import { Shelf } from "./shelf";
import { StandingStems } from "./standing-stems";
import { coolerLots, type Stand, supplyOf, type VarietySupply } from "./supply";

/** What a supply is worked out from: `plantings` are those of `seasons`, and so are the needs, in the order of the match. `today` is a day number; null where no day has passed. */
export type ToDate = {
  readonly snapshot: Snapshot;
  readonly plantings: readonly PlantingForecast[];
  readonly seasons: readonly number[];
  readonly needs: readonly Need[];
  readonly today: number | null;
};

/**
 * What the match may give away on a day. Behind it stands what was recorded, and of what nobody recorded as much as was planned for bookings,
 * each with the booking that it was cut for; from the day on, what is forecast [T1], as the season has shown it [O5]. The past is lived through once: the match is made anew
 * on every day with a record or with a booking that is taken [T7], and days pass with what the last match gave. So it does not matter in which order,
 * how late and how often cuts were recorded [T5].
 */
export function supplyToDate(of: ToDate): VarietySupply[] {
  const { snapshot, plantings, seasons, today } = of;
  if (today === null) return supplyOf(snapshot, plantings, ...seasons);
  const stems = new StemsToDate(of);
  const passed = plantings.map((one) => one.asPassed ?? one);
  const lots = byDay(cutLots(snapshot, passed, seasons), ({ day }) => day);
  const moves = byDay(movesInOrder(snapshot.coolerMoves), ({ movedOn }) => toDayNumber(movedOn));
  const taken = of.needs.flatMap(({ booking: { takenOn } }) => (takenOn === null ? [] : toDayNumber(takenOn)));
  const ahead = new StandingStems(plantings, today);
  for (const day of [...new Set([...lots.keys(), ...moves.keys(), ...taken])].sort((a, b) => a - b)) {
    if (day > today) break;
    stems.pass(day);
    stems.record(lots.get(day) ?? []);
    ahead.take(lots.get(day) ?? []);
    for (const move of moves.get(day) ?? []) stems.move(move);
  }
  stems.pass(today);
  ahead.dropBefore(today);
  return stems.supplies(ahead);
}

function byDay<Row>(rows: readonly Row[], dayOf: (row: Row) => number): Map<number, Row[]> {
  const days = new Map<number, Row[]>();
  for (const row of rows) {
    const known = days.get(dayOf(row));
    if (known) known.push(row);
    else days.set(dayOf(row), [row]);
  }
  return days;
}

/** Stems that were cut. `bookingId` null: for nobody yet. */
type CutStems = StoredStems & { readonly stand: Stand };

class StemsToDate {
  readonly #of: ToDate;
  /** The day of the event of each booking that asks for anything, and of each delivery. Day numbers. */
  readonly #eventDays: ReadonlyMap<number, number>;
  readonly #buyIn: ReturnType<typeof buyInFinder>;
  readonly #standing: StandingStems;
  /** In the cooler for anybody. */
  readonly #free: CutStems[];
  readonly #own: (CutStems & { readonly bookingId: number })[] = [];
  /** The first day that has not passed. */
  #day = Number.NEGATIVE_INFINITY;

  constructor(of: ToDate) {
    this.#of = of;
    const deliveries = of.snapshot.coolerMoves.length > 0 ? deliveriesOf(of.snapshot.standingOrders, of.seasons) : [];
    this.#eventDays = new Map([
      ...of.needs.map(({ booking, eventDay }) => [booking.id, eventDay] as const),
      ...deliveries.map(({ booking, eventOn }) => [booking.id, toDayNumber(eventOn)] as const),
    ]);
    this.#buyIn = buyInFinder(of.snapshot);
    this.#standing = new StandingStems(of.plantings, Number.POSITIVE_INFINITY);
    this.#free = coolerLots(of.snapshot, of.seasons).map((lot) => ({ ...lot, bookingId: null }));
  }

  /** Lets the days before this one pass: each booking, and each delivery of a standing order, has what the match gave it, and what was given to nobody was not cut. */
  pass(day: number): void {
    const needs = this.#openNeeds(day);
    if (this.#standing.hasBefore(day) || needs.some(({ eventDay }) => eventDay < day)) this.#settle(day, needs);
    this.#standing.dropBefore(day);
    this.#day = day;
  }

  /** Takes the cuts of the day that is at hand in place of what was forecast for it. */
  record(lots: readonly CutLot[]): void {
    for (const { cut, day, stand, goodStems } of lots) {
      if (goodStems === 0) continue;
      const stems = { varietyId: cut.varietyId, day, stand, stems: goodStems };
      // A booking that asks for nothing any more, as a cancelled one, has no stems of its own.
      if (cut.bookingId !== null && this.#eventDays.has(cut.bookingId))
        this.#own.push({ ...stems, bookingId: cut.bookingId });
      else this.#free.push({ ...stems, bookingId: null });
    }
    this.#standing.take(lots);
  }

  /** Takes what left the cooler on the day that is at hand from its lot [ST1]: gone, or out for a booking. */
  move(move: CoolerMove): void {
    const { bookingId } = move;
    const taken = takeFromLot([...this.#free, ...this.#own], move, (id) => this.#eventDays.get(id) ?? null, this.#day);
    if (move.kind === "thrown away" || bookingId === null || !this.#eventDays.has(bookingId)) return;
    for (const { from, stems } of taken) this.#own.push({ ...from, bookingId, stems, isOut: true });
  }

  /** What was cut, and what stands. */
  supplies = (standing: StandingStems): VarietySupply[] => this.#suppliesFor(() => true, standing);

  /** Needs that are cut for, of events that have not passed and of bookings taken before the day: nothing else can be given anything of the days before it. */
  #openNeeds = (day: number): Need[] =>
    this.#of.needs.filter(
      ({ eventDay, booking }) =>
        isCutFor(booking) && eventDay >= this.#day && (booking.takenOn === null || toDayNumber(booking.takenOn) < day),
    );

  #suppliesFor(isAsked: (bookingId: number) => boolean, standing = this.#standing): VarietySupply[] {
    const shelf = new Shelf();
    for (const { varietyId, day, stand, stems } of this.#free) shelf.put(varietyId, null, day, { stand, stems });
    for (const { varietyId, bookingId, day, stand, stems } of this.#own)
      if (isAsked(bookingId)) shelf.put(varietyId, bookingId, day, { stand, stems });
    for (const { planting, day, stand, stems } of standing.lots())
      shelf.put(planting.variety.id, null, day, { stand, stems });
    return shelf.supplies(this.#of.snapshot);
  }

  #settle(day: number, needs: readonly Need[]): void {
    const { snapshot, seasons } = this.#of;
    const open = new Set(needs.map(({ booking }) => booking.id));
    const supplies = this.#suppliesFor((id) => isDelivery({ id }) || open.has(id));
    const ofBookings = match(snapshot.farm, supplies, needs, this.#buyIn);
    this.#keep(day, ofBookings);
    const ofOrders = ordersPlan(snapshot, seasons, ofBookings, this.#buyIn);
    if (ofOrders) this.#keep(day, ofOrders.match);
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
      this.#own.push({ varietyId: variety.id, bookingId: booking.id, day: cutDay, stand, stems });
      if (free) free.stems -= stems;
    }
  }
}
