import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test, vi } from "vitest";
import { POST as coverage } from "../../app/bookings/coverage/route";
import { readPasted } from "../../app/bookings/editor/pasted-action";
import { csvFile } from "../../app/csv-file";
import { download } from "../../app/download";
import { learnFirstCuts } from "../../app/farm/weather/learn/learn-actions";
import { compareWeather } from "../../app/farm/weather/weather-actions";
import { farmFile } from "../../app/load";
import { makeFile } from "../db/farm-in-file";
import { formOf } from "./form-of";

const folder = mkdtempSync(join(tmpdir(), "farm-"));
const file = join(folder, "farm.sqlite");
vi.stubEnv("FARM_FILE", file);
afterAll(() => {
  farmFile().close();
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

test("a file made from the farm, and a question of it, are refused in words while the farm's own file is not there, and given once it is", async () => {
  const give = download((day: string) => new Response(`stems of ${day}`));
  const refused = await give("2027-06-12");
  expect(refused.status).toBe(503);
  expect(await refused.text()).toContain(file);
  const asked = new Request("http://127.0.0.1/bookings/coverage", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ bookingId: null, form: {} }),
  });
  const unanswered = await coverage(asked);
  expect(unanswered.status).toBe(503);
  expect((await unanswered.json()).problem).toContain(file);
  const pasted = await readPasted("bridal bouquet\t1");
  expect([pasted.whyUnread?.includes(file), pasted.unread]).toEqual([true, "bridal bouquet\t1"]);
  const lesson = await learnFirstCuts(null, new FormData());
  expect(lesson.ok ? "" : lesson.because).toContain(file);
  expect(await compareWeather(null, weatherForm())).toBeNull();
  makeFile(file);
  expect((await readPasted("bridal bouquet\t1")).whyUnread).toBeNull();
  expect(await compareWeather(null, weatherForm())).toMatchObject({ newDayCount: 1 });
  const given = await give("2027-06-12");
  expect([given.status, await given.text()]).toEqual([200, "stems of 2027-06-12"]);
});

test("a CSV file begins with the three bytes that tell a spreadsheet it is UTF-8, and has its name", async () => {
  const file = csvFile("crop,leaves\nDahlia,2 m³\n", "winter-2026-2027.csv");
  const bytes = Buffer.from(await file.arrayBuffer());
  expect(bytes.subarray(0, 3).toString("hex")).toBe("efbbbf");
  expect(bytes.subarray(3).toString("utf8")).toBe("crop,leaves\nDahlia,2 m³\n");
  expect(file.headers.get("content-disposition")).toBe('attachment; filename="winter-2026-2027.csv"');
});

/** One day of weather, as the page sends it. */
function weatherForm(): FormData {
  const day = (tenths: number) => JSON.stringify([tenths, ...Array.from({ length: 364 }, () => null)]);
  return formOf({ years: JSON.stringify([{ id: 2026, highTenthsC: day(100), lowTenthsC: day(0) }]) });
}
