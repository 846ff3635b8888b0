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

test("[T7] made larger by its form it keeps what it asked for until that day, by role, once for each day; a later save that changes no stem leaves that as it was", async () => {
  const at = (today: string, stems: string, note = "") => {
    onDay(today);
    const typed = typedBooking({ client: "Larger", status: "confirmed", note, stemLines: typedFocal(stems) });
    return saveBooking(FRESH, sentBooking(typed, kept(farmDatabase()).bookings.find(isLarger)?.id));
  };
  const isLarger = ({ client }: { client: string }) => client === "Larger";
  const askedBefore = () => kept(farmDatabase()).bookings.find(isLarger)?.askedBefore;
  for (const [today, stems] of [
    ["2027-06-01", "10"],
    ["2027-06-09", "20"],
    ["2027-06-09", "25"],
  ])
    await expect(at(today, stems)).rejects.toThrow("NEXT_REDIRECT");
  const [first, ...more] = askedBefore() ?? [];
  expect([first, more]).toEqual([{ until: "2027-06-09", role: "focal", stems: first.stems }, []]);
  // Ten, and the spare that the form has typed.
  expect(first.stems).toBeGreaterThanOrEqual(10);
  expect(first.stems).toBeLessThan(20);
  await expect(at("2027-06-10", "25", "as it was")).rejects.toThrow("NEXT_REDIRECT");
  expect(askedBefore()).toEqual([first]);
  await expect(at("2027-06-10", "5")).rejects.toThrow("NEXT_REDIRECT");
  expect(askedBefore()).toEqual([first]);
});
