import type { Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change, Resource } from "#lib/domain/what-if";
import type { Status } from "#lib/domain/words";
import { frostDayOf } from "#lib/plan/road/forecast";
import type { Applied, Misfit } from "./applied";
import { dugBed, keptBed } from "./beds";
import { addedBooking, droppedBooking, withBooking } from "./bookings";
import { addedPlanting, movedPlanting, removedPlanting } from "./plantings";
import { movedFrost, scaledYield, shiftedSeason } from "./season";

/** A farm as it would be. `frostDay` is the first frost to plan with, a day number; `misfits` say which changes did not fit, counted from 0, and why. */
export type WouldBe = {
  readonly snapshot: Snapshot;
  readonly frostDay: number;
  readonly misfits: readonly ChangeMisfit[];
};

export type ChangeMisfit = { readonly changeIndex: number; readonly misfit: Misfit };

/**
 * The farm as it would be after the changes, one after the other, those of the season last. The snapshot given is never touched [W1]; no change gives the
 * same farm [W2]; a change that no longer fits the farm is left out and told as a misfit [W3]. Rows added have ids above all
 * of the farm's.
 */
export function applyChanges(snapshot: Snapshot, seasonYear: number, changes: readonly Change[]): WouldBe {
  const misfits: ChangeMisfit[] = [];
  let now = snapshot;
  for (const changeIndex of inTheirTurn(changes)) {
    const { snapshot: next, misfit } = applied(now, snapshot, seasonYear, changes[changeIndex]);
    if (misfit) misfits.push({ changeIndex, misfit });
    now = next;
  }
  misfits.sort((a, b) => a.changeIndex - b.changeIndex);
  return { snapshot: now, frostDay: frostDayOf(now.farm, seasonYear), misfits };
}

/** Places of changes in the order in which they are applied: what is supposed of the season comes last, so that it holds for plantings that are added too. */
function inTheirTurn(changes: readonly Change[]): number[] {
  const isOfSeason = ({ kind }: Change) => kind === "season-shifted" || kind === "yield-scaled";
  const places = changes.map((_, index) => index);
  return [...places.filter((at) => !isOfSeason(changes[at])), ...places.filter((at) => isOfSeason(changes[at]))];
}

function applied(now: Snapshot, before: Snapshot, seasonYear: number, change: Change): Applied {
  switch (change.kind) {
    case "bed-kept":
      return keptBed(now, seasonYear, change.bedId);
    case "bed-dug":
      return dugBed(now, seasonYear, change.bedId);
    case "frost-moved":
      return movedFrost(now, change.firstFrost);
    case "season-shifted":
      return shiftedSeason(now, seasonYear, change, before);
    case "yield-scaled":
      return scaledYield(now, seasonYear, change, before);
    case "booking-added":
      return addedBooking(now, before, change.booking);
    case "booking-moved":
      return withBooking(now, change.bookingId, (booking) => moved(booking, change.eventOn));
    case "booking-dropped":
      return droppedBooking(now, change.bookingId);
    case "status-set":
      return withBooking(now, change.bookingId, (booking) => counted(booking, change.status));
    case "planting-added":
      return addedPlanting(now, before, change.planting);
    case "planting-moved":
      return movedPlanting(now, change);
    case "planting-removed":
      return removedPlanting(now, change.plantingId);
    case "at-hand-set":
      return { snapshot: withAtHand(now, change.resource, change.atHand) };
  }
}

/** A promise is of a day: a booking on another has none. */
const moved = (booking: Booking, eventOn: Day): Booking =>
  booking.eventOn === eventOn ? booking : { ...booking, eventOn, promises: [] };

/** A booking that is counted otherwise than it stands asks for its stems, even if it had lapsed, and has no promise. */
const counted = (booking: Booking, status: Status): Booking =>
  booking.status === status ? booking : { ...booking, status, lapsesAfter: null, promises: [] };

const AT_HAND = {
  leaves: "leafCubicMetresAtHand",
  tarp: "tarpSquareMetresAtHand",
  hours: "hoursAtHand",
} as const satisfies Record<Resource, keyof Snapshot["farm"]["winter"]>;

function withAtHand(snapshot: Snapshot, resource: Resource, atHand: number | null): Snapshot {
  const { farm } = snapshot;
  return { ...snapshot, farm: { ...farm, winter: { ...farm.winter, [AT_HAND[resource]]: atHand } } };
}
