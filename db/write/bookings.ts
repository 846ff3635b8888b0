import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { booking } from "#db/schema/bookings";
import { type Day, inFull } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { PromisedStems } from "#lib/domain/records/promised-stems";
import type { Status } from "#lib/domain/words";
import { called, type KnownTable, known, notOnFarm, refuseWhileNamed } from "./known";
import { insertBooking, replaceBooking, replacePromises } from "./put-bookings";
import { Refusal, refuseOverfull } from "./refusal";
import { type Written, write } from "./write";

/** Adds a booking and gives its id. Refused: a second one of the same client and day, a recipe or crop that is not on the farm, or more stems than a plan can reckon with. */
export const addBooking = (database: FarmDatabase, draft: BookingDraft): Written =>
  write(database, () => {
    refuseUnknownChoices(database, draft);
    const result = insertBooking(database, draft);
    refuseOverfull(database);
    return { title: `added the booking of ${draft.client}, ${inFull(draft.eventOn)}`, result };
  });

/** Makes a booking what `draft` says, lines and all. Refused as an added one is, and when the booking is not there. */
export const updateBooking = (database: FarmDatabase, id: number, draft: BookingDraft): Written =>
  write(database, () => {
    known(database, "booking", id);
    refuseUnknownChoices(database, draft);
    replaceBooking(database, id, draft);
    refuseOverfull(database);
    return { title: `changed the booking of ${draft.client}, ${inFull(draft.eventOn)}`, result: id };
  });

/** Sets where a booking stands; what it was promised is over. The day it was taken, and the one after which it lapses, stay, unless others are given. */
export const setBookingStatus = (
  database: FarmDatabase,
  id: number,
  status: Status,
  dates: { readonly takenOn?: Day; readonly lapsesAfter?: Day | null } = {},
): Written =>
  write(database, () => {
    const client = known(database, "booking", id);
    database
      .update(booking)
      .set({ status, ...dates })
      .where(eq(booking.id, id))
      .run();
    replacePromises(database, id, []);
    return { title: `set the booking of ${client} to ${status}`, result: id };
  });

/** What each of some bookings is promised. */
export type PromisesMade = readonly { readonly bookingId: number; readonly promises: readonly PromisedStems[] }[];

/** Writes down what bookings are promised, in place of what they were, under the title given; gives how many they are. */
export const putPromises = (database: FarmDatabase, title: string, made: PromisesMade): Written =>
  write(database, () => {
    for (const { bookingId, promises } of made) {
      known(database, "booking", bookingId);
      replacePromises(database, bookingId, promises);
    }
    return { title, result: made.length };
  });

/** Writes down the final count of a booking [T13], or that it has none, under the title given. */
export const setFinalCount = (
  database: FarmDatabase,
  id: number,
  count: Pick<BookingDraft, "finalOn" | "finalPieces" | "finalStems">,
  title: string,
): Written =>
  write(database, () => {
    known(database, "booking", id);
    database.update(booking).set(count).where(eq(booking.id, id)).run();
    return { title, result: id };
  });

/** After which day some bookings lapse (null never), and the day on which one is taken anew. */
export type LapsesSet = readonly {
  readonly bookingId: number;
  readonly lapsesAfter: Day | null;
  readonly takenOn?: Day;
}[];

/** Sets after which day bookings lapse, under the title given; gives how many they are. */
export const setLapses = (database: FarmDatabase, title: string, set: LapsesSet): Written =>
  write(database, () => {
    for (const { bookingId, ...dates } of set) {
      known(database, "booking", bookingId);
      database.update(booking).set(dates).where(eq(booking.id, bookingId)).run();
    }
    return { title, result: set.length };
  });

/** Takes a booking out of the records, with all it asks for. Refused while cuts were recorded for it. */
export const removeBooking = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const client = known(database, "booking", id);
    deleteBooking(database, id);
    return { title: `removed the booking of ${client}`, result: id };
  });

/** The same inside a change that is open. */
export function deleteBooking(database: FarmDatabase, id: number): void {
  const client = known(database, "booking", id);
  refuseWhileNamed(database, `the booking of ${client}`, id, [
    { table: "cut", column: "booking_id", one: "recorded cut", many: "recorded cuts" },
    { table: "cooler_move", column: "booking_id", one: "move out of the cooler", many: "moves out of the cooler" },
    { table: "purchase", column: "booking_id", one: "purchase", many: "purchases" },
  ]);
  database.delete(booking).where(eq(booking.id, id)).run();
}

/** Refuses a booking that names recipes or crops which are not on the farm, each at its own place. */
export function refuseUnknownChoices(database: FarmDatabase, draft: BookingDraft): void {
  const choice = (table: KnownTable, id: number | null, place: string): Problem[] =>
    id === null || called(database, table, id) !== undefined ? [] : [{ place, message: notOnFarm(table) }];
  const problems = [
    ...draft.pieces.flatMap(({ recipeId }, index) => choice("recipe", recipeId, `pieces[${index}].recipeId`)),
    ...draft.stemLines.flatMap(({ cropId }, index) => choice("crop", cropId, `stemLines[${index}].cropId`)),
    ...draft.promises.flatMap(({ cropId }, index) => choice("crop", cropId, `promises[${index}].cropId`)),
    ...draft.unacceptableCropIds.flatMap((cropId, index) => choice("crop", cropId, `unacceptableCropIds[${index}]`)),
  ];
  if (problems.length) throw new Refusal(problems);
}
