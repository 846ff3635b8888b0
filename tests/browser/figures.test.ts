import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";
import { PHONE, scrollsSideways, violations } from "./open-page";

/** The farm's figures, each changed where it stands. */

const { open } = demoBrowser();

const line = (page: Page, label: string) => page.locator("details.figure", { hasText: label }).first();
const inFocus = (page: Page) => page.evaluate(() => document.activeElement?.closest("summary")?.textContent ?? "");

test("by keyboard alone a figure is opened, kept, and undone at the head of the page; the line takes the focus back", async () => {
  const page = await open("/farm");
  await line(page, "A tuber costs").locator("summary").focus();
  await page.keyboard.press("Enter");
  // An open line gives its field the focus: a hand waits to see it, and so does this.
  await line(page, "A tuber costs").locator("input:focus").waitFor();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("7.25");
  await page.keyboard.press("Enter");
  await page.getByText("Saved: changed “A tuber costs”, now $7.25").waitFor();
  await expect.poll(() => inFocus(page)).toContain("$7.25");
  await page.getByRole("button", { name: "Undo" }).click();
  await line(page, "A tuber costs").locator("summary").getByText("6.00").waitFor();
  await page.close();
});

test("one line is open at a time; left as it was, it forgets what was typed", async () => {
  const page = await open("/farm", PHONE);
  await line(page, "Storage of a clump").locator("summary").click();
  await line(page, "Digging").locator("summary").click();
  expect(await page.locator("details.figure[open]").count()).toBe(1);
  expect(await violations(page)).toEqual([]);
  expect(await scrollsSideways(page)).toBe(false);
  const field = line(page, "Digging").getByRole("textbox");
  await field.fill("99");
  await line(page, "Digging").getByRole("button", { name: "Leave 30 clumps per hour" }).click();
  expect(await page.locator("details.figure[open]").count()).toBe(0);
  await page.reload({ waitUntil: "networkidle" });
  expect(await page.getByText("This browser has kept it").count()).toBe(0);
  await page.close();
});

test("a date that breaks the order of frosts is refused at its line, and stays to be mended", async () => {
  const page = await open("/farm");
  const frost = line(page, "First frost of autumn, early year");
  await frost.locator("summary").click();
  await frost.getByRole("textbox").fill("12-24");
  await page.keyboard.press("Enter");
  await frost.getByText("must come in order").first().waitFor();
  expect(await frost.getByRole("textbox").inputValue()).toBe("12-24");
  await page.close();
});
