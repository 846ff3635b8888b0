import { expect, test } from "vitest";
import { DESK, PHONE, scrollsSideways, violations } from "./open-page";
import { ownDemo } from "./own-demo";

/** What is over is offered to buyers, on a day of the demo's season. */

const { open, address } = ownDemo("2027-07-20");

test("from Buying the way leads to the offers, in whole bunches, and the CSV has as many rows", async () => {
  const page = await open("/buying");
  await page.getByRole("link", { name: "What to offer buyers" }).click();
  await page.getByRole("heading", { name: "Offers, Tue 20 Jul" }).waitFor();
  await page.getByText(/nobody’s even in a poor year/).waitFor();
  const rows = (await page.getByRole("row").count()) - 1;
  const csv = await (await page.request.get(`${address()}/buying/offers/csv`)).text();
  expect(csv.trim().split("\r\n").length - 1).toBe(rows);
  expect(rows).toBeGreaterThan(0);
  await page.close();
});

test("offers read well for everybody, at both widths", async () => {
  for (const viewport of [DESK, PHONE]) {
    const page = await open("/buying/offers", viewport);
    expect(await violations(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
    await page.close();
  }
});
