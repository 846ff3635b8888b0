import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { openBrowser } from "./open-page";

/** Forms on a line so slow that no script has arrived: the browser sends them itself. */

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

test("before any script arrives a form is refused with its problems and what was typed, then saved, and undone", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${demoAddress()}/farm/recipes/new`);
  await page.getByLabel("One of it is a").fill("armful");
  await page.getByRole("button", { name: "Add the recipe" }).click();
  await page.getByText("Not saved.").waitFor();
  expect(await page.getByLabel("Name", { exact: true }).getAttribute("aria-invalid")).toBe("true");
  expect(await page.getByLabel("One of it is a").inputValue()).toBe("armful");
  await page.getByLabel("Name", { exact: true }).fill("Invented armful");
  await page.getByRole("button", { name: "Add the recipe" }).click();
  await page.getByRole("link", { name: "Invented armful" }).waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("link", { name: "Invented armful" }).waitFor({ state: "detached" });
  await context.close();
});
