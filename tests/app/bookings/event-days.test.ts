import { expect, test, vi } from "vitest";
import { saveBooking } from "../../../app/bookings/actions";
import type { BookingForm } from "../../../app/bookings/editor/draft";
import { farmDatabase } from "../../../app/load";
import { FRESH } from "../../../app/ui/form-state";
import { kept } from "../../db/kept-farm";
import { farmForActions, onDay } from "../farm-for-actions";
import { sentBooking, typedBooking, typedFocal } from "../typed-booking";

/** The framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions();

const TYPED = typedBooking({ client: "Early", stemLines: typedFocal("4") });
const saved = () => kept(farmDatabase()).bookings.find(({ client }) => client === "Early");
const daysSaved = () => [saved()?.leadDays, saved()?.designDays, saved()?.deliverDays];
const save = async (typed: Partial<BookingForm>) => {
  onDay("2027-05-03");
  await expect(saveBooking(FRESH, sentBooking({ ...TYPED, ...typed }, saved()?.id))).rejects.toThrow("NEXT_REDIRECT");
};

test("[M12] days of its own are saved with a booking, stay when the event moves, and go when they are left as usual", async () => {
  await save({ leadDays: "4", deliverDays: "1" });
  expect(daysSaved()).toEqual([4, null, 1]);
  await save({ leadDays: "4", deliverDays: "1", eventOn: "2027-06-19" });
  expect(daysSaved()).toEqual([4, null, 1]);
  await save({ eventOn: "2027-06-19" });
  expect(daysSaved()).toEqual([null, null, null]);
});

test("days that cannot be are refused at their field, what was typed comes back, and the booking stays as it was", async () => {
  const odd = { ...TYPED, eventOn: "2027-06-19", leadDays: "1", designDays: "", deliverDays: "3" };
  const answer = await saveBooking(FRESH, sentBooking(odd, saved()?.id));
  expect(answer.problems.map(({ place }) => place)).toEqual(["leadDays"]);
  expect(JSON.parse(answer.typed?.booking[0] ?? "{}")).toMatchObject({ leadDays: "1", deliverDays: "3" });
  expect(daysSaved()).toEqual([null, null, null]);
});
