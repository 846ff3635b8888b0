import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { farmDatabase } from "../../app/load";
import { saveColdNight } from "../../app/today/frost-actions";
import { FRESH } from "../../app/ui/form-state";
import { fill, kept } from "../db/kept-farm";

/** The forecast of the next cold night, typed in on a real farm; only the framework’s cache and cookies are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

const folder = mkdtempSync(join(tmpdir(), "farm-"));

beforeAll(() => {
  const file = join(folder, "farm.sqlite");
  const database = openFarm(file);
  fill(database);
  closeFarm(database);
  vi.stubEnv("FARM_FILE", file);
  vi.stubEnv("FARM_TODAY", "2027-09-24");
});
afterAll(() => {
  vi.unstubAllEnvs();
  farmDatabase().$client.close();
  rmSync(folder, { recursive: true });
});

const save = (coldNightOn: string, coldNightLowC: string) => {
  const form = new FormData();
  form.set("coldNightOn", coldNightOn);
  form.set("coldNightLowC", coldNightLowC);
  return saveColdNight(FRESH, form);
};
const keptNight = () => {
  const { coldNightOn, coldNightLowC } = kept(farmDatabase()).farm;
  return [coldNightOn, coldNightLowC];
};

test("an empty forecast is refused with what is missing while none is kept, and takes the kept one out", async () => {
  const empty = await save("", "");
  expect(empty.outcome).toBe("refused");
  expect(empty.problems).toEqual([
    { place: "coldNightOn", message: "write the morning that is forecast cold" },
    { place: "coldNightLowC", message: "write its forecast low" },
  ]);
  expect((await save("2027-09-26", "")).problems.map(({ place }) => place)).toEqual(["coldNightLowC"]);
  expect(keptNight()).toEqual([null, null]);
  expect((await save("2027-09-26", "30")).outcome).toBe("saved");
  expect(keptNight()[0]).toBe("2027-09-26");
  expect((await save("", "")).outcome).toBe("saved");
  expect(keptNight()).toEqual([null, null]);
});
