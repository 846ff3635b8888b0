import { expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";
import { violations } from "./open-page";

/** Which colours go into which wedding, and what can be bought in for it, on the demo farm. */

const demo = demoBrowser();

test("a coral wedding gets no blue statice: its pick list has fillers, and none of them is blue, purple or lavender", async () => {
  const page = await demo.open("/bookings");
  const href = await page.getByRole("link", { name: /Sedgeley wedding/ }).getAttribute("href");
  const id = /(\d+)$/.exec(href ?? "")?.[1];
  const csv = await (await page.request.get(`${demoAddress()}/picking/csv?booking=${id}`)).text();
  const [header, ...rows] = csv
    .replace(/^\uFEFF/, "")
    .trim()
    .split("\r\n")
    .map((line) => line.split(","));
  const cell = (row: readonly string[], name: string) => row[header.indexOf(name)];
  const fillers = rows.filter((row) => /filler|foliage/.test(row.join()));
  expect(fillers.length).toBeGreaterThan(0);
  const allowed = ["coral", "peach", "pink", "apricot", "white", "cream", "green", "silver"];
  for (const row of fillers) expect(allowed).toContain(cell(row, "colour"));
  await page.close();
});

test("Buying names the colour of each flower, and axe finds nothing", async () => {
  const page = await demo.open("/buying?from=start");
  const lines = await page.locator(".slip[aria-labelledby] .slip-what small").allTextContents();
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^(any colour|[a-z]+)[,;]/);
  // What is ordered already is called as it will stand in the cooler.
  const ordered = await page.locator("[aria-labelledby='on-the-way'] .slip-what b").allTextContents();
  expect(ordered.length).toBeGreaterThan(0);
  for (const flower of ordered) expect(flower).toMatch(/^[A-Z][a-z ]+, [a-z]+$/);
  expect(await violations(page)).toEqual([]);
  await page.close();
});
