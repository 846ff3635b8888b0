import { expect, test, vi } from "vitest";
import { addBooking } from "#db/write/bookings";
import { putRecipe } from "#db/write/recipes";
import type { Booking } from "#lib/domain/records/booking";
import { saveBooking } from "../../../app/bookings/actions";
import { openFinalCount, takeFinalCount } from "../../../app/bookings/final-count/final-count-actions";
import { farmDatabase } from "../../../app/load";
import { FRESH } from "../../../app/ui/form-state";
import { done, kept } from "../../db/kept-farm";
import { booking } from "../../small-farm";
import { farmForActions, onDay } from "../farm-for-actions";
import { formOf } from "../form-of";
import { sentBooking, typedBooking } from "../typed-booking";

/** The server's own actions on a real farm; only the framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));
vi.mock("next/navigation", () => ({ redirect: () => {} }));

farmForActions("2027-05-16");

const named = (client: string) => kept(farmDatabase()).bookings.find((row) => row.client === client) as Booking;
const added = (client: string, given: Partial<Booking> = {}) => {
  const pieces = [{ recipeId: 1, pieceCount: 6, colours: [] }];
  const { id: _, ...draft } = booking({ id: 1, client, pieces, ...given });
  return String(done(addBooking(farmDatabase(), draft)).result);
};

test("a tap takes the pieces as final; changed pieces leave the count as it was, and another tap opens it again", async () => {
  const id = added("Ivy");
  expect((await takeFinalCount(FRESH, formOf({ bookingId: id }))).outcome).toBe("saved");
  const count = { finalOn: "2027-05-16", finalPieces: [{ count: 6, what: "Piece 1" }], finalStems: 30 };
  expect(named("Ivy")).toMatchObject(count);
  onDay("2027-05-20");
  const typed = typedBooking({ client: "Ivy", status: "confirmed", finalDueOn: "2027-05-01" });
  const seven = { ...typed, pieces: [{ recipeId: 1, pieceCount: "7", colours: "" }] };
  expect((await saveBooking(FRESH, sentBooking(seven, Number(id)))).problems).toEqual([]);
  expect(named("Ivy")).toMatchObject({ ...count, finalDueOn: "2027-05-01", pieces: [{ pieceCount: 7 }] });
  expect((await openFinalCount(FRESH, formOf({ bookingId: id }))).outcome).toBe("saved");
  expect(named("Ivy")).toMatchObject({ finalOn: null, finalPieces: [], finalStems: null });
  const again = await openFinalCount(FRESH, formOf({ bookingId: id }));
  expect(again.problems[0].message).toBe("this booking has no final count any more");
});

test("an enquiry, a cancelled booking and one that is gone have no final count, and the answer says why", async () => {
  for (const status of ["enquiry", "cancelled"] as const) {
    const answer = await takeFinalCount(FRESH, formOf({ bookingId: added(status, { status }) }));
    expect(answer.problems[0].message).toBe("only a held or confirmed booking has a final count: confirm it first");
  }
  const gone = await takeFinalCount(FRESH, formOf({ bookingId: "999" }));
  expect(gone.problems[0].message).toBe("this booking is not on the farm any more");
});

test("a day that is none is refused at its field, and the count stays", async () => {
  const id = added("Ash");
  await takeFinalCount(FRESH, formOf({ bookingId: id }));
  const typed = typedBooking({ client: "Ash", status: "confirmed", finalDueOn: "30 Feb" });
  const refused = await saveBooking(FRESH, sentBooking(typed, Number(id)));
  expect(refused.problems.map(({ place }) => place)).toContain("finalDueOn");
  expect(named("Ash").finalStems).toBe(30);
});

test("[T13] a recipe that gets another name takes final counts along, and those of other pieces stay", async () => {
  await takeFinalCount(FRESH, formOf({ bookingId: added("Bea") }));
  const [first] = kept(farmDatabase()).recipes;
  done(putRecipe(farmDatabase(), { ...first, name: "Posy" }));
  expect(named("Bea").finalPieces).toEqual([{ count: 6, what: "Posy" }]);
  const other = kept(farmDatabase()).recipes[1];
  done(putRecipe(farmDatabase(), { ...other, name: "Moon gate" }));
  expect(named("Bea").finalPieces).toEqual([{ count: 6, what: "Posy" }]);
});
