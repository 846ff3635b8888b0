import { expect, test, vi } from "vitest";
import { revision } from "#db/journal/journal";
import { putWhatIf } from "#db/write/what-ifs";
import { startDemoFarm } from "#demo/start-demo-farm";
import { monthDaySchema } from "#lib/domain/day-schema";
import type { Change } from "#lib/domain/what-if";
import { adoptBeds } from "../../app/keep-or-dig/actions";
import { farmDatabase, loadFarm } from "../../app/load";
import { FRESH } from "../../app/ui/form-state";
import { adopt } from "../../app/what-if/adopt/adopt-action";
import { done } from "../db/kept-farm";
import { farmForActions, onDay } from "./farm-for-actions";
import { formOf } from "./form-of";

/** The server's own action on the demo farm; only the framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions(undefined, (database) => done(startDemoFarm(database, 2027)));

const adoptOn = (today: string) => {
  onDay(today);
  const bedId = loadFarm().beds.find(({ name }) => name === "Long Field 2")?.id;
  return adoptBeds(FRESH, formOf({ seasonYear: "2027", keptBedIds: String(bedId) }));
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
  onDay(today);
  const { result } = done(putWhatIf(farmDatabase(), { name, seasonYear: 2027, changes }));
  const form = formOf({ whatIfId: String(result), revision: String(revision(farmDatabase())) });
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
