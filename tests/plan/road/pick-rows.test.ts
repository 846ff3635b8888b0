import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { placeOf } from "#lib/plan/road/pick-list";
import { pickRows } from "#lib/plan/road/pick-rows";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import { provenPlan } from "../../proven-plan";
import { booking, focal, planting, snapshot } from "../../small-farm";

test.each([5, 9, 14])("a day's rows hold the stems of its lines, each place and variety once (farm %i)", (seed) => {
  const { pickList } = provenPlan(seededFarm(seed, { bedCount: 20, bookingCount: 12 }), 2027);
  for (const { lines } of byPickingDay(pickList)) {
    const rows = pickRows(lines);
    expect(rows.reduce((sum, { stems }) => sum + stems, 0)).toBe(pickTotals(lines).stems);
    expect(rows.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0)).toBe(
      lines.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0),
    );
    for (const { stems, stemsOfBooking } of rows)
      expect([...stemsOfBooking.values()].reduce((sum, of) => sum + of, 0)).toBe(stems);
    expect(new Set(rows.map(({ stand, variety }) => `${placeOf(stand)} ${variety.id}`)).size).toBe(rows.length);
  }
});

test("two plantings of a variety in one bed are one row to walk, with the stems of both", () => {
  const { pickList } = provenPlan(
    snapshot({
      plantings: [planting({ id: 1 }), planting({ id: 2 })],
      bookings: [booking({ id: 1, stemLines: focal(60) })],
    }),
    2027,
  );
  const [{ lines }] = byPickingDay(pickList);
  expect(lines.map(({ stems }) => stems)).toEqual([20, 20]);
  const rows = pickRows(lines);
  expect(rows.map(({ stems }) => stems)).toEqual([40]);
  expect([...rows[0].stemsOfBooking]).toEqual([[1, 40]]);
});
