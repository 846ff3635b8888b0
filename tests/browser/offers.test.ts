import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { breaches, DESK, openBrowser, openPage, PHONE, scrollsSideways, violations } from "./open-page";
import { serveDemo } from "./serve-demo";

/** What is over is offered to buyers, on a day of the demo's season. */

let browser: Browser;
let demo: Awaited<ReturnType<typeof serveDemo>>;
beforeAll(async () => {
  demo = await serveDemo("2027-07-20");
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await demo.end();
  expect(breaches).toEqual([]);
});

test("from Buying the way leads to the offers, in whole bunches, and the CSV has as many rows", async () => {
  const page = await openPage(browser, demo.address, "/buying", DESK);
  await page.getByRole("link", { name: "What to offer buyers" }).click();
  await page.getByRole("heading", { name: "Offers, Tue 20 Jul" }).waitFor();
  await page.getByText(/nobody’s even in a poor year/).waitFor();
  const rows = (await page.getByRole("row").count()) - 1;
  const csv = await (await page.request.get(`${demo.address}/buying/offers/csv`)).text();
  expect(csv.trim().split("\r\n").length - 1).toBe(rows);
  expect(rows).toBeGreaterThan(0);
  await page.close();
});

test("offers read well for everybody, at both widths", async () => {
  for (const viewport of [DESK, PHONE]) {
    const page = await openPage(browser, demo.address, "/buying/offers", viewport);
    expect(await violations(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
    await page.close();
  }
});
