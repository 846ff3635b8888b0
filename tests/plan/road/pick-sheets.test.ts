import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { isoWeekOf, toDay } from "#lib/domain/day";
import { byPickingDay, chosenLines, pickTotals } from "#lib/plan/road/pick-sheets";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, snapshot, variety } from "../../small-farm";

const sumOf = (lines: readonly { stems: number }[]) => lines.reduce((sum, line) => sum + line.stems, 0);

describe("a part of the pick list", () => {
  const season = provenPlan(seededFarm(5, { bedCount: 20, bookingCount: 12 }), 2027);
  const days = byPickingDay(season.pickList);

  test("the days together are the whole list, the first day first", () => {
    expect(days.flatMap(({ lines }) => lines)).toEqual(season.pickList);
    expect(days.map(({ cutDay }) => cutDay)).toEqual([...new Set(season.pickList.map((line) => line.cutDay))]);
  });

  test("the days, the weeks and the bookings each share it out without loss", () => {
    const ofDays = days.map(({ cutDay }) => sumOf(chosenLines(season.pickList, { day: toDay(cutDay) })));
    const weeks = new Set(days.map(({ cutDay }) => isoWeekOf(toDay(cutDay))));
    const ofWeeks = [...weeks].map((week) => sumOf(chosenLines(season.pickList, { week })));
    const ofBookings = season.snapshot.bookings.map(({ id }) => sumOf(chosenLines(season.pickList, { bookingId: id })));
    for (const parts of [ofDays, ofWeeks, ofBookings])
      expect(parts.reduce((sum, stems) => sum + stems, 0)).toBe(sumOf(season.pickList));
  });

  test("a day, week or booking with nothing to pick gives no lines", () => {
    for (const choice of [{ day: "2027-01-01" }, { week: "2027-W01" }, { bookingId: 999 }])
      expect(chosenLines(season.pickList, choice)).toEqual([]);
  });
});

test("20 stems and 10 stems, cut on two days, are 2 and 1 bunches of 10 and fill a bucket each day", () => {
  const given = provenPlan(
    snapshot({
      crops: [crop({ id: 1 })],
      varieties: [variety({ id: 1 })],
      bookings: [booking({ id: 1, stemLines: focal(30) })],
    }),
    2027,
  );
  const lines = given.pickList;
  expect(lines.map(({ stems }) => stems)).toEqual([20, 10]);
  expect(pickTotals(lines)).toEqual({ stems: 30, bunchCount: 3, bucketCount: 2 });
  expect(toDay(lines[0].cutDay)).toBe(day("2027-06-09"));
});

test.each([5, 9, 14])(
  "[P1] a day's or a booking's buckets are those of each booking on each day, added up (farm %i)",
  (seed) => {
    const { pickList } = provenPlan(seededFarm(seed, { bedCount: 20, bookingCount: 12 }), 2027);
    const filled = new Map<string, number>();
    for (const { cutDay, booking: of, stems, crop: grown } of pickList) {
      const key = `${cutDay} ${of.id}`;
      filled.set(key, (filled.get(key) ?? 0) + stems / grown.bucketStems.count);
    }
    const all = [...filled.values()].reduce((sum, full) => sum + Math.ceil(full - 1e-9), 0);
    expect(pickTotals(pickList).bucketCount).toBe(all);
    const ofDays = byPickingDay(pickList).map(({ lines }) => pickTotals(lines).bucketCount);
    expect(ofDays.reduce((sum, count) => sum + count, 0)).toBe(all);
  },
);
