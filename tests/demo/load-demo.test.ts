import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { takeCopy } from "#db/copies/take-copy";
import { latestChanges } from "#db/journal/journal";
import { hasFarm, loadSnapshot } from "#db/read/read";
import { demoFiles, readDemoSheets } from "#demo/demo-sheets";
import { startDemoFarm } from "#demo/start-demo-farm";

const folder = mkdtempSync(join(tmpdir(), "demo-farm-"));
afterAll(() => rmSync(folder, { recursive: true }));

const loadDemo = (file: string, today: string) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts", file], {
    encoding: "utf8",
    env: { ...process.env, FARM_TODAY: today },
  });
  return { status, lines: stdout.trim().split("\n"), stderr };
};

test("the script puts the farm of the season ahead into a new file, and leaves a farm that is there alone", () => {
  const file = join(folder, "new", "farm.sqlite");
  const first = loadDemo(file, "2028-02-10");
  expect(first.stderr).toBe("");
  expect(first.status).toBe(0);
  expect(first.lines).toHaveLength(1);
  expect(first.lines[0]).toContain("2028");
  const readBack = () => {
    const database = openFarm(file);
    const read = loadSnapshot(database);
    closeFarm(database);
    return read;
  };
  const read = readBack();
  const years = read.ok ? read.parsed.bookings.map(({ eventOn }) => Number(eventOn.slice(0, 4))) : [];
  expect(new Set(years)).toEqual(new Set([2026, 2027, 2028]));
  const second = loadDemo(file, "2030-02-10");
  expect(second.status).toBe(0);
  expect(second.lines).toHaveLength(1);
  expect(second.lines[0]).toContain("already");
  expect(readBack()).toEqual(read);
});

test("where copies of a farm lie and the farm does not, no other farm is made in its place", async () => {
  const file = join(folder, "lost", "farm.sqlite");
  loadDemo(file, "2028-02-10");
  const database = openFarm(file);
  await takeCopy(database.$client, file, "daily");
  closeFarm(database);
  rmSync(file);
  const { status, stderr } = loadDemo(file, "2028-02-10");
  expect(status).toBe(3);
  expect(stderr).toContain("no farm’s file at this place");
  expect(existsSync(file)).toBe(false);
});

const loadNamed = (farmFile: string) =>
  spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts"], {
    encoding: "utf8",
    env: { ...process.env, FARM_FILE: farmFile },
  });

test("where FARM_FILE names a file that is not there, an empty folder or a folder that is missing, no farm is made unasked", () => {
  const stick = join(folder, "stick");
  mkdirSync(stick);
  for (const named of [join(stick, "mine.sqlite"), stick, join(folder, "unplugged", "farm.sqlite")]) {
    const { status, stderr } = loadNamed(named);
    expect(status).toBe(3);
    expect(stderr).toContain("no farm’s file at this place");
  }
  expect(readdirSync(stick)).toEqual([]);
  expect(existsSync(join(folder, "unplugged"))).toBe(false);
});

test("a farm of one's own begins with crops, curves and recipes, under its name, and with nothing that was invented", () => {
  const file = join(folder, "own", "farm.sqlite");
  const { status } = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts", file, "Hill Farm"]);
  expect(status).toBe(0);
  const database = openFarm(file);
  const read = loadSnapshot(database);
  expect(latestChanges(database, 5)).toEqual([]);
  closeFarm(database);
  if (!read.ok) throw new Error("the farm cannot be read");
  const { farm, beds, plantings, bookings, varieties, coolerStock, standingOrders, weather, crops, recipes } =
    read.parsed;
  expect([farm.name, farm.isInvented]).toEqual(["Hill Farm", false]);
  expect([beds, plantings, bookings, varieties, coolerStock, standingOrders].flat()).toEqual([]);
  expect([weather, farm.climate, farm.winter.expectedSaturdayCount]).toEqual([null, null, 0]);
  expect(crops.length).toBeGreaterThan(20);
  expect(recipes.length).toBeGreaterThan(5);
  expect(loadNamed(join(folder, "own")).stdout).toContain("already");
});

test("sheets with problems are refused with all of them, each at its place, and nothing is left behind", () => {
  const broken = demoFiles().map(({ name, text }) => ({
    name,
    text: name === "plantings.csv" ? text.replace("Long Field 2,", "Lost Field,").replace(",blush,", ",beige,") : text,
  }));
  const database = openFarm(":memory:");
  const written = startDemoFarm(database, 2027, null, readDemoSheets(broken));
  const places = written.ok ? [] : written.problems.map(({ place }) => place);
  expect(places).toContain("plantings.csv, line 3, bed");
  expect(places).toContain("plantings.csv, line 2, colour");
  expect(hasFarm(database)).toBe(false);
  closeFarm(database);
});

test("records that the farm refuses leave no half-started farm", () => {
  const { records, ...reading } = readDemoSheets();
  const twice = { ...reading, records: { ...records, beds: [...(records.beds ?? []), ...(records.beds ?? [])] } };
  const database = openFarm(":memory:");
  expect(startDemoFarm(database, 2027, null, twice).ok).toBe(false);
  expect(hasFarm(database)).toBe(false);
  closeFarm(database);
});
