import type { Day } from "#lib/domain/day";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting, PlantingDraft } from "#lib/domain/records/planting";
import type { RowChanges } from "#lib/domain/row-changes";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { promisesMade } from "#lib/plan/road/promises-made";
import { KEPT } from "#lib/plan/winter/beds";
import { applyChanges, type ChangeMisfit } from "./what-if";

/** What adopting a list of changes writes to the farm's records; a change never touches a curve. `farm` is null when its settings stay as they are. */
export type Adoption = {
  readonly farm: Farm | null;
  readonly plantings: RowChanges<Planting, PlantingDraft>;
  readonly bookings: RowChanges<Booking, BookingDraft>;
  readonly misfits: readonly ChangeMisfit[];
};

/**
 * What to write so that the farm becomes what it would be [W7]: the difference between the two, row by row, so that changes which undo
 * each other write nothing.
 * @param signedOn  the day on which it is adopted: bookings that it confirms or moves are then promised what the plan covers [M9]; left out, nothing is promised
 */
export function adoption(
  snapshot: Snapshot,
  seasonYear: number,
  changes: readonly Change[],
  signedOn: Day | null = null,
): Adoption {
  const { snapshot: changed, misfits } = applyChanges(snapshot, seasonYear, changes);
  const wouldBe = signedOn === null ? changed : signed(snapshot, changed, signedOn);
  const plantings = difference(snapshot.plantings, wouldBe.plantings);
  const bookings = difference(snapshot.bookings, wouldBe.bookings);
  return {
    farm: isSame(snapshot.farm, wouldBe.farm) ? null : wouldBe.farm,
    plantings: { ...plantings, added: plantings.added.map(({ id: _, ...draft }) => draft) },
    bookings: { ...bookings, added: bookings.added.map(({ id: _, ...draft }) => draft) },
    misfits,
  };
}

/** Whether what is written keeps a planting in the ground over winter that was to be dug, or digs one that was kept: a choice of the winter [K11]. */
export function choosesBeds({ plantings }: Adoption, now: Snapshot): boolean {
  const kept = new Set(now.plantings.filter(({ treatment }) => treatment === KEPT).map(({ id }) => id));
  return plantings.changed.some(({ id, treatment }) => kept.has(id) !== (treatment === KEPT));
}

/** The changed farm with the promises that are made as it is adopted. */
function signed(before: Snapshot, after: Snapshot, today: Day): Snapshot {
  const made = new Map(promisesMade(before, after, today).map(({ bookingId, promises }) => [bookingId, promises]));
  const bookings = after.bookings.map((row) => {
    const promises = made.get(row.id);
    return promises ? { ...row, promises: [...promises] } : row;
  });
  return { ...after, bookings };
}

function difference<Row extends { readonly id: number }>(before: readonly Row[], after: readonly Row[]) {
  const old = new Map(before.map((row) => [row.id, row]));
  const kept = new Set(after.map(({ id }) => id));
  return {
    changed: after.filter((row) => {
      const was = old.get(row.id);
      return was !== undefined && !isSame(was, row);
    }),
    removedIds: before.filter(({ id }) => !kept.has(id)).map(({ id }) => id),
    added: after.filter(({ id }) => !old.has(id)),
  };
}

/** Rows are plain data, and a changed row is a copy with its fields in the same order. */
const isSame = (a: object, b: object): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
