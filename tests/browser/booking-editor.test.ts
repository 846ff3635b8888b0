import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";

/** The booking editor by hand: the matrix of pieces, colours of the farm's own, what was typed and not saved. */

let page: Page;
const demo = demoBrowser();

const open = async (path: string) => {
  page = await demo.open(path);
};
const counts = () => page.getByLabel(/^How many, /);

test("ten pieces are entered by keyboard alone, with their needs and shorts in the foot before the booking has a name", async () => {
  await open("/bookings/new");
  await page.getByLabel("Day of the event").fill("2027-09-11");
  await page.getByRole("button", { name: "Add a piece" }).focus();
  await page.keyboard.press("Enter");
  for (let piece = 1; piece <= 10; piece++) {
    await page.waitForFunction((count) => document.querySelectorAll(".matrix-line").length === count, piece);
    await page.keyboard.press("Tab");
    await page.keyboard.type(String(piece));
    if (piece < 10) await page.keyboard.press("Enter");
  }
  expect(await counts().evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value))).toEqual([
    "1",
    "2",
    "3",
    "4",
    "5",
    "6",
    "7",
    "8",
    "9",
    "10",
  ]);
  await page.locator('section[data-stale="false"]').waitFor();
  const foot = page.locator(".matrix tfoot tr").first();
  const sums = await foot
    .locator(".stems")
    .evaluateAll((cells) => cells.map((cell) => Number(cell.textContent?.replace(/\D/g, ""))));
  const total = Number((await foot.locator(".total").textContent())?.replace(/\D/g, ""));
  expect(sums.reduce((sum, stems) => sum + stems, 0)).toBe(total);
  expect(total).toBeGreaterThan(500);
  await page.close();
});

test("a count goes up and down by key and by button; at nought its line goes, and can be put back", async () => {
  await open("/bookings/new");
  await page.getByRole("button", { name: "Add a piece" }).click();
  await counts().fill("1");
  await page.keyboard.press("ArrowUp");
  expect(await counts().inputValue()).toBe("2");
  await page.getByRole("button", { name: /^One fewer: / }).click();
  expect(await counts().inputValue()).toBe("1");
  await page.getByRole("button", { name: /^One fewer: / }).click();
  expect(await counts().count()).toBe(0);
  await page.getByRole("button", { name: "Put it back" }).click();
  expect(await counts().inputValue()).toBe("1");
  await page.close();
});

test("a colour that nobody knows is asked about once, remembered, and undone like any change", async () => {
  await open("/bookings/new");
  const palette = page.getByLabel("Palette, best colour first");
  const asked = page.getByLabel("Which of our colours is “antique rose”?");
  await palette.fill("blush, antique rose");
  await asked.selectOption("pink");
  await asked.waitFor({ state: "detached" });
  await palette.fill("Antique Roses");
  await page.locator(".colours", { hasText: "pink" }).first().waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await palette.fill("antique rose");
  await asked.waitFor();
  await page.close();
});

test("a pasted row with a colour of the farm's own asks for it, and goes in once it is told", async () => {
  await open("/bookings/new");
  await page.getByText("Paste rows from a spreadsheet").click();
  await page.getByLabel("Rows", { exact: true }).fill("Low centerpieces\t3\tdove");
  await page.getByRole("button", { name: "Put the rows into the booking" }).click();
  const asked = page.getByLabel("Which of our colours is “dove”?");
  await asked.selectOption("silver");
  await asked.waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Put the rows into the booking" }).click();
  await counts().waitFor();
  expect(await counts().inputValue()).toBe("3");
  await page.getByRole("button", { name: "Undo: changed the farm's settings" }).click();
  await page.close();
});

test("what was typed and not saved is offered again after the page was left", async () => {
  await open("/bookings/new");
  await page.getByLabel("Client", { exact: true }).fill("Left in the rain");
  await page.getByRole("button", { name: "Add a piece" }).click();
  await counts().fill("7");
  await page.waitForFunction(() => Object.values(localStorage).some((kept) => kept.includes("Left in the rain")));
  await page.goto(`${demoAddress()}/bookings`);
  await page.goto(`${demoAddress()}/bookings/new`);
  await page.getByRole("button", { name: "Fill it in again" }).click();
  expect(await page.getByLabel("Client", { exact: true }).inputValue()).toBe("Left in the rain");
  expect(await counts().inputValue()).toBe("7");
  await page.close();
});

test("the farm's own sheets brought back say that there is nothing to change, and an edit says what it would change", async () => {
  await open("/farm/files");
  const address = demoAddress();
  const zip = await (await page.request.get(`${address}/farm/files/all`)).body();
  const choose = page.getByLabel("Spreadsheets: CSV or XLSX, or a zip of them");
  await choose.setInputFiles({ name: "farm-sheets.zip", mimeType: "application/zip", buffer: zip });
  await page.getByRole("button", { name: "Check, write nothing" }).click();
  await page.getByText("Nothing to change").waitFor();
  const beds = await (await page.request.get(`${address}/farm/files/sheet/beds.csv`)).text();
  await page.reload();
  const edited = beds.replace(/^(Long Field 2),([\d.]+),/m, "$1,99,");
  await choose.setInputFiles({ name: "beds.csv", mimeType: "text/csv", buffer: Buffer.from(edited) });
  await page.getByRole("button", { name: "Check, write nothing" }).click();
  await page.getByRole("button", { name: "Change 1 row" }).waitFor();
  expect(await page.getByRole("row", { name: /^Long Field 2 / }).textContent()).toMatch(/length_m: .*99/);
  await page.close();
});
