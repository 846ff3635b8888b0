import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

/** What was promised to clients: offered to the bookings of an old farm, held against later ones, and named before these are saved. */

const demo = demoBrowser();

/** A booking typed for a day, by its bridal bouquets, with the coverage of them worked out. */
async function typed(
  page: Page,
  { on, palette, count, status }: Record<"on" | "palette" | "count" | "status", string>,
) {
  await page.getByLabel("Client", { exact: true }).fill("The later caller");
  await page.getByLabel("Day of the event").fill(on);
  await page.getByLabel("Status").selectOption(status);
  await page.getByLabel("Palette, best colour first").fill(palette);
  await page.getByRole("button", { name: "Add a piece" }).click();
  await page.getByLabel(/^How many, /).fill(count);
  await page.locator('section[data-stale="false"]', { hasText: "with spare" }).waitFor();
}

test("a booking that would take stems from others says whose, and once they are promised says that it cannot have them", async () => {
  const page = await demo.open("/bookings");
  const address = new URL(page.url()).origin;
  const wanted = { on: "2027-09-18", palette: "blush, cream, coral", count: "60", status: "confirmed" };
  await page.goto(`${address}/bookings/new`);
  await typed(page, wanted);
  const panel = page.locator(".coverage");
  await panel.getByText("Saved so, it takes stems from other bookings:").waitFor();
  expect(await panel.locator(".coverage-losers li").first().textContent()).toMatch(/ would lose \d+ \w+/);

  await page.goto(`${address}/bookings`);
  await page.getByRole("button", { name: "Promise them what is covered" }).click();
  await page.getByRole("button", { name: /^Undo: promised / }).waitFor();
  expect(await page.getByText("nothing promised yet").count()).toBe(0);

  await page.goto(`${address}/bookings/new`);
  await typed(page, wanted);
  const loserNames = await panel.locator(".coverage-losers li a").allTextContents();
  expect(loserNames).not.toContain("Swale House wedding");
  const holder = panel.locator("li", { hasText: "Swale House wedding" }).filter({ hasText: "was promised" }).first();
  expect(await holder.textContent()).toMatch(/was promised \d+ stems that would do: \d+ \w+/);
  await page.goto(`${address}/bookings`);
  await page.getByRole("button", { name: /^Undo: promised / }).click();
  await page.getByText("nothing promised yet").waitFor();
  await page.close();
});

test("a booking saved as confirmed is promised what the plan covers, need by need", async () => {
  const page = await demo.open("/bookings/new");
  await typed(page, { on: "2027-09-12", palette: "", count: "2", status: "confirmed" });
  await page.getByRole("button", { name: "Save the booking" }).click();
  const promise = page.getByRole("region", { name: "Promised" });
  await promise.waitFor();
  expect(await promise.textContent()).toMatch(/\d+ of \d+ stems are promised/);
  await promise.getByText("Promised, need by need").click();
  expect(await promise.getByRole("listitem").count()).toBeGreaterThan(2);
  await page.getByRole("button", { name: /^Undo: added the booking of The later caller/ }).click();
  await page
    .getByRole("heading", { name: /no such|nothing/i })
    .first()
    .waitFor();
  await page.close();
});
