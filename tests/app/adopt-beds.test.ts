import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { revision } from "#db/journal/journal";
import { startDemoFarm } from "#demo/start-demo-farm";
import { adoptBeds } from "../../app/keep-or-dig/actions";
import { farmDatabase, loadFarm } from "../../app/load";
import { FRESH } from "../../app/ui/form-state";

/** The server's own action on the demo farm; only the framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

const folder = mkdtempSync(join(tmpdir(), "farm-"));
beforeAll(() => {
  process.env.FARM_FILE = join(folder, "farm.sqlite");
  const database = openFarm(process.env.FARM_FILE);
  expect(startDemoFarm(database, 2027).ok).toBe(true);
  closeFarm(database);
});
afterAll(() => {
  delete process.env.FARM_TODAY;
  farmDatabase().$client.close();
  rmSync(folder, { recursive: true });
});

const adoptOn = (today: string) => {
  process.env.FARM_TODAY = today;
  const bedId = loadFarm().beds.find(({ name }) => name === "Long Field 2")?.id;
  const form = new FormData();
  form.set("seasonYear", "2027");
  form.set("keptBedIds", String(bedId));
  return adoptBeds(FRESH, form);
};

test("[K11] a winter that is over is not adopted, and words say why; the day before replanting it still is", async () => {
  const before = revision(farmDatabase());
  const refused = await adoptOn("2027-04-29");
  expect(refused.outcome).toBe("refused");
  expect(refused.problems.map(({ message }) => message).join()).toMatch(/the winter before 2027 is over/);
  expect(revision(farmDatabase())).toBe(before);
  expect((await adoptOn("2027-04-28")).outcome).toBe("saved");
  expect(revision(farmDatabase())).toBeGreaterThan(before);
});
