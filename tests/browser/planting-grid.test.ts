import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

/** Many plantings at once: pasted, repeated, counted from their spacing, checked and written as one change. */

let page: Page;
const { open } = demoBrowser();

test("rows are pasted into the grid, repeated and counted, told cell by cell what is wrong, and then written and undone", async () => {
  page = await open("/beds/grid");
  const section = page.locator(".sheet-grid").first();
  const cell = (label: string, row: number) => section.getByLabel(`${label}, row ${row}`);
  await cell("Bed", 1).focus();
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData("text", "Long Field 2\tZinnia\tGrid Trial\tcoral\t2027\tfield\t20 May 2027\t");
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  expect(await cell("Variety", 1).inputValue()).toBe("Grid Trial");
  await page.getByLabel(/^Distance, /).fill("12");
  await page.getByRole("button", { name: "Count the plants" }).click();
  expect(await cell("Plants", 1).inputValue()).toBe("150");
  await page.getByLabel("How many times").fill("2");
  await page.getByRole("button", { name: "Repeat", exact: true }).click();
  expect(await cell("Planted or sown on", 3).inputValue()).toBe("2027-06-17");
  await cell("Crop", 2).fill("Zinia");
  await section.getByRole("button", { name: "Check, write nothing" }).click();
  await section.getByText(/did you mean "Zinnia"/).waitFor();
  expect(await cell("Crop", 2).getAttribute("aria-invalid")).toBe("true");
  await cell("Crop", 2).fill("Zinnias");
  await section.getByRole("button", { name: "Check, write nothing" }).click();
  await section.getByRole("button", { name: "Add 3 rows" }).click();
  await section.getByText("✓ Brought in.").waitFor();
  await page.getByRole("button", { name: "Undo: imported 3 plantings" }).click();
  await page.getByRole("button", { name: "Undo: took back: imported 3 plantings" }).waitFor();
  await page.close();
});
