import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { pickRows } from "#lib/plan/road/pick-rows";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import { provenPlan } from "../../proven-plan";

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
    expect(new Set(rows.map(({ stand, variety }) => `${standKey(stand)} ${variety.id}`)).size).toBe(rows.length);
  }
});

const standKey = (stand: ReturnType<typeof pickRows>[number]["stand"]): string =>
  stand.kind === "planting" ? `planting ${stand.planting.planting.id}` : JSON.stringify(stand);
