import type { ChildProcess } from "node:child_process";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openFarm } from "#db/client";
import { weatherYear } from "#db/schema/weather";
import { updateFarm } from "#db/write/farm";
import { putFigures } from "#db/write/figures";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDay } from "#lib/domain/day";
import { FROM_MEMORY } from "#lib/domain/sourced";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { kept } from "../db/kept-farm";
import { demoInFile, ended } from "./demo-in-file";
import { breaches, openBrowser, openPage, PHONE, scrollsSideways, violations } from "./open-page";
import { serveBuilt } from "./served";

/** Weather brought in, learned from and taken away again, and built-in figures that changed, on a farm of this file's own. */

const { file, env, remove } = demoInFile();
let server: ChildProcess;
let address: string;
let browser: Browser;

/** Twelve invented years as a public daily summary, tenths of a degree; `change` writes one of its rows otherwise. */
function summary(change: (row: string, index: number) => string = (row) => row): string {
  const { firstDay, highC, lowC } = inventedWeather(CLIMATE_STATIONS[0], 2014, firstDayOf(2026), 3);
  const rows = [...highC].map(
    (high, index) => `X1,${toDay(firstDay + index)},${Math.round(high * 10)},${Math.round(lowC[index] * 10)}`,
  );
  return ["STATION,DATE,TMAX,TMIN", ...rows.map(change)].join("\n");
}

beforeAll(async () => {
  // As an older version of the tool may have had it: without a climate, without weather, and with a figure of its own day.
  const database = openFarm(file);
  database.delete(weatherYear).run();
  updateFarm(database, { ...kept(database).farm, climate: null });
  const [crop] = kept(database).crops.filter(({ name }) => name === "Zinnia");
  putFigures(database, "older figures", {
    crops: [{ ...crop, holdDays: { count: 1, ...FROM_MEMORY } }],
    curves: [],
    recipes: [],
  });
  database.$client.close();
  ({ server, address } = await serveBuilt(env));
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await ended(server);
  remove();
  expect(breaches).toEqual([]);
});

const bringIn = async (page: Page, text: string) => {
  await page.getByLabel("Temperatures, unless the file says").selectOption("tenths");
  await page
    .getByLabel("Weather file")
    .setInputFiles({ name: "w.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
};

test("twelve years come in, give frost dates and a climate in a tap each, and one undo takes the last back", async () => {
  const page = await openPage(browser, address, "/farm/weather");
  await page.getByText("No weather is recorded yet").waitFor();
  await bringIn(
    page,
    summary((row, index) => (index === 40 ? `X1,${row.split(",")[1]},warm,10` : row)),
  );
  await page.getByText(/line 42: "warm" is not a temperature/).waitFor();
  await page.getByRole("button", { name: "Take 4,382 new days" }).click();
  await page.getByText(/4,382 days are recorded, 1 Jan 2014 to 31 Dec 2025; 1 day between them is missing/).waitFor();
  await page.getByRole("button", { name: "Use the recorded dates" }).click();
  await page.getByText("✓ The farm reckons with these dates.").waitFor();
  await page.getByLabel(/Latitude/).fill("37.5");
  await page.getByRole("button", { name: "Go by this year" }).click();
  await page.getByText("✓ The farm goes by this year.").waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText("The farm has chosen no climate yet.").waitFor();
  await page.close();
});

test("brought in again, a day that says something else is shown beside what is kept, and changes only when asked", async () => {
  const page = await openPage(browser, address, "/farm/weather", PHONE);
  await bringIn(
    page,
    summary((row, index) => (index === 7 ? `X1,${row.split(",")[1]},300,100` : row)),
  );
  await page
    .getByText(/1 new day, up to [^,]+, 4,381 days kept already, and 1 day of which the file says something else/)
    .waitFor();
  await page.getByRole("cell", { name: "86 °F, 50 °F" }).waitFor();
  expect(await scrollsSideways(page)).toBe(false);
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Take all, and change 1 day" }).click();
  await page.getByText(/4,383 days are recorded.*none between them is missing/).waitFor();
  await page.close();
});

test("a file that only changes days is done with once they are taken, and can be chosen again after mending", async () => {
  const page = await openPage(browser, address, "/farm/weather");
  await bringIn(
    page,
    summary((row, index) => (index === 8 ? `X1,${row.split(",")[1]},310,110` : row)),
  );
  const field = page.getByLabel("Weather file");
  expect(await field.inputValue()).toMatch(/w\.csv$/);
  const asksForFile = page.waitForEvent("filechooser");
  await field.click();
  await asksForFile;
  expect(await field.inputValue()).toBe("");
  const take = page.getByRole("button", { name: /^Take all, and change \d days?$/ });
  await take.click();
  await take.waitFor({ state: "detached" });
  await page.close();
});

test("first cuts that nothing tells better than their mean day are said to be so, and the mean day is taken with one tap", async () => {
  const page = await openPage(browser, address, "/farm/weather/learn");
  await page.getByLabel("Curve").selectOption({ label: "Peony, in the field" });
  const days = [20, 21, 20, 22, 21, 20, 21, 22].map((date, index) => `${2015 + index}-05-${date}`);
  await page.getByLabel("Or first cuts, one a line").fill(`${days.join("\n")}\n2023 May`);
  await page.getByRole("button", { name: "Look, change nothing" }).click();
  await page.getByText(/better than their mean day, 21 May/).waitFor();
  await page.getByText(/line 9: not a calendar day/).waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Take the mean day, 21 May" }).click();
  await page.getByText(/learned the first cut of Peony from records/).waitFor();
  await page.close();
});

test("first cuts that were typed are kept for next year on the phone: a wrong line is told first, then they stand in a list, to change or take away, and are filled in again with a tap", async () => {
  const page = await openPage(browser, address, "/farm/weather/learn", PHONE);
  const typed = page.getByLabel("Or first cuts, one a line");
  const keep = page.getByRole("button", { name: "Keep them for next year" });
  await page.getByLabel("Curve").selectOption({ label: "Peony, in the field" });
  await typed.fill("2024-05-14\n2025-02-30");
  await keep.click();
  await page.getByText(/line 2: not a calendar day/).waitFor();
  expect(await typed.inputValue()).toBe("2024-05-14\n2025-02-30");
  await typed.fill("2024-05-14\n2025-05-18");
  await keep.click();
  await page.getByText("Peony, in the field: 2 first cuts").click();
  await page.getByText("Tuesday 14 May 2024").click();
  expect(await scrollsSideways(page)).toBe(false);
  expect(await violations(page)).toEqual([]);
  const form = page.getByRole("form", { name: /^First cut of Peony, in the field, season 2024/ });
  await form.getByLabel("First cut").fill("2024-05-15");
  await form.getByRole("button", { name: "Save this first cut" }).click();
  await page.getByText("Wednesday 15 May 2024").waitFor();
  await page.goto(`${address}/farm/weather/learn`);
  await page.getByLabel("Curve").selectOption({ label: "Peony, in the field" });
  await page.getByRole("button", { name: /^Use the \d first cuts on record$/ }).click();
  expect(await typed.inputValue()).toMatch(/^2024-05-15\n2025-05-18/);
  await page.close();
});

test("a built-in figure that changed stands old beside new with what it would do, and is kept as her own for good", async () => {
  const page = await openPage(browser, address, "/farm/what-changed", PHONE);
  await page.getByText(/The built-in figures of 1 crop have changed/).waitFor();
  await page.getByRole("heading", { name: "Zinnia" }).waitFor();
  await page.getByText("1 days").waitFor();
  await page.getByText(/With all of them taken, 2027 is/).waitFor();
  await page.getByText(/stems cut, as before|stems cut now|nothing moves/).waitFor();
  expect(await scrollsSideways(page)).toBe(false);
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Keep mine" }).click();
  await page.getByText(/Every built-in figure of a crop or recipe that the farm uses stands/).waitFor();
  await page.close();
});
