import Papa from "papaparse";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";

/** The four uses that the tool exists for, each as a grower does it, on the demo farm. */

let page: Page;
const demo = demoBrowser();

const open = async (path: string) => {
  page = await demo.open(path);
};
/** Stems short in weeks as the ribbon's links are called: "Week of 21 June: 177 needed, 13 covered, 164 short; 42 unclaimed". */
const shortIn = (weeks: string[]) =>
  weeks.reduce((sum, week) => sum + wholeNumber(/([\d,]+) short/.exec(week)?.[1] ?? ""), 0);
const wholeNumber = (text: string | null) => Number((text ?? "").replace(/[^\d]/g, ""));

test("entering a booking by keyboard: coverage shows while typing, bad input keeps what was typed, then it is saved", async () => {
  await open("/bookings/new");
  await page.getByLabel("Client", { exact: true }).fill("The Test Barn wedding (invented)");
  await page.getByLabel("Day of the event").fill("2027-09-11");
  await page.getByLabel("Palette, best colour first").fill("blush, mauve");
  await page.getByRole("button", { name: "Add a piece" }).click();
  await page.getByLabel("How many").fill("1");
  await page.keyboard.press("Enter");
  await page.getByLabel("How many").nth(1).fill("none");
  await page.getByRole("button", { name: "Save the booking" }).click();

  const alert = page.getByRole("alert").filter({ hasText: "Not saved" });
  await alert.waitFor();
  expect(await alert.textContent()).toContain('"mauve" may be lavender or pink');
  expect(await alert.textContent()).toContain("Piece 2");
  expect(await page.getByLabel("Client", { exact: true }).inputValue()).toBe("The Test Barn wedding (invented)");
  expect(await page.getByLabel("Palette, best colour first").getAttribute("aria-invalid")).toBe("true");

  await page.getByLabel("Palette, best colour first").fill("blush, cream");
  await page.getByLabel("How many").nth(1).fill("4");
  await page.locator('section[data-stale="false"]').waitFor();
  expect(await page.locator("section[data-stale]").textContent()).toMatch(/\d+ stems with spare/);
  await page.getByRole("button", { name: "Save the booking" }).click();
  await page.getByRole("heading", { level: 1, name: "The Test Barn wedding (invented)" }).waitFor();
  expect(new URL(page.url()).pathname).toMatch(/^\/bookings\/\d+$/);
  await page.close();
});

test("a save that no answer came to says so, keeps what was typed, and can be sent again", async () => {
  await open("/beds/1");
  await page.getByText("Change its name, size, flags or spray").click();
  const form = page.getByRole("form", { name: /^Bed / });
  await form.getByLabel("Note").fill("typed while the farm's computer was off");
  await page.route("**/beds/1", (route) => (route.request().method() === "POST" ? route.abort() : route.continue()));
  await form.getByRole("button", { name: "Save the bed" }).click();
  await form.getByText("no answer came from the farm’s computer").waitFor();
  expect(await form.getByLabel("Note").inputValue()).toBe("typed while the farm's computer was off");
  await page.unroute("**/beds/1");
  await form.getByRole("button", { name: "Save the bed" }).click();
  await form.getByText("✓ Saved").waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.close();
});

test("each problem at the top of a form leads to its field", async () => {
  await open("/bookings/new");
  await page.getByLabel("Client", { exact: true }).fill("");
  await page.getByRole("button", { name: "Add a piece" }).click();
  await page.getByLabel("How many").fill("none");
  await page.getByRole("button", { name: "Save the booking" }).click();
  const alert = page.getByRole("alert").filter({ hasText: "Not saved" });
  await alert.getByRole("link", { name: "Piece 1, how many" }).click();
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-invalid"))).toBe("true");
  const target = await alert.getByRole("link", { name: "Client" }).getAttribute("href");
  expect(await page.evaluate((id) => document.getElementById(id)?.getAttribute("name"), String(target).slice(1))).toBe(
    "client",
  );
  await page.close();
});

test("rows pasted from a spreadsheet become pieces; a row that cannot be read stays with its problem", async () => {
  await open("/bookings/new");
  await page.getByText("Paste rows from a spreadsheet").click();
  await page.getByLabel("Rows").fill("Low centrepiece\t12\nfocal\t40\tblush, cream\nLow centrepeice\t3");
  await page.getByRole("button", { name: "Put the rows into the booking" }).click();
  await page.getByText("Row 3:").waitFor();
  expect(await page.getByLabel("Rows").inputValue()).toContain("Low centrepeice");
  expect(await page.getByLabel("How many").inputValue()).toBe("12");
  expect(await page.getByLabel("Stems, focal", { exact: true }).inputValue()).toBe("40");
  await page.close();
});

test("a booking is cancelled, and undo brings it back", async () => {
  await open("/bookings");
  const row = page.getByRole("listitem").filter({ hasText: "The Test Barn wedding" });
  await row.getByRole("link").click();
  await page.getByRole("button", { name: "Cancel the booking" }).click();
  const takeBack = page.getByRole("button", { name: "Take it back as an enquiry" });
  await takeBack.waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Cancel the booking" }).waitFor();
  expect(await takeBack.count()).toBe(0);
  await page.close();
});

test("seeing weekly gaps: the largest first with its rings, and for each why and what could cover it", async () => {
  await open("/");
  const counts = (await page.locator(".gap-count").allTextContents()).map(wholeNumber);
  expect(counts).toEqual(counts.toSorted((a, b) => b - a));
  const short = page.locator(".gap-head", { hasText: "Jun" }).first();
  expect(await short.textContent()).toMatch(/^\d+ short for.+ wedding\d+ Jun/);
  await short.click();
  await page.getByRole("heading", { name: /the largest first/ }).waitFor();
  const gap = page.locator(".gap-fold[open]");
  expect(await gap.count()).toBe(1);
  const said = (await gap.textContent()) ?? "";
  expect(said).toMatch(/\d+ stems?: (in bloom|focal is in bloom|blooms near|nothing more)/);
  expect(said).toMatch(/going to [A-Z].+ wedding/);
  expect(said).toMatch(/\d+ \w.+, bed \w/);
  expect(said).toMatch(/Buy in \d+ stems?/);
  await page.close();
});

test("changing a bed's treatment closes a June gap, and undo opens it again", async () => {
  const juneShort = async () => {
    await page.goto(`${demoAddress()}/`, { waitUntil: "networkidle" });
    const weeks = await page.locator("a.week-hit").evaluateAll((links) => links.map((link) => link.ariaLabel ?? ""));
    return shortIn(weeks.filter((week) => /(June|July):/.test(week)));
  };
  await open("/");
  const before = await juneShort();
  expect(before).toBeGreaterThan(0);
  await page.goto(`${demoAddress()}/beds?crop=Dahlia`, { waitUntil: "networkidle" });
  await page
    .getByRole("link", { name: /Long Field 1\b/ })
    .first()
    .click();
  await page
    .getByRole("button", { name: /Keep in the ground/ })
    .first()
    .click();
  await page
    .getByRole("button", { name: /Dig and replant/ })
    .first()
    .waitFor();
  const after = await juneShort();
  expect(after).toBeLessThan(before);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.waitForLoadState("networkidle");
  expect(await juneShort()).toBe(before);
  await page.close();
});

test("exporting a pick list: the CSV of a booking and its screen say the same stems, and the calendar is one", async () => {
  await open("/picking?booking=3");
  const stems = (await page.locator(".pick-for").allTextContents()).map((words) =>
    wholeNumber(/keep ([\d,]+)/.exec(words)?.[1] ?? null),
  );
  const csv = await (await page.request.get(`${demoAddress()}/picking/csv?booking=3`)).text();
  const rows = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data;
  const sum = (numbers: number[]) => numbers.reduce((total, number) => total + number, 0);
  expect(rows.length).toBe(stems.length);
  expect(sum(rows.map((row) => Number(row.stems)))).toBe(sum(stems));
  expect(sum(stems)).toBeGreaterThan(100);
  const calendar = await page.request.get(`${demoAddress()}/picking/calendar`);
  expect(calendar.headers()["content-type"]).toContain("text/calendar");
  expect(await calendar.text()).toContain("BEGIN:VEVENT");
  await page.close();
});
