import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { revision } from "#db/journal/journal";
import { putWhatIf } from "#db/write/what-ifs";
import { startDemoFarm } from "#demo/start-demo-farm";
import { monthDaySchema } from "#lib/domain/day";
import type { Change } from "#lib/domain/what-if";
import { adoptBeds } from "../../app/keep-or-dig/actions";
import { farmDatabase, loadFarm } from "../../app/load";
import { FRESH } from "../../app/ui/form-state";
import { adopt } from "../../app/what-if/adopt/adopt-action";

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

const adoptWhatIfOn = async (today: string, name: string, changes: Change[]) => {
  process.env.FARM_TODAY = today;
  const kept = putWhatIf(farmDatabase(), { name, seasonYear: 2027, changes });
  if (!kept.ok) throw new Error("the what-if was not kept");
  const form = new FormData();
  form.set("whatIfId", String(kept.result));
  form.set("revision", String(revision(farmDatabase())));
  return adopt(FRESH, form).catch((sent: { digest?: string }) => {
    if (sent.digest?.startsWith("NEXT_REDIRECT")) return { outcome: "saved" as const, problems: [] };
    throw sent;
  });
};

test("[K11] a what-if that keeps a bed is not adopted after the winter either, in the same words; an early frost still is", async () => {
  const bedId = loadFarm().beds.find(({ name }) => name === "Long Field 7")?.id ?? 0;
  const keeps: Change = { kind: "bed-kept", bedId };
  const frost: Change = { kind: "frost-moved", firstFrost: monthDaySchema.parse("10-04") };
  const refused = await adoptWhatIfOn("2027-04-29", "Keep it", [keeps, frost]);
  expect(refused.outcome).toBe("refused");
  expect(refused.problems.map(({ message }) => message).join()).toMatch(/the winter before 2027 is over/);
  expect((await adoptWhatIfOn("2027-04-29", "Frost alone", [frost])).outcome).toBe("saved");
  const isKept = () => loadFarm().plantings.some((row) => row.bedId === bedId && row.treatment === "kept-in-ground");
  expect(isKept()).toBe(false);
  expect((await adoptWhatIfOn("2027-04-28", "Keep it in time", [keeps])).outcome).toBe("saved");
  expect(isKept()).toBe(true);
});
