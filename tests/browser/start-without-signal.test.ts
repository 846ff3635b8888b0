import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { PHONE, scrollsSideways, violations } from "./open-page";
import { ownDemo } from "./own-demo";

/** On the machine itself, where the line counts as secure: the tool starts without the farm answering. */

const demo = ownDemo("2027-06-10");
let page: Page;
beforeAll(async () => {
  page = await demo.open("/today", PHONE);
});

const rows = () => page.locator(".cut-rows > li");
const kept = () =>
  page.evaluate(async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith("pages "));
    return names.length > 0 ? (await (await caches.open(names[0])).keys()).map(({ url }) => new URL(url).pathname) : [];
  });

test("the list says when the farm stood so, and that it starts without signal here", async () => {
  await page.getByText(/^As the farm stood at \d\d:\d\d\./).waitFor();
  await page.getByText("Without signal it goes on, and starts anew too.").waitFor();
  await expect.poll(kept).toContain("/today");
});

test("without the farm answering the list is opened anew, a count is kept, and other pages lead to the list", async () => {
  const asked = await rows().count();
  await page.context().setOffline(true);
  await page.goto(`${demo.address()}/today`, { waitUntil: "load" });
  expect(await rows().count()).toBe(asked);
  await rows().first().getByRole("button", { name: "None left" }).click();
  await page.getByText("1 count is not sent yet").waitFor();
  await page.goto(`${demo.address()}/bookings`, { waitUntil: "load" });
  expect(new URL(page.url()).pathname).toBe("/today");
  await page.getByText("1 count is not sent yet").waitFor();
  await page.context().setOffline(false);
  await page.getByText("Recorded: 1 row").waitFor();
});

test("a list of the day before asks what was sprayed since, and closes what was that day, until it is said that it was not", async () => {
  await page.context().setOffline(true);
  await page.clock.install({ time: new Date(Date.now() + 86_400_000) });
  await page.goto(`${demo.address()}/today`, { waitUntil: "load" });
  await page.getByRole("heading", { name: /^Was a bed sprayed since/ }).waitFor();
  expect(await rows().count()).toBe(0);
  expect(await violations(page)).toEqual([]);
  expect(await scrollsSideways(page)).toBe(false);
  const bed = page.locator(".spray-question .tick").first();
  const name = (await bed.textContent())?.trim() ?? "";
  await bed.getByRole("checkbox").check();
  await page.getByRole("button", { name: "Close these beds" }).click();
  const closed = rows().filter({ hasText: name }).first();
  await closed.getByText("Closed on this phone: sprayed since the list was made").waitFor();
  expect(await closed.getByRole("button", { name: "None left" }).count()).toBe(0);
  expect(await rows().getByRole("button", { name: "None left" }).count()).toBeGreaterThan(0);
  await page.context().setOffline(false);
  await page.getByText(/^As the farm stood at \d\d:\d\d\./).waitFor();
  expect(await closed.getByRole("button", { name: "None left" }).count()).toBe(0);
  await closed.getByRole("button", { name: "It was not sprayed" }).click();
  await closed.getByRole("button", { name: "None left" }).waitFor();
});
