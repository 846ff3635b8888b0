import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { setBookingStatus, updateBooking } from "#db/write/bookings";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import { putWhatIf } from "#db/write/what-ifs";
import { DEMO_START } from "#demo/demo-sheets";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { farmDatabase, farmFile, farmStamp, isFarmHeld, loadFarm, loadPlan } from "../../app/load";
import { movedSinceYesterday } from "../../app/today/since-yesterday";
import { stateOf } from "../db/farm-in-file";
import { provenPlan } from "../proven-plan";

const SEASON = 2027;
const folder = mkdtempSync(join(tmpdir(), "farm-"));
const file = join(folder, "farm.sqlite");
let other: FarmDatabase;

beforeAll(() => {
  vi.stubEnv("FARM_FILE", file);
  // What is shown changes with the day too; here no midnight may pass.
  vi.stubEnv("FARM_TODAY", "2027-02-01");
  other = openFarm(file);
  startFarm(other, DEMO_START);
  importRecords(other, farmRecordsOf(seededFarm(1, TYPICAL, SEASON)));
});
afterAll(() => {
  farmFile().close();
  closeFarm(other);
  rmSync(folder, { recursive: true });
});

/** Writes as a second server does: through a connection of its own. */
function writeNote(note: string): number {
  const [booking] = loadFarm().bookings.filter(({ eventOn }) => eventOn.startsWith(`${SEASON}`));
  const { id, ...draft } = booking;
  expect(updateBooking(other, id, { ...draft, note }).ok).toBe(true);
  return id;
}

test("a second server's write is noticed: its booking is new, every other row is the same object, and the plan is the fresh one", () => {
  const [before, stood] = [loadFarm(), farmStamp()];
  loadPlan(SEASON);
  const id = writeNote("by the other server");
  const after = loadFarm();
  expect(farmStamp()).not.toBe(stood);
  expect(after.bookings.find((row) => row.id === id)?.note).toBe("by the other server");
  const changed = after.bookings.filter((row, index) => row !== before.bookings[index]);
  expect(changed.map((row) => row.id)).toEqual([id]);
  expect(after.plantings).toBe(before.plantings);
  expect(loadPlan(SEASON).match.solution).toEqual(provenPlan(after, SEASON).match.solution);
  expect(loadPlan(SEASON)).toBe(loadPlan(SEASON));
});

test("a what-if that is kept leaves the farm the very same, and its plans with it", () => {
  const [before, planned] = [loadFarm(), loadPlan(SEASON)];
  const stood = farmStamp();
  expect(putWhatIf(other, { name: "early frost", seasonYear: SEASON, changes: [] }).ok).toBe(true);
  expect(farmStamp()).not.toBe(stood);
  expect(loadFarm()).toBe(before);
  expect(loadPlan(SEASON)).toBe(planned);
});

test("while another program holds the file, pages show the farm as it was read last and say so; afterwards the farm as it is", () => {
  const before = loadFarm();
  expect(isFarmHeld()).toBe(false);
  const stood = farmStamp();
  const program = new Database(file);
  program.exec("BEGIN EXCLUSIVE");
  expect(loadFarm()).toBe(before);
  expect(isFarmHeld()).toBe(true);
  expect(farmStamp()).not.toBe(stood);
  program.exec("ROLLBACK");
  program.close();
  expect(loadFarm()).toBe(before);
  expect(farmStamp()).toBe(stood);
  writeNote("after it was let go");
  expect(loadFarm().bookings.some(({ note }) => note === "after it was let go")).toBe(true);
});

test("what moved since yesterday is told while another program holds the file too, as it was read last", () => {
  // All before this was written long ago; today a confirmed booking is cancelled, and others have its stems.
  other.$client.exec("UPDATE change SET made_at = '2020-01-31 12:00:00'; DELETE FROM change_row");
  const booking = loadFarm().bookings.find(({ status, eventOn }) => status === "confirmed" && eventOn > "2027-06");
  expect(setBookingStatus(other, booking?.id ?? 0, "cancelled").ok).toBe(true);
  const moved = movedSinceYesterday();
  expect(moved?.length).toBeGreaterThan(0);
  const program = new Database(file);
  program.exec("BEGIN EXCLUSIVE");
  expect(movedSinceYesterday()).toEqual(moved);
  program.exec("ROLLBACK");
  program.close();
});

test("a program that has written the file and still holds it is told of as such, and not as a fault of the tool", () => {
  loadFarm();
  writeNote("by the program");
  const program = new Database(file);
  program.exec("BEGIN EXCLUSIVE");
  expect(stateOf(farmDatabase)).toBe("locked");
  expect(loadFarm().bookings.some(({ note }) => note === "by the program")).toBe(false);
  program.exec("ROLLBACK");
  program.close();
  expect(loadFarm().bookings.some(({ note }) => note === "by the program")).toBe(true);
});

test("of the seasons ever looked at the plans of four are kept, the latest", () => {
  const first = loadPlan(2020);
  for (const year of [2021, 2022, 2023]) loadPlan(year);
  expect(loadPlan(2020)).toBe(first);
  loadPlan(2024);
  expect(loadPlan(2020)).toBe(first);
  for (const year of [2021, 2022, 2023, 2024]) loadPlan(year);
  expect(loadPlan(2020)).not.toBe(first);
});
