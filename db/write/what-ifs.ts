import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { planting } from "#db/schema/beds";
import { whatIf } from "#db/schema/what-ifs";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting, PlantingDraft } from "#lib/domain/records/planting";
import type { RowChanges } from "#lib/domain/row-changes";
import type { WhatIf } from "#lib/domain/what-if";
import { deleteBooking, refuseUnknownChoices } from "./bookings";
import { putFarm } from "./farm";
import { known } from "./known";
import { insertPlantings, refuseUnknownGround } from "./plantings";
import { replacePlanting } from "./put-beds";
import { insertBooking, replaceBooking } from "./put-bookings";
import { addRow, changeRow } from "./put-row";
import { Refusals, refuseOverfull, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

/** What adopting a what-if writes. `farm` is null when the settings stay as they are. */
export type AdoptedRows = {
  readonly farm: Farm | null;
  readonly plantings: RowChanges<Planting, PlantingDraft>;
  readonly bookings: RowChanges<Booking, BookingDraft>;
};

/** A what-if before it has an id. */
export type WhatIfDraft = Omit<WhatIf, "id"> & { readonly id?: number };

/** Keeps a what-if, as a new one or in place of the one with the same id, and gives its id. Refused when its season has one of that name. */
export const putWhatIf = (database: FarmDatabase, { id, ...draft }: WhatIfDraft): Written =>
  write(database, () => {
    const twice = `a what-if called ${draft.name} is there already: choose another name`;
    if (id !== undefined) known(database, "what_if", id);
    const result = refuseTwice("name", twice, () => {
      if (id === undefined) return addRow(database, whatIf, draft);
      changeRow(database, whatIf, id, draft);
      return id;
    });
    return { title: `kept the what-if ${draft.name}`, result };
  });

/** Removes a what-if; the farm itself is not touched. */
export const removeWhatIf = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "what_if", id);
    database.delete(whatIf).where(eq(whatIf.id, id)).run();
    return { title: `removed the what-if ${name}`, result: id };
  });

/**
 * Makes the farm what it would be: everything that a what-if changes, as one change that can be undone, under the title given. Gives the ids of the plantings and bookings that
 * were added. Refused, with every reason, when a row it names is no longer there or a new booking has another's client and day.
 */
export const adoptWhatIf = (
  database: FarmDatabase,
  title: string,
  { farm, plantings, bookings }: AdoptedRows,
): Written<{ readonly plantingIds: readonly number[]; readonly bookingIds: readonly number[] }> =>
  write(database, () => {
    const refusals = new Refusals();
    if (farm) putFarm(database, farm);
    for (const id of plantings.removedIds)
      refusals.gather(`plantings[${id}]`, () => {
        known(database, "planting", id);
        database.delete(planting).where(eq(planting.id, id)).run();
      });
    for (const { id, ...row } of plantings.changed)
      refusals.gather(`plantings[${id}]`, () => {
        known(database, "planting", id);
        refuseUnknownGround(database, row);
        replacePlanting(database, id, row);
      });
    for (const id of bookings.removedIds) refusals.gather(`bookings[${id}]`, () => deleteBooking(database, id));
    for (const { id, ...row } of bookings.changed)
      refusals.gather(`bookings[${id}]`, () => {
        known(database, "booking", id);
        refuseUnknownChoices(database, row);
        replaceBooking(database, id, row);
      });
    const bookingIds = refusals.each("newBookings", bookings.added, (draft) => {
      refuseUnknownChoices(database, draft);
      return insertBooking(database, draft);
    });
    refusals.end();
    refuseOverfull(database);
    return {
      title,
      result: { plantingIds: insertPlantings(database, plantings.added), bookingIds },
    };
  });
