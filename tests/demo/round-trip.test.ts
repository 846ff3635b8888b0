import { expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import { DEMO_START } from "#demo/demo-sheets";
import { demoSnapshot } from "#demo/demo-snapshot";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { provenPlan } from "../proven-plan";

/** The snapshot of an empty farm into which the sheets of another were brought. */
function broughtIn(sheets: ReturnType<typeof farmSheets>): Snapshot {
  const database = openFarm(":memory:");
  try {
    startFarm(database, DEMO_START);
    const empty = loadSnapshot(database);
    if (!empty.ok) throw new Error("the empty farm cannot be read");
    const reading = readFarmSheets(sheets, knownFarm(empty.parsed));
    expect(reading.problems).toEqual([]);
    const written = importRecords(database, reading.records);
    expect(written).toMatchObject({ ok: true });
    const read = loadSnapshot(database);
    if (!read.ok) throw new Error(read.problems.map(({ place, message }) => `${place}: ${message}`).join("\n"));
    return read.parsed;
  } finally {
    closeFarm(database);
  }
}

/** A plan without ids: what is asked, short, cut and bought, by name. */
function inNames(snapshot: Snapshot) {
  const { match, gaps, pickList, buying, weeks } = provenPlan(snapshot, 2027);
  expect(checkMatch(match)).toEqual([]);
  return {
    cost: match.solution.totalCost,
    needs: match.needs
      .map(({ booking, role, colours, stems }) => [booking.client, booking.eventOn, role, colours, stems])
      .sort(),
    short: gaps.reduce((sum, gap) => sum + gap.shortStems, 0),
    cut: pickList.reduce((sum, line) => sum + line.stems, 0),
    bought: buying.reduce((sum, line) => sum + line.costCents, 0),
    weeks: weeks.map(({ week, roles }) => [
      week,
      roles.map(({ needStems, reachableStems }) => [needStems, reachableStems]),
    ]),
  };
}

test("the demo farm written to CSV and brought into an empty farm gives the same plan", () => {
  const farm = demoSnapshot();
  const again = broughtIn(farmSheets(farm));
  expect(again.farm).toEqual(farm.farm);
  expect(again.bookings.length).toBe(farm.bookings.length);
  expect(inNames(again)).toEqual(inNames(farm));
});
