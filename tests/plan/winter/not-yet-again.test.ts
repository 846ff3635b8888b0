import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { expectedBookings } from "#lib/plan/winter/expected-bookings";
import { expectedInWords, expectedLine } from "#lib/plan/words/expected-words";
import { booking, day, farm, focal, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";

const NOVEMBER = day("2026-11-26");
const asLastSeason = (bookings: readonly Booking[]): Snapshot => {
  const settings = farm();
  return snapshot({ farm: { ...settings, winter: { ...settings.winter, expectedFrom: "last season" } }, bookings });
};
const expectedOf = (bookings: readonly Booking[], today = NOVEMBER) =>
  expectedBookings(asLastSeason(bookings), 2027, today).map(({ likeBookingId, eventOn }) => [likeBookingId, eventOn]);

describe("bookings still to come, as last season", () => {
  const before = [
    booking({ id: 1, client: "Hazel Barn", eventOn: day("2026-06-13"), stemLines: focal(40) }),
    booking({ id: 2, eventOn: day("2026-06-20"), status: "held" }),
    booking({ id: 3, eventOn: day("2026-09-19") }),
    booking({ id: 4, eventOn: day("2026-07-04"), status: "enquiry" }),
    booking({ id: 5, eventOn: day("2026-08-08"), status: "cancelled" }),
    booking({ id: 6, eventOn: day("2026-08-15"), status: "held", lapsesAfter: day("2026-07-01") }),
    booking({ id: 7, eventOn: day("2025-05-10") }),
  ];

  test("[K12] of three booked in 2026 the one of 20 June has its counterpart in the enquiry for Sunday 20 June 2027; those of 13 June and 19 September are expected in their weeks", () => {
    const now = booking({ id: 8, eventOn: day("2027-06-20"), status: "enquiry" });
    expect(expectedOf([...before, now])).toEqual([
      [1, "2027-06-12"],
      [3, "2027-09-18"],
    ]);
    const lapsed = { ...now, lapsesAfter: day("2026-11-01") };
    expect(expectedOf([...before, lapsed]).map(([id]) => id)).toEqual([1, 2, 3]);
    expect(expectedOf([...before, now], day("2027-06-13"))).toEqual([[3, "2027-09-18"]]);
  });

  test("[K12] with as many booked as last season nothing more is expected, wherever they lie; with no season before, nothing", () => {
    const now = ["2027-04-03", "2027-05-01", "2027-05-02"].map((on, at) => booking({ id: 20 + at, eventOn: day(on) }));
    expect(expectedOf([...before, ...now])).toEqual([]);
    expect(expectedOf(now)).toEqual([]);
  });

  test("[K12] a booking of New Year’s Day, which 52 weeks later is still of its year, is expected a week on", () => {
    expect(expectedOf([booking({ id: 1, eventOn: day("2026-01-01") })], day("2026-12-01"))).toEqual([
      [1, "2027-01-07"],
    ]);
  });

  test("they are said with their weight, each with its day, its stems and whom it is like", () => {
    const farmNow = asLastSeason(before);
    const expected = expectedBookings(farmNow, 2027, NOVEMBER);
    expect(expectedInWords(farmNow, expected)).toBe(
      "3 bookings that last season had and this one has not yet, each in its week; they are weighed at 30 %.",
    );
    expect(expectedInWords(farmNow, [])).toBe(null);
    expect(expectedLine(farmNow, expected[0])).toBe("Sat 12 Jun, 40 stems, like Hazel Barn");
  });

  /** Day numbers of bookings of one season and the next. */
  const eventDays = (year: number) =>
    fc.array(fc.integer({ min: toDayNumber(day(`${year}-03-01`)), max: toDayNumber(day(`${year}-10-31`)) }), {
      maxLength: 9,
    });

  test("[K12] in 300 pairs of seasons those left over are what is found by looking for the nearest two again and again", () => {
    fc.assert(
      fc.property(eventDays(2026), eventDays(2027), (was, is) => {
        const all = [...was, ...is].map((on, at) => booking({ id: at + 1, eventOn: toDay(on) }));
        expect(expectedOf(all)).toEqual(leftOver(was, is));
      }),
      { ...anySeed, numRuns: 300 },
    );
  });
});

/** What is left of a season of bookings, ids from 1, when the nearest two of both seasons are taken out until one has none. */
function leftOver(was: readonly number[], is: readonly number[]): [id: number, eventOn: Day][] {
  let left = was.map((on, at) => ({ id: at + 1, on: on + 364 }));
  let open = is.map((on, at) => ({ id: was.length + at + 1, on }));
  while (left.length > 0 && open.length > 0) {
    const apart = (a: { on: number }, b: { on: number }) => Math.abs(a.on - b.on);
    let [one, other] = [left[0], open[0]];
    for (const a of left)
      for (const b of open) {
        const rank = [apart(a, b) - apart(one, other), a.on - one.on, a.id - one.id, b.on - other.on, b.id - other.id];
        if ((rank.find((step) => step !== 0) ?? 0) < 0) [one, other] = [a, b];
      }
    left = left.filter(({ id }) => id !== one.id);
    open = open.filter(({ id }) => id !== other.id);
  }
  return left.sort((a, b) => a.on - b.on || a.id - b.id).map(({ id, on }) => [id, toDay(on)]);
}
