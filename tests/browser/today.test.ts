import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, PHONE, scrollsSideways, violations } from "./open-page";
import { ownDemo } from "./own-demo";

/** A picking day in the demo's season, recorded on the phone. */

const demo = ownDemo("2027-06-10");
const open = (viewport = PHONE, path = "/today"): Promise<Page> => demo.open(path, viewport);
const rows = (page: Page) => page.locator(".cut-rows > li");
const firstName = async (page: Page) => (await rows(page).first().locator("form").getAttribute("aria-label")) ?? "";

test("a row that came as asked is saved with one tap, stands among the recorded ones, and can be taken back", async () => {
  const page = await open();
  const before = await rows(page).count();
  const name = (await firstName(page)).replace("Record ", "");
  const asked = Number(await rows(page).first().locator("input[name=stemsCut]").inputValue());
  await rows(page)
    .first()
    .getByRole("button", { name: `Save ${asked}`, exact: true })
    .click();
  await page.getByText("Recorded: 1 row").waitFor();
  expect(await rows(page).count()).toBeLessThan(before);
  expect(
    await page.locator(".cut-rows form").evaluateAll((forms) => forms.map((form) => form.ariaLabel)),
  ).not.toContain(`Record ${name}`);
  await page.getByText("Recorded: 1 row").click();
  await page.getByText(`${asked} cut, as asked`).waitFor();
  await page.getByRole("button", { name: "Take back" }).click();
  await page.getByText("Recorded: 1 row").waitFor({ state: "detached" });
  expect(await rows(page).count()).toBe(before);
  expect((await firstName(page)).replace("Record ", "")).toBe(name);
  await page.close();
});

test("fewer and none are saved as they came, and the list asks other beds for what is missing or says what is short", async () => {
  const page = await open();
  for (const bed of await page.locator("section[aria-labelledby=to-cut] summary").all()) await bed.click();
  const peas = rows(page).filter({ hasText: "Sweet pea" }).first();
  const asked = Number(await peas.locator("input[name=stemsCut]").inputValue());
  await peas.getByRole("button", { name: /^One fewer/ }).click();
  await peas.getByRole("button", { name: `Save ${asked - 1}`, exact: true }).click();
  await page.getByText("Recorded: 1 row").waitFor();
  await page.getByText("Recorded: 1 row").click();
  await page.getByText(`${asked - 1} of ${asked} cut`).waitFor();
  const next = rows(page).first();
  const wanted = await next.locator("input[name=stemsCut]").inputValue();
  await next.getByRole("button", { name: "None left" }).click();
  await page.getByText("Recorded: 2 rows").waitFor();
  await page.getByText(`none left of ${wanted}`).waitFor();
  await page.close();
});

test("a row that is left waits for the next picking day with a tap, and is taken back; one that cannot wait says why", async () => {
  const page = await open();
  for (const bed of await page.locator("section[aria-labelledby=to-cut] summary").all()) await bed.click();
  // Most of this day's rows cannot: the list says it once, and the rows that can have the button.
  await page.getByText(/^\d+ of these \d+ rows cannot wait for another picking day/).waitFor();
  await page
    .getByText(/^Sat 12 Jun is too late for /)
    .first()
    .waitFor();
  expect(await page.getByText(/^Cannot wait: /).count()).toBe(0);
  const before = await recordedCount(page);
  const waits = page.locator(".cut-rows form", { has: page.locator("button[name=rest]") }).first();
  await waits.locator("button[name=rest]").click();
  await expect.poll(() => recordedCount(page), { timeout: 30_000 }).toBe(before + 1);
  await page.getByText(/^Recorded: /).click();
  const done = page.locator(".done-rows li", { hasText: "cut, the rest waits" });
  await done.getByRole("button", { name: "Take back" }).click();
  await done.waitFor({ state: "detached" });
  await page.close();
});

test("a number that is none is refused at its field, and nothing is recorded", async () => {
  const page = await open();
  const recorded = await page.getByText(/^Recorded: /).count();
  await rows(page).first().locator("input[name=stemsCut]").fill("some");
  await rows(page).first().getByRole("button", { name: "Save" }).click();
  await page.getByRole("alert").first().waitFor();
  expect(await page.getByText(/^Recorded: /).count()).toBe(recorded);
  await page.close();
});

test("a day behind is marked as not recorded, and is recorded late on its own page", async () => {
  const page = await open();
  await page.getByText(/Not recorded: \d+ picking days?/).click();
  await page.locator("a[href^='/today?day=']").first().click();
  await page.getByRole("heading", { name: "Not recorded: counts as cut as planned" }).waitFor();
  const recorded = page.getByText(/^Recorded: \d+ rows?/);
  const before = await recorded.allTextContents();
  await rows(page)
    .first()
    .getByRole("button", { name: /^Save \d+$/ })
    .click();
  // The row may ask for more of what is recorded already: then stems are added, and no row.
  await expect.poll(() => recorded.allTextContents()).not.toEqual(before);
  await page.close();
});

/** Rows of the day that are recorded. */
async function recordedCount(page: Page): Promise<number> {
  const said = await page.getByText(/^Recorded: \d+ rows?/).allTextContents();
  return Number(/\d+/.exec(said[0] ?? "")?.[0] ?? 0);
}

test("today reads well for everybody, at both widths", async () => {
  for (const viewport of [DESK, PHONE]) {
    const page = await open(viewport);
    expect(await violations(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
    await page.close();
  }
});
