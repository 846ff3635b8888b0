import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, PHONE, scrollsSideways, violations } from "./open-page";
import { ownDemo } from "./own-demo";

/** The cooler on a picking day of the demo's season, with a thumb: what is cut stands in it, and leaves it with a tap. */

const demo = ownDemo("2027-06-10");
const open = (path: string, viewport = PHONE): Promise<Page> => demo.open(path, viewport);
const lots = (page: Page) => page.locator(".lot");

/** Lots of the variety that stands first in the form, of which the demo cuts nothing in June. */
const ownLots = (page: Page) => lots(page).filter({ hasText: "Amaranth" });

async function putIn(page: Page, cutOn: string, stems: string): Promise<void> {
  const form = page.getByRole("form", { name: "Put stems in" });
  await form.getByLabel("Variety").selectOption({ index: 1 });
  await form.getByLabel("Cut on").fill(cutOn);
  await form.getByLabel("Stems").fill(stems);
  await form.getByRole("button", { name: "Put them in" }).click();
  await page.locator(".lastchange", { hasText: `put ${stems} ` }).waitFor();
}

test("what is recorded as cut stands in the cooler for its wedding, and is taken out for it with one tap and put back with another", async () => {
  const page = await open("/today");
  await page
    .getByRole("button", { name: /^Save \d+$/ })
    .first()
    .click();
  await page.getByText("Recorded: 1 row").waitFor();
  await page.goto(`${demo.address()}/farm/cooler`, { waitUntil: "networkidle" });
  const claim = lots(page).first().locator(".lot-claim").first();
  const stems = Number((await claim.getByRole("button").textContent())?.match(/\d+/)?.[0]);
  const lotCount = await lots(page).count();
  await claim.getByRole("button").click();
  await page.locator(".lastchange", { hasText: "took" }).waitFor();
  expect(await page.locator(".lastchange").textContent()).toMatch(/took \d+ stems? of .* out of the cooler for \S/);
  expect(stems).toBeGreaterThan(0);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.locator(".lastchange", { hasText: "took back" }).waitFor();
  expect(await lots(page).count()).toBe(lotCount);
  await page.close();
});

test("dead stems are thrown away by number, never more than stand there, and the history of the lot adds up", async () => {
  const page = await open("/farm/cooler?show=all");
  await putIn(page, "2027-06-09", "20");
  const lot = ownLots(page).first();
  const count = lot.getByRole("textbox");
  await count.fill("25");
  await lot.getByRole("button", { name: /^Throw 25 away/ }).click();
  await page.getByText("only 20 are left of this lot").first().waitFor();
  await count.fill("6");
  await lot.getByRole("button", { name: /^Throw 6 away/ }).click();
  await page.getByText("20 in, 6 out: 14 stand there.").click();
  await page.getByText("10 Jun: 6 thrown away").waitFor();
  await lot.getByRole("button", { name: "Take back" }).click();
  await lot.getByText("20 in, 0 out: 20 stand there.").waitFor();
  await page.close();
});

test("what two people take out at once both counts", async () => {
  const [one, other] = [await open("/farm/cooler?show=all"), await open("/farm/cooler?show=all")];
  for (const page of [one, other]) {
    const lot = ownLots(page).first();
    await lot.getByRole("textbox").fill("4");
    await lot.getByRole("button", { name: /^Take 4 out/ }).click();
    await page.locator(".lastchange", { hasText: "took 4 stems" }).waitFor();
  }
  await other.getByText("20 in, 8 out: 12 stand there.").waitFor();
  await one.close();
  await other.close();
});

test("what is past its days is told first and thrown away in one go", async () => {
  const page = await open("/farm/cooler?show=all");
  // More than the events that have passed since can have had of it.
  await putIn(page, "2027-05-24", "900");
  const past = page.getByRole("heading", { name: /^\d+ past their days$/ });
  await past.waitFor();
  const stems = Number((await past.textContent())?.match(/\d+/)?.[0]);
  expect(stems).toBeGreaterThan(0);
  await page.getByRole("button", { name: `Throw all ${stems} away` }).click();
  await past.waitFor({ state: "detached" });
  await page.close();
});

test("the oldest lots stand first, and the way to all of them says how many more there are", async () => {
  const page = await open("/farm/cooler");
  const first = await page.getByRole("heading", { name: "The oldest first" }).locator("+ ul > .lot").count();
  expect(first).toBe(12);
  const more = page.getByRole("link", { name: /^Show \d+ more lots/ });
  const count = Number((await more.textContent())?.match(/\d+/)?.[0]);
  await more.click();
  await page.getByText(/^Emptied: \d+ lots?/).waitFor();
  expect(await page.getByRole("heading", { name: "The oldest first" }).locator("+ ul > .lot").count()).toBe(12 + count);
  await page.close();
});

test("the cooler reads well for everybody, at both widths", async () => {
  for (const viewport of [DESK, PHONE])
    for (const path of ["/farm/cooler", "/farm/cooler?show=all"]) {
      const page = await open(path, viewport);
      expect(await violations(page)).toEqual([]);
      expect(await scrollsSideways(page)).toBe(false);
      await page.close();
    }
});
