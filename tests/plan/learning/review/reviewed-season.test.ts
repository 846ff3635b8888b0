import fc from "fast-check";
import { expect, test } from "vitest";
import { reviewedSeason } from "#lib/plan/learning/review/reviewed-season";
import { booking, day, focal, snapshot } from "../../../small-farm";

const farmOf = (...bookings: readonly (readonly [string, "confirmed" | "enquiry" | "cancelled"])[]) =>
  snapshot({
    bookings: bookings.map(([on, status], at) =>
      booking({ id: at + 1, eventOn: day(on), status, stemLines: focal(10) }),
    ),
  });

test("[V1] in November the year whose weddings are over is shown, in March the year before, and from the day after the first wedding this one", () => {
  const snap = farmOf(["2026-09-12", "confirmed"], ["2027-05-29", "confirmed"]);
  expect(reviewedSeason(snap, day("2026-11-25"))).toBe(2026);
  expect(reviewedSeason(snap, day("2027-03-01"))).toBe(2026);
  expect(reviewedSeason(snap, day("2027-05-29"))).toBe(2026);
  expect(reviewedSeason(snap, day("2027-05-30"))).toBe(2027);
});

test("[V1] what was cancelled or only asked for is no event, and with none that is over this year is shown", () => {
  const snap = farmOf(["2025-06-07", "confirmed"], ["2026-06-06", "cancelled"], ["2026-06-13", "enquiry"]);
  expect(reviewedSeason(snap, day("2026-11-25"))).toBe(2025);
  expect(reviewedSeason(farmOf(["2027-06-05", "confirmed"]), day("2026-11-25"))).toBe(2026);
});

test("[V1] of any bookings it is the year of the last one that looking through them day after day back from today meets", () => {
  const anyDay = fc
    .integer({ min: 0, max: 1200 })
    .map((at) => new Date(Date.UTC(2025, 0, 1 + at)).toISOString().slice(0, 10));
  const status = fc.constantFrom("confirmed" as const, "enquiry" as const, "cancelled" as const);
  fc.assert(
    fc.property(fc.array(fc.tuple(anyDay, status), { maxLength: 8 }), anyDay, (bookings, today) => {
      let met = Number(today.slice(0, 4));
      for (let at = Date.parse(today) - 86_400_000; at >= Date.UTC(2025, 0, 1); at -= 86_400_000) {
        const on = new Date(at).toISOString().slice(0, 10);
        if (!bookings.some(([eventOn, of]) => eventOn === on && of === "confirmed")) continue;
        met = Number(on.slice(0, 4));
        break;
      }
      expect(reviewedSeason(farmOf(...bookings), day(today))).toBe(met);
    }),
    { seed: 7, numRuns: 100 },
  );
});
