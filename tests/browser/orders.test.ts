import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

/** Who buys every week: a florist's list is entered, takes what bookings leave, and is cut with everything else. */

const demo = demoBrowser();

test("a florist list sells surplus: it is entered by its form, gets stems that nobody had claimed, and stands on the pick list and on no bill", async () => {
  const page = await demo.open("/buying?from=start&show=all");
  const address = new URL(page.url()).origin;
  const shortBefore = await (await page.request.get(`${address}/bookings`)).text();
  await page.goto(`${address}/orders`);
  const before = await there(page);
  const form = page.getByRole("form", { name: "A new standing order" });
  await form.getByLabel("Buyer").fill("The invented florist");
  await form.getByLabel("Goes out on").selectOption("Fri");
  await form.getByLabel("From").fill("2027-08-06");
  await form.getByLabel("To", { exact: true }).fill("2027-09-24");
  await form.getByLabel("How many each time").fill("40");
  await form.getByLabel("Role of the stems").selectOption("focal");
  await form.getByLabel("A stem brings").fill("1.20");
  await form.getByRole("button", { name: "Add the order" }).click();
  await page.getByRole("heading", { name: "The invented florist" }).waitFor();
  const after = await there(page);
  expect(after.asked).toBe(before.asked + 320);
  expect(after.got).toBeGreaterThan(before.got);
  await page.getByText("Delivery by delivery").click();
  const rows = await page.getByRole("row").filter({ hasText: "The invented florist" }).count();
  expect(rows).toBe(8);

  await page.goto(`${address}/picking/csv`).catch(() => undefined);
  const csv = await (await page.request.get(`${address}/picking/csv`)).text();
  const lines = csv.split("\n").filter((line) => line.includes("The invented florist"));
  expect(lines.length).toBeGreaterThan(4);
  const bookings = await (await page.request.get(`${address}/bookings`)).text();
  const shortIn = (html: string) => html.match(/Stems short.{0,200}?<b>([\d,]+)<\/b>/s)?.[1];
  expect(shortIn(bookings)).toBe(shortIn(shortBefore));
  expect(shortIn(bookings)).toMatch(/\d/);

  await page.goto(`${address}/orders`);
  const card = page.locator("li.card", { hasText: "The invented florist" });
  await card.getByText("Change or take out").click();
  await card.getByRole("button", { name: "Take out" }).click();
  await card.waitFor({ state: "detached" });
  expect(await there(page)).toEqual(before);
  await page.close();
});

/** How many stems the season's orders ask for, and how many of them are there. */
async function there(page: Page): Promise<{ got: number; asked: number }> {
  const lead = (await page.locator(".lead").first().textContent()) ?? "";
  const [, got, asked] = /^([\d,]+) of ([\d,]+) stems asked for are there: they bring \$\d+/.exec(lead) ?? [];
  return { got: Number(got?.replace(/,/g, "")), asked: Number(asked?.replace(/,/g, "")) };
}
