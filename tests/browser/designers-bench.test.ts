import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { mayOpen } from "../../app/people/allowed";
import { type FarmWithPeople, farmWithPeople } from "./farm-with-people";
import { DESK, openBrowser, PHONE, scrollsSideways, violations } from "./open-page";

/** What a designer does with the farm, on a phone and at a desk; and that no page of theirs, or of a helper's, leads to what is not theirs. */

let farm: FarmWithPeople;
let browser: Browser;
let designer: Page;
let helper: Page;

beforeAll(async () => {
  farm = await farmWithPeople("2027-06-10");
  browser = await openBrowser();
  const owner = await farm.ownersPhone(browser);
  helper = await farm.helpersPhone(browser, owner, "Wren");
  designer = await farm.designersPhone(browser, owner, "Robin");
});
afterAll(async () => {
  await browser.close();
  await farm.end();
});

const said = (words: string | RegExp) => designer.locator(".lastchange", { hasText: words }).waitFor();

test("no link on a helper's or designer's page leads to what is not theirs", async () => {
  const pages = {
    helper: ["/today", "/picking", "/picking?booking=11", "/farm/cooler", "/beds/buds"],
    designer: [
      ...["/bookings", "/bookings/11", "/bookings/new", "/bookings/review", "/bench", "/beds", "/beds/1"],
      ...["/enquiry", "/enquiry?stemCount=12&colours=blush&role=focal&eventOn=2027-09-18"],
    ],
  } as const;
  for (const [page, role] of [
    [helper, "helper"],
    [designer, "designer"],
  ] as const)
    for (const path of pages[role]) {
      const answer = await page.context().request.get(farm.address + path, { maxRedirects: 0 });
      expect([path, answer.status()]).toEqual([path, 200]);
      const links = [...(await answer.text()).matchAll(/<a\b[^>]*\shref="(\/[^"?#]*)/g)].map(([, link]) => link);
      expect(links.length).toBeGreaterThan(3);
      // The farm's name leads everybody to where they begin.
      expect([path, links.filter((link) => link !== "/" && !mayOpen(role, link))]).toEqual([path, []]);
    }
});

const open = (path: string) => designer.goto(farm.address + path, { waitUntil: "load" });

test.each([
  ["a phone", PHONE],
  ["a desk", DESK],
] as const)(
  "at %s a designer answers an enquiry and holds it, cancels the booking and takes that back",
  async (where, viewport) => {
    await designer.setViewportSize(viewport);
    const client = `Party at ${where}`;
    await open("/enquiry?stemCount=12&colours=blush&role=focal&eventOn=2027-09-18");
    await designer.getByLabel("For whom").fill(client);
    await designer.getByRole("button", { name: "Hold it" }).click();
    await said(client);
    await open("/bookings");
    await designer.getByRole("link", { name: client }).first().click();
    await designer.getByRole("button", { name: "Cancel the booking" }).click();
    await said("cancelled");
    await designer.getByRole("button", { name: /^Undo/ }).click();
    await said("took back");
    for (const path of ["/bookings", "/bookings/review", "/bench", "/beds/1"]) {
      await open(path);
      expect([path, await scrollsSideways(designer)]).toEqual([path, false]);
    }
  },
);

test("a designer takes a final count and reviews an event", async () => {
  await open("/bookings");
  await designer.getByRole("button", { name: "It is final" }).first().click();
  await said("took the final count");
  await open("/bookings/review");
  expect(await violations(designer)).toEqual([]);
  await designer.getByRole("button", { name: "All used" }).first().click();
  await said("review");
});
