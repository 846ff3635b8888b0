import { expect, test, vi } from "vitest";
import { changeStatus, saveBooking } from "../../../app/bookings/actions";
import type { BookingForm } from "../../../app/bookings/editor/draft";
import { farmDatabase } from "../../../app/load";
import { FRESH } from "../../../app/ui/form-state";
import { kept } from "../../db/kept-farm";
import { farmForActions, onDay } from "../farm-for-actions";
import { formOf } from "../form-of";
import { sentBooking, typedBooking, typedFocal } from "../typed-booking";

/** The framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions();

const TYPED = typedBooking({ client: "Taken", stemLines: typedFocal("4") });
const taken = () => kept(farmDatabase()).bookings.find(({ client }) => client === "Taken");
/** Saves what stands in the form, on a day. */
const save = async (on: string, typed: BookingForm) => {
  onDay(on);
  await expect(saveBooking(FRESH, sentBooking(typed, taken()?.id))).rejects.toThrow("NEXT_REDIRECT");
};
const setStatus = (on: string, status: string) => {
  onDay(on);
  return changeStatus(FRESH, formOf({ bookingId: String(taken()?.id), status }));
};

test("[T7] a booking is taken on the day it is saved first, keeps that day, and is taken anew when it is brought forward or taken back", async () => {
  await save("2027-05-03", TYPED);
  expect(taken()?.takenOn).toBe("2027-05-03");
  await save("2027-05-20", { ...TYPED, takenOn: "2027-05-03", note: "changed" });
  expect(taken()?.takenOn).toBe("2027-05-03");
  await save("2027-06-01", { ...TYPED, takenOn: "2027-05-03", eventOn: "2027-06-11" });
  expect(taken()?.takenOn).toBe("2027-06-01");
  expect((await setStatus("2027-06-04", "cancelled")).outcome).toBe("saved");
  expect(taken()?.takenOn).toBe("2027-06-01");
  expect((await setStatus("2027-06-05", "enquiry")).outcome).toBe("saved");
  expect(taken()?.takenOn).toBe("2027-06-05");
  await setStatus("2027-06-06", "enquiry");
  expect(taken()?.takenOn).toBe("2027-06-05");
});

test("a day that the grower types stands, and what is no day is refused at its field", async () => {
  await save("2027-06-07", { ...TYPED, eventOn: "2027-06-11", takenOn: "2027-04-30" });
  expect(taken()?.takenOn).toBe("2027-04-30");
  const odd = { ...TYPED, eventOn: "2027-06-11", takenOn: "2027-02-30" };
  const answer = await saveBooking(FRESH, sentBooking(odd, taken()?.id));
  expect(answer.problems.map(({ place }) => place)).toEqual(["takenOn"]);
});
