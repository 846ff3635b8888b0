import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Day } from "#lib/domain/day";
import { addDays, toDay, toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { withDraft } from "#lib/plan/road/draft";
import { asksForStems, habitualLapse, isLapsed, withoutLapsed } from "#lib/plan/road/lapsed";
import type { Plan } from "#lib/plan/road/plan";
import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { winterFutures } from "#lib/plan/winter/futures";
import { provenPlan } from "../../proven-plan";
import { booking, day, farm, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { on } from "./lived-season";

const told = ({ match }: Plan) =>
  match.needs.map(({ booking, stems }, index) => [booking.client, stems, match.shortStems[index]]);

describe("a hold that is kept to 1 May", () => {
  const hold = booking({ id: 1, client: "Hold", status: "held", lapsesAfter: day("2027-05-01"), stemLines: focal(20) });
  const later = booking({ id: 2, client: "Later", status: "enquiry", stemLines: focal(20) });
  const given = snapshot({ bookings: [hold, later] });

  test("[N4] asks for its 20 stems on that day, and for none on the next: the 30 in reach of 12 June are then the other's", () => {
    expect(told(on(given, "2027-05-01"))).toEqual([
      ["Hold", 20, 0],
      ["Later", 20, 10],
    ]);
    expect(told(on(given, "2027-05-02"))).toEqual([["Later", 20, 0]]);
  });

  test("[N4] a plan without a day knows of no lapse, and neither does a booking that was confirmed or never lapses", () => {
    expect(told(provenPlan(given, 2027))).toHaveLength(2);
    const stands = (row: Partial<Booking>) => asksForStems({ ...hold, ...row }, day("2027-06-01"));
    expect([stands({}), stands({ status: "confirmed" }), stands({ lapsesAfter: null })]).toEqual([false, true, true]);
    expect(stands({ status: "cancelled", lapsesAfter: null })).toBe(false);
  });

  test("[N4] [L2] typed into a form it asks for nothing once it has lapsed, and again with another day", () => {
    const { id, ...draft } = hold;
    const made = on(given, "2027-05-02");
    const stemsWith = (lapsesAfter: Day) =>
      withDraft(made, { ...draft, lapsesAfter }, id)
        .match.needs.filter(({ booking }) => booking.id === id)
        .map(({ stems }) => stems);
    expect(stemsWith(day("2027-05-01"))).toEqual([]);
    expect(stemsWith(day("2027-05-02"))).toEqual([20]);
  });

  test("[N4] no choice of beds reckons with it any more", () => {
    const asked = (today: Day) =>
      winterFutures(withExpectedBookings(given, 2027, today), 2027).needs.map(({ booking }) => booking.client);
    expect(asked(day("2027-05-01"))).toEqual(["Hold", "Later"]);
    expect(asked(day("2027-05-02"))).toEqual(["Later"]);
  });
});

test("[N4] on any farm and day the plan is that of the farm without the bookings that lapsed, as one counts them by hand", () => {
  const some = fc.record({
    snap: anyFarm,
    lapses: fc.array(fc.option(fc.integer({ min: 0, max: 30 })), { minLength: 8, maxLength: 8 }),
    passed: fc.integer({ min: 0, max: 30 }),
  });
  fc.assert(
    fc.property(some, ({ snap, lapses, passed }) => {
      const first = toDayNumber(day("2027-05-25"));
      const bookings = snap.bookings.map((row, index) => {
        const after = lapses[index];
        return { ...row, lapsesAfter: after === null ? null : toDay(first + after) };
      });
      const given: Snapshot = { ...snap, bookings };
      const open = bookings.filter(
        ({ status, lapsesAfter }) =>
          !["enquiry", "held"].includes(status) || lapsesAfter === null || toDayNumber(lapsesAfter) >= first + passed,
      );
      const made = on(given, first + passed);
      const other = on({ ...snap, bookings: open }, first + passed);
      expect(told(made)).toEqual(told(other));
      expect(made.match.solution.totalCost).toBe(other.match.solution.totalCost);
      expect(made.pickList).toEqual(other.pickList);
      expect(withoutLapsed(given, toDay(first + passed)).bookings).toEqual(open);
    }),
    { ...anySeed, numRuns: 60 },
  );
});

test("a farm in which nothing has lapsed is the very farm", () => {
  const given = snapshot({ bookings: [booking({ id: 1, status: "held", lapsesAfter: day("2027-05-01") })] });
  expect(withoutLapsed(given, day("2027-05-01"))).toBe(given);
  expect(withoutLapsed(given, null)).toBe(given);
});

test("by the farm's habit an enquiry is kept 14 days and a hold 30, neither beyond its event, and what is confirmed does not lapse", () => {
  const today = day("2027-05-01");
  const kept = (status: Booking["status"], eventOn = day("2027-06-12")) =>
    habitualLapse({ status, eventOn }, farm(), today);
  expect([kept("enquiry"), kept("held"), kept("confirmed"), kept("cancelled")]).toEqual([
    "2027-05-15",
    "2027-05-31",
    null,
    null,
  ]);
  expect(kept("held", day("2027-05-08"))).toBe("2027-05-08");
  const lapsesAfter = kept("enquiry");
  expect(isLapsed({ status: "enquiry", lapsesAfter }, addDays(today, 14))).toBe(false);
  expect(isLapsed({ status: "enquiry", lapsesAfter }, addDays(today, 15))).toBe(true);
});
