import { mkdtempSync, renameSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { startFarm, updateFarm } from "#db/write/farm";
import { DEMO_START } from "#demo/demo-sheets";
import { farmStream } from "../../../app/changes/farm-stream";
import { farmFile, loadFarm } from "../../../app/load";

const folder = mkdtempSync(join(tmpdir(), "farm-"));
const file = join(folder, "farm.sqlite");
let other: FarmDatabase;

beforeAll(() => {
  vi.stubEnv("FARM_FILE", file);
  vi.stubEnv("FARM_TODAY", "2027-06-10");
  other = openFarm(file);
  startFarm(other, DEMO_START);
});
afterAll(() => {
  farmFile().close();
  closeFarm(other);
  rmSync(folder, { recursive: true });
});

/** A page that listens: gives what it hears next, as text. */
function listener() {
  const end = new AbortController();
  const reader = farmStream(end.signal).getReader();
  const heard = async () => new TextDecoder().decode((await reader.read()).value);
  return { heard, end: () => end.abort(), reader };
}

const rename = (name: string) => expect(updateFarm(other, { ...loadFarm().farm, name }).ok).toBe(true);

test("a page that listens hears of the farm at once, and of each write of whoever it may be", async () => {
  const page = listener();
  expect(await page.heard()).toMatch(/^retry: \d+\n\ndata: \{"revision":\d+,"day":"2027-06-10"\}\n\n$/);
  rename("Written elsewhere");
  expect(await page.heard()).toMatch(/^data: /);
  page.end();
  expect((await page.reader.read()).done).toBe(true);
});

test("a page that comes while the farm cannot be read hears of it once it can, and so do the others", async () => {
  const before = listener();
  await before.heard();
  renameSync(file, `${file}.away`);
  const page = listener();
  expect(await page.heard()).toMatch(/^retry: \d+\n\n$/);
  renameSync(`${file}.away`, file);
  rename("Back again");
  expect(await page.heard()).toMatch(/^data: /);
  expect(await before.heard()).toMatch(/^data: /);
  page.end();
  before.end();
});

test("a page whose reader leaves ends without a fault, and is told nothing more", async () => {
  const page = listener();
  await page.heard();
  await page.reader.cancel();
  rename("After it left");
  const other = listener();
  await other.heard();
  other.end();
});
