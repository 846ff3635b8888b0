import type { Page } from "playwright-core";
import { expect } from "vitest";

/** What is told to the tool in a season, each on a page of the phone as it is opened for it. */

/** The focal stems that Season says are short. */
export const shortOnSeason = async (page: Page): Promise<number> => {
  const [, stems] = /^([\d,]+) short$/.exec((await page.locator("h1 .great").textContent()) ?? "") ?? [];
  return Number(stems?.replace(/,/g, ""));
};

/** Bud walk: the first bed is late. */
export async function noteLateBuds(page: Page): Promise<void> {
  const stop = page.locator(".bud-bed .bud-stop").first();
  await stop.getByRole("button", { name: /^late/ }).click();
  await page.locator(".bud-stop").getByText("19 Mar: late").waitFor();
}

/** Bud walk: so many of the clumps of the first planting that is counted came through. */
export async function countClumps(page: Page, cameThrough: string): Promise<void> {
  await page.getByText(/^\d+ plantings? to count after the winter$/).click();
  const inGround = page.locator(".bud-stop", { hasText: "in the ground, alive" });
  const count = await inGround.count();
  await inGround.first().getByLabel("Clumps that came through").fill(cameThrough);
  await inGround
    .first()
    .getByRole("button", { name: /^Write it down/ })
    .click();
  await page.locator(".lastchange", { hasText: `${cameThrough} of ` }).waitFor();
  expect(await inGround.count()).toBe(count - 1);
}

/** Season: every crop comes so many days late, this season only. */
export async function sayLate(page: Page, days: string): Promise<void> {
  await page.getByText("This season only, by your own word").click();
  const form = page.getByRole("form", { name: "A crop early or late, this season only" });
  await form.getByLabel("Late this season").fill(days);
  await form.getByRole("button", { name: "Say it" }).click();
  await page
    .getByText(new RegExp(`${days} days late`))
    .first()
    .waitFor();
  // The same is said of all: one line, not one for each crop.
  expect(await page.getByRole("form", { name: /^What is said of / }).count()).toBe(1);
  await page.getByRole("form", { name: "What is said of Every crop" }).waitFor();
}

/** Bookings: the last wedding is copied to a Saturday that is full; the form says whose stems it would take, and saving is undone. */
export async function bookTwice(page: Page): Promise<void> {
  await page.locator("a[href^='/bookings/']", { hasText: "wedding" }).last().click();
  await page.getByRole("link", { name: "Copy to a new booking" }).click();
  await page.getByLabel("Client", { exact: true }).fill("The one booked twice");
  await page.getByLabel("Day of the event").fill("2027-09-18");
  await page.getByLabel("Status").selectOption("confirmed");
  await page.locator('section[data-stale="false"]', { hasText: "with spare" }).waitFor();
  await page.getByText("Saved so, it takes stems from other bookings:").waitFor();
  expect(await page.locator(".coverage-losers li a").count()).toBeGreaterThan(0);
  await page.getByRole("button", { name: "Save the booking" }).click();
  await page.getByRole("button", { name: /^Undo: added the booking of The one booked twice/ }).click();
  await page.getByRole("heading", { name: "There is nothing at this address" }).waitFor();
}

/** A bed's page: voles left nothing of its first planting, in two taps. */
export async function loseAll(page: Page): Promise<void> {
  await page
    .getByText(/^Plants lost/)
    .first()
    .click();
  await page.getByRole("button", { name: "All are lost" }).first().click();
  await page
    .locator("summary", { hasText: /voles left 0 of \d+ plants/ })
    .first()
    .waitFor();
}

/** Today: the first row comes as asked, and the one after it with a stem fewer. */
export async function cutTwoRows(page: Page): Promise<void> {
  const first = page.locator(".cut-rows > li").first();
  await first.getByRole("button", { name: /^Save \d+$/ }).click();
  await page.getByText("Recorded: 1 row").waitFor();
  await first.getByRole("button", { name: /^One fewer/ }).click();
  await first.getByRole("button", { name: /^Save \d+$/ }).click();
  await page.getByText("Recorded: 2 rows").waitFor();
}

/** Buying: what is to be ordered first is ordered to arrive today, and comes two stems short. */
export async function orderAndReceive(page: Page, today: string): Promise<void> {
  await page
    .getByRole("link", { name: /^It is ordered/ })
    .first()
    .click();
  await page.getByLabel("Supplier").fill("Marl Street");
  await page.getByLabel("Arrives on").fill(today);
  await page.getByRole("button", { name: "These are ordered" }).click();
  const slip = page.locator(".slip", { has: page.getByRole("heading", { name: "Marl Street" }) });
  const asked = slip.locator("input[name^=arrived]").first();
  const stems = Number(await asked.inputValue());
  await asked.fill(String(stems - 2));
  await slip.getByRole("button", { name: "These came" }).click();
  await page.getByText(/^Arrived: \d+ flower/).click();
  await page
    .getByText(new RegExp(`^${stems - 2} of ${stems} came .*, 2 short`))
    .first()
    .waitFor();
}

/** Cooler: what is claimed of the first lot is taken out for its event, and one stem of the next is dead. */
export async function emptyLots(page: Page): Promise<void> {
  await page.locator(".lot-claim").first().getByRole("button").click();
  await page.locator(".lastchange", { hasText: "took" }).waitFor();
  const lot = page.locator(".lot").first();
  await lot.getByRole("textbox").fill("1");
  await lot.getByRole("button", { name: /^Throw 1 away/ }).click();
  await page.locator(".lastchange", { hasText: "threw" }).waitFor();
}

/** Bookings: the first client whose final count is due has settled. Gives the address of that booking. */
export async function takeFinalCount(page: Page): Promise<string> {
  const due = page.getByRole("region", { name: "Final counts due" }).locator("li").first();
  const link = due.getByRole("link");
  const [path, client] = [await link.getAttribute("href"), await link.textContent()];
  await due.getByRole("button", { name: "It is final" }).click();
  await page.locator(".lastchange", { hasText: `took the final count of ${client}` }).waitFor();
  return path ?? "";
}

/** Today: the coldest night ahead, as forecast; the alarm sounds, and says what to cut ahead. */
export async function forecastFrost(page: Page, morning: string, low: string): Promise<void> {
  const form = page.getByRole("form", { name: "The coldest night ahead" });
  await form.getByLabel("Morning of the coldest night ahead").fill(morning);
  await form.getByLabel("Its low, as forecast").fill(low);
  await form.getByRole("button", { name: "Keep the forecast" }).click();
  await page.getByRole("heading", { name: /^Frost: / }).waitFor();
  await page
    .getByText(/^Cut on /)
    .first()
    .waitFor();
}

/** Today: it froze on a morning, and nothing tender is on the lists any more. */
export async function sayItFroze(page: Page, morning: string, inWords: string): Promise<void> {
  const form = page.getByRole("form", { name: "A killing frost" });
  await form.getByLabel("On the morning of").fill(morning);
  await form.getByRole("button", { name: "It froze" }).click();
  await page.getByRole("heading", { name: "Frost has come" }).waitFor();
  await page.getByText(`Since ${inWords} nothing tender is on the lists.`).waitFor();
}
