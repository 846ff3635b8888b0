import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";
import { scrollsSideways } from "./open-page";

/** The uses of the tool with no pointer at all: what has the focus is found by Tab and worked by the keys. How a booking is entered so stands in booking-editor.test.ts. */

const demo = demoBrowser();
const MOST_TABS = 260;

/** What has the focus, as a screen reader would call it. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const on = document.activeElement;
    if (!(on instanceof HTMLElement || on instanceof SVGElement)) return "";
    const labels = on instanceof HTMLInputElement ? [...(on.labels ?? [])].map((label) => label.textContent) : [];
    return (on.ariaLabel ?? [...labels, on.textContent].join(" ")).replace(/\s+/g, " ").trim();
  });

/** Presses Tab until something of this name has the focus, which must be in sight. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < MOST_TABS; presses++) {
    await page.keyboard.press("Tab");
    if (!name.test(await focused(page))) continue;
    const isInSight = await page.evaluate(() => {
      const { top = -1, bottom = -1 } = document.activeElement?.getBoundingClientRect() ?? {};
      return bottom > 0 && top < window.innerHeight;
    });
    expect(isInSight).toBe(true);
    return;
  }
  throw new Error(`Tab leads to nothing called ${name}`);
}

test("the weeks that are short are read one by one with the arrows, a week is opened with Enter, and its gap says why", async () => {
  const page = await demo.open("/");
  await tabTo(page, /^Week of .+: \d+ needed/);
  const first = await focused(page);
  await page.keyboard.press("ArrowRight");
  const second = await focused(page);
  expect(second).toMatch(/^Week of .+: \d+ needed/);
  expect(second).not.toBe(first);
  while (!/ [1-9]\d* short/.test(await focused(page))) await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/weeks\/2027-W\d\d/);
  await page.getByRole("heading", { level: 1 }).waitFor();
  expect(await page.locator(".gap-fold[open]").count()).toBe(1);
  await page.close();
});

test("a bed is ticked with the space bar, and the choice is kept as a what-if that writes nothing", async () => {
  const page = await demo.open("/keep-or-dig");
  const cost = page.locator(".net-cost");
  const before = await cost.locator(".great").textContent();
  await tabTo(page, /^Keep Long Field 1$/);
  await page.keyboard.press("Space");
  await page.locator('.net-cost[data-stale="false"]').waitFor();
  await expect.poll(() => cost.locator(".great").textContent()).not.toBe(before);
  await tabTo(page, /^Or keep them as a what-if/);
  await page.keyboard.press("Enter");
  await tabTo(page, /^Name/);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("Kept by keyboard");
  await page.keyboard.press("Enter");
  await page.getByText("✓ Saved").first().waitFor();
  await page.keyboard.press("Control+Home");
  await tabTo(page, /^Undo/);
  await page.keyboard.press("Enter");
  await page
    .getByText(/took back/)
    .first()
    .waitFor();
  await page.close();
});

test("a picking day is opened and its list taken out as CSV", async () => {
  const page = await demo.open("/picking");
  await tabTo(page, /^Next picking day: /);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/picking\?day=/);
  await page.waitForLoadState("networkidle");
  await tabTo(page, /^CSV file/);
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  const rows = readFileSync(await download.path(), "utf8")
    .trim()
    .split("\r\n");
  expect(rows.length).toBeGreaterThan(1);
  await page.close();
});

test.each([
  "/",
  "/bookings",
  "/bookings/1",
  "/beds",
  "/beds/1",
  "/keep-or-dig",
  "/what-if",
  "/picking",
  "/buying",
  "/enquiry",
  "/farm",
  "/farm/files",
])("at 200 % on a desk %s does not scroll sideways", async (path) => {
  const page = await demo.open(path, { width: 640, height: 450 });
  expect(await scrollsSideways(page)).toBe(false);
  await page.close();
});
