import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { breaches, openBrowser, openPage } from "./open-page";

/** The autumn decision as a grower makes it, from the proven plan to the worksheet, on the demo farm; each test goes on from the one before. */

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await openBrowser();
  page = await openPage(browser, demoAddress(), "/keep-or-dig");
});
afterAll(async () => {
  await browser.close();
  expect(breaches).toEqual([]);
});

const go = (path: string) => page.goto(demoAddress() + path, { waitUntil: "networkidle" });
const wholeNumber = (text: string | null) => Number((text ?? "").replace(/[^\d]/g, ""));
const focalShort = async () => {
  await page.locator('.net-cost[data-stale="false"]').waitFor();
  return wholeNumber(await page.locator(".net-cost .focal-short").textContent());
};
const keep = (bed: string) => page.getByRole("checkbox", { name: `Keep ${bed}`, exact: true });

test("Season leads with the beds to keep: adopted there, it says they stay, and undo opens the question again", async () => {
  await go("/");
  const answer = page.getByRole("heading", { level: 1 });
  await page.getByText(/better than digging every bed/).waitFor();
  expect(await answer.textContent()).toMatch(/^[\d,]+ of [\d,]+ *short focal stems are covered if these .* beds stay/);
  const stands = await shortInSeason();
  await page.getByText(/better than digging every bed/).waitFor();
  await page.getByRole("button", { name: /^Adopt these / }).click();
  await page.getByText(/^Saved: .*keep beds/).waitFor();
  await page.getByText(/covered now that these .* beds stay/).waitFor();
  expect(await page.getByRole("button", { name: /^Adopt these / }).count()).toBe(0);
  expect(await shortInSeason()).toBeLessThan(stands);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText(/Saved: took back: /).waitFor();
  expect(await shortInSeason()).toBe(stands);
  await go("/keep-or-dig");
});

test("the tool finds the beds to keep, proves that none are cheaper, and says what they cover", async () => {
  const before = await focalShort();
  await page.getByRole("button", { name: "Find the best beds" }).click();
  await page.getByText(/Best for these numbers: \d+ % of the clumps survive the winter, first cut \d+ June/).waitFor();
  expect(await focalShort()).toBeLessThan(before);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toMatch(/^Keep \w+ beds, dig the rest$/);
  expect(await page.locator(".keep-answer").textContent()).toMatch(/Keep beds .*: [\d,]+ of [\d,]+ short focal stems/);
});

test("every bed adds up by hand, to the cent: dug less kept is what keeping saves", async () => {
  await page.getByText("each bed’s worth added up").click();
  await page.locator('.cost-parts [data-stale="false"] .bed-sums').waitFor();
  await expect.poll(() => page.locator(".bed-sums").textContent()).not.toContain("…");
  const cents = (text: string) => Number(text.replace("−", "-").replace(/[$,.]/g, ""));
  const rows = await page.locator(".bed-sums tbody tr").all();
  expect(rows.length).toBeGreaterThan(10);
  for (const row of rows) {
    const cells = (await row.locator("td").allTextContents()).filter((text) => text.includes("$"));
    const [dug, matchDug, kept, matchKept, saves] = cells.map(cents);
    expect(dug + matchDug - kept - matchKept).toBe(saves);
  }
});

test("flagged beds cannot be ticked, and say why in words", async () => {
  const forbidden = page.getByRole("checkbox", { disabled: true });
  expect(await forbidden.count()).toBeGreaterThan(0);
  const why = await forbidden.first().getAttribute("aria-describedby");
  expect(await page.locator(`#${why}`).textContent()).toMatch(/wet|virus|vole|wanted|crowded|precious/);
});

test("a November choice reckons with Saturdays still to be booked as many as the farm says, four on the demo, and with those again when it is taken back", async () => {
  await go("/keep-or-dig");
  const before = await focalShort();
  await go("/farm");
  const line = page.locator("details.figure", { hasText: "Free Saturdays that will still be booked" }).first();
  await line.locator("summary").click();
  await line.getByRole("textbox").fill("8");
  await line.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText(/Saved: changed “Free Saturdays/).waitFor();
  await go("/keep-or-dig");
  await page.getByText("8 free Saturdays").waitFor();
  expect(await focalShort()).toBeGreaterThan(before);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText(/Saved: took back: /).waitFor();
  await page.getByText("4 free Saturdays").waitFor();
  expect(await focalShort()).toBe(before);
});

test("ticking two beds by hand moves the June gap, before anything is written", async () => {
  await page.getByRole("button", { name: "As the farm stands" }).click();
  const before = await focalShort();
  await keep("Long Field 2").check();
  await expect.poll(focalShort).toBeLessThan(before);
  const one = await focalShort();
  await keep("Long Field 7").check();
  await expect.poll(focalShort).toBeLessThan(one);
  const june = page.locator("tr", { hasText: /Week of \d+ June/ });
  expect(await june.filter({ hasText: "better" }).count()).toBeGreaterThan(0);
});

test("how sure that is: the first sampled seasons give a chance with its standard error, and a thousand sharpen it", async () => {
  await page.getByRole("button", { name: "Sample 1,000 seasons" }).click();
  await page.getByText(/In \d+ % ± [\d.]+ % of \d{2,3} sampled seasons these beds cost less/).waitFor();
  const sharpened = page.getByText(/In \d+ % ± [\d.]+ % of 1,000 sampled seasons these beds cost less/);
  await sharpened.waitFor();
  expect(await sharpened.isVisible()).toBe(true);
});

test("two what-ifs are kept and stand side by side with the farm as it stands", async () => {
  await saveAs("Keep two beds");
  await go("/keep-or-dig");
  await keep("Long Field 8").check();
  await focalShort();
  await saveAs("Keep one bed");
  await go("/what-if");
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toMatch(
    /^Two beds kept win back [\d,]+ stems; one bed kept wins back [\d,]+$/,
  );
  const heads = (await page.locator("thead").first().locator("th").allTextContents()).join(" | ");
  for (const name of ["As it stands", "Keep two beds", "Keep one bed"]) expect(heads).toContain(name);
});

test("one is adopted, undone, and adopted again: the season follows each time", async () => {
  const before = await shortInSeason();
  await adopt("Keep two beds");
  const adopted = await shortInSeason();
  expect(adopted).toBeLessThan(before);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText(/Saved: took back: /).waitFor();
  expect(await shortInSeason()).toBe(before);
  await adopt("Keep two beds");
  expect(await shortInSeason()).toBe(adopted);
});

test("Season shows the new bloom and Picking cuts in it in June", async () => {
  await go("/");
  const strip = page.getByRole("img", { name: /^Dahlia in / });
  expect(await strip.getAttribute("aria-label")).toMatch(/cut from \d+ Jun .*kept in the ground: .*Long Field 2/);
  const csv = await (await page.request.get(`${demoAddress()}/picking/csv`)).text();
  const juneCuts = csv.split("\r\n").filter((row) => /^2027-06-\d\d,Long Field [27],/.test(row));
  expect(juneCuts.length).toBeGreaterThan(0);
});

test("the winter worksheet prints the kept beds with quantities and boxes to tick", async () => {
  await go("/keep-or-dig/worksheet");
  const sheet = await page.locator("main").textContent();
  expect(sheet).toContain("Long Field 2");
  expect(sheet).toMatch(/cubic yards/);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("nav").first().isVisible()).toBe(false);
  expect(await page.locator(".tickbox").count()).toBeGreaterThan(5);
  await page.emulateMedia({ media: "screen" });
});

test("at the end every change is taken back from the history, and the farm stands as at first", async () => {
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText(/Saved: took back: /).waitFor();
  await go("/keep-or-dig");
  expect(await keep("Long Field 2").isChecked()).toBe(false);
});

async function saveAs(name: string): Promise<void> {
  await page.getByText("Or keep them as a what-if").click();
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByRole("button", { name: "Save as a what-if" }).click();
  await page.getByText(`Saved: kept the what-if ${name}`).waitFor();
}

async function adopt(name: string): Promise<void> {
  await go("/what-if");
  await page
    .getByRole("form", { name: `Adopt ${name}` })
    .getByRole("button", { name: /^Adopt / })
    .click();
  await page.getByText(`Saved: adopted the what-if ${name}`).waitFor();
}

async function shortInSeason(): Promise<number> {
  await go("/");
  const labels = await page.locator("a.week-hit").evaluateAll((links) => links.map((link) => link.ariaLabel ?? ""));
  return labels.reduce((sum, label) => sum + wholeNumber(/([\d,]+) short/.exec(label)?.[1] ?? ""), 0);
}
