import { describe, expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";
import { DESK, PHONE, scrollsSideways, violations } from "./open-page";

/** Every screen of the demo farm, as it first opens. */
const SCREENS = [
  { path: "/", heading: /focal stems/ },
  { path: "/?role=foliage", heading: /focal stems/ },
  { path: "/weeks/2027-W25", heading: /in the week of 21 June/ },
  { path: "/bookings", heading: /Bookings of 2027/ },
  { path: "/bookings/new", heading: /New booking/ },
  { path: "/bookings/1", heading: /./ },
  { path: "/bookings/review", heading: /^Review of/ },
  { path: "/bookings/season", heading: /^What became of/ },
  { path: "/orders", heading: /^Standing orders of/ },
  { path: "/orders?order=1", heading: /^Standing orders of/ },
  { path: "/today", heading: /November 2026/ },
  { path: "/bench", heading: /^Bench/ },
  { path: "/beds", heading: /Beds/ },
  { path: "/beds/1", heading: /./ },
  { path: "/keep-or-dig", heading: /^(Dig every bed|Keep .* beds?, dig the rest)$/ },
  { path: "/keep-or-dig/worksheet", heading: /worksheet/i },
  { path: "/what-if", heading: /What if|wins? back|takes? / },
  { path: "/enquiry", heading: /^Can you do it/ },
  {
    path: "/enquiry?stemCount=120&colours=blush&role=focal&eventOn=2027-06-19",
    heading: /^(Yes|Likely|Partly|Perhaps|No)/,
  },
  { path: "/beds/grid", heading: /Many at once/ },
  { path: "/beds/buds", heading: /Bud walk/ },
  { path: "/picking", heading: /Picking/ },
  { path: "/picking?booking=1", heading: /Pick list for/ },
  { path: "/picking/print?booking=1", heading: /Pick list/ },
  { path: "/buying", heading: /Buying/ },
  { path: "/buying/offers", heading: /^Offers/ },
  { path: "/farm", heading: /Set these four first/ },
  { path: "/farm/crops", heading: /crops/i },
  { path: "/farm/crops/1", heading: /./ },
  { path: "/farm/recipes", heading: /recipes/i },
  { path: "/farm/what-changed", heading: /what changed/i },
  { path: "/farm/weather", heading: /weather/i },
  { path: "/farm/winter", heading: /Set these four first/ },
  { path: "/farm/files", heading: /files/i },
  { path: "/farm/cooler", heading: /cooler/i },
  { path: "/farm/year-end", heading: /^Year’s end/ },
  { path: "/farm/year-end/how-true", heading: /^How true was 2026/ },
  { path: "/farm/copies", heading: /copies/i },
  { path: "/farm/history", heading: /changes|history/i },
];

const { browser, open } = demoBrowser();

/** Screens with the most on them: a phone scrolls ten times its height through them at the most. */
const FULLEST = [
  "/",
  "/weeks/2027-W25",
  "/keep-or-dig",
  "/keep-or-dig/worksheet",
  "/what-if",
  "/orders",
  "/bookings/review",
  "/farm/year-end/how-true",
];

describe.each(SCREENS)("$path", ({ path, heading }) => {
  test("shows its heading, axe finds nothing, and no page scrolls sideways or without end, on a desk and as narrow as a phone", async () => {
    const page = await open(path, DESK);
    expect(await page.locator("h1").first().textContent()).toMatch(heading);
    for (const viewport of [DESK, PHONE]) {
      await page.setViewportSize(viewport);
      expect(await violations(page)).toEqual([]);
      expect(await scrollsSideways(page)).toBe(false);
    }
    const screens = await page.evaluate(() => document.documentElement.scrollHeight / window.innerHeight);
    if (FULLEST.includes(path)) expect(screens).toBeLessThanOrEqual(10);
    await page.close();
  });
});

test.each([
  "/bookings/99999",
  "/bookings/abc",
  "/beds/99999",
  "/weeks/2027-W53",
  "/weeks/soon",
  "/farm/crops/99999",
  "/nowhere",
])("%s leads nowhere, says so, and offers a way on", async (path) => {
  const page = await browser().newPage();
  const answer = await page.goto(demoAddress() + path);
  expect(answer?.status()).toBe(404);
  expect(await page.locator("h1").textContent()).toBe("There is nothing at this address");
  expect(await page.locator("main a").count()).toBeGreaterThan(2);
  await page.close();
});

describe("a pick list on paper", () => {
  test("prints without the screen's furniture, with a box to tick and room to write for every line", async () => {
    const page = await open("/picking/print?booking=1");
    await page.emulateMedia({ media: "print" });
    for (const nav of await page.locator("nav").all()) expect(await nav.isVisible()).toBe(false);
    const lines = await page.locator("tr.pick-line").count();
    expect(lines).toBeGreaterThan(0);
    expect(await page.locator(".tickbox").count()).toBe(lines);
    expect(await page.locator(".write-line").count()).toBe(lines);
    await page.close();
  });

  test("of a week is one walk with a column for each picking day, and leads to each day's own sheet", async () => {
    const page = await open("/picking/print?week=2027-W36");
    const sheets = page.getByText("A day’s own sheet").getByRole("link");
    expect(await sheets.count()).toBe(4);
    expect(await page.locator(".paper-week thead th").count()).toBe(2 + 4);
    await sheets.first().click();
    await page.waitForURL(/day=2027-09-/);
    await page.locator(".ties").waitFor();
    await page.emulateMedia({ media: "print" });
    const kept = await page
      .locator(".day-paper > h2, .day-paper > p")
      .evaluateAll((heads) => heads.length > 0 && heads.every((head) => getComputedStyle(head).breakAfter === "avoid"));
    expect(kept).toBe(true);
    await page.close();
  });
});
