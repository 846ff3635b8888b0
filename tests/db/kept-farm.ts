import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { addBed } from "#db/write/beds";
import { addBooking } from "#db/write/bookings";
import { addVariety } from "#db/write/crops";
import { startFarm } from "#db/write/farm";
import { addPlanting } from "#db/write/plantings";
import type { Written } from "#db/write/write";
import type { Snapshot } from "#lib/domain/snapshot";
import { bed, booking, crop, curve, farm, focal, planting, recipe, variety } from "../small-farm";

/** Farms in real SQLite, in memory. */

/** Runs a test on a database of its own, and closes it whatever happens. */
export function withDatabase<T>(work: (database: FarmDatabase) => T): T {
  const database = openFarm(":memory:");
  try {
    return work(database);
  } finally {
    closeFarm(database);
  }
}

/** A farm with two crops (ids 1 and 2), a recipe, two varieties of crop 1, two beds, a planting in each, and two bookings. */
export function fill(database: FarmDatabase): void {
  const { id: _, ...cropCurve } = curve();
  done(
    startFarm(database, {
      farm: farm(),
      crops: [
        { ...crop({ id: 1 }), curves: [cropCurve, { ...cropCurve, treatment: "kept-in-ground" }] },
        { ...crop({ id: 2 }), curves: [] },
      ],
      recipes: [recipe({ id: 1 }), recipe({ id: 2, name: "Arch" })],
    }),
  );
  done(addVariety(database, variety({ id: 1 })));
  done(addVariety(database, variety({ id: 2, colour: "plum" })));
  done(addBed(database, bed({ id: 1, name: "D1" })));
  done(addBed(database, bed({ id: 2, name: "D2" })));
  done(addPlanting(database, planting({ id: 1 })));
  done(addPlanting(database, planting({ id: 2, bedId: 2, varietyId: 2 })));
  const asks = { pieces: [{ recipeId: 1, pieceCount: 3, colours: [] }], stemLines: focal(20, { cropId: 2 }) };
  const promises = focal(15, { cropId: 2 });
  done(addBooking(database, booking({ id: 1, ...asks, promises, unacceptableCropIds: [1, 2] })));
  done(addBooking(database, booking({ id: 2, status: "held", stemLines: focal(5) })));
}

export const withFarm = <T>(work: (database: FarmDatabase) => T): T =>
  withDatabase((database) => {
    fill(database);
    return work(database);
  });

/** The farm as it stands; throws with every problem when it cannot be read. */
export function kept(database: FarmDatabase): Snapshot {
  const read = loadSnapshot(database);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.parsed;
}

/** The outcome of a write that must not be refused. */
export function done<T>(written: Written<T>): Extract<Written<T>, { ok: true }> {
  if (!written.ok) throw new Error(JSON.stringify(written.problems));
  return written;
}

/** The number of the change that a write must have made. */
export function changeOf<T>(written: Written<T>): number {
  const { changeId } = done(written);
  if (changeId === null) throw new Error("this write changed nothing");
  return changeId;
}

/** The problems of a write that must be refused. */
export function refused<T>(written: Written<T>): string[] {
  if (written.ok) throw new Error(`not refused: ${written.title}`);
  return written.problems.map(({ place, message }) => `${place}: ${message}`);
}
