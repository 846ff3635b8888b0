import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { faultsOfScreens } from "./faults-of-screens";
import { PHONE } from "./open-page";
import { ownDemo } from "./own-demo";

/**
 * One invented season of the demo farm, lived through on a phone from March to November: a late spring, a bed that voles ate, a booking taken twice, an
 * early frost. Each month the farm is served on a day of it, its screens are looked at, and what happened is told to the tool.
 */

const farm = ownDemo("2027-03-19");
const open = (path: string): Promise<Page> => farm.open(path, PHONE);

/** The focal stems that Season says are short. */
const shortOnSeason = async (page: Page): Promise<number> => {
  const [, stems] = /^([\d,]+) short$/.exec((await page.locator("h1 .great").textContent()) ?? "") ?? [];
  return Number(stems?.replace(/,/g, ""));
};

const MONTHS: readonly { readonly day: string; readonly told: string; readonly tell: () => Promise<void> }[] = [
  {
    day: "2027-03-19",
    told: "buds are behind: they are noted as late, and the walk says so",
    tell: async () => {
      const page = await open("/beds/buds");
      const stop = page.locator(".bud-bed .bud-stop").first();
      await stop.getByRole("button", { name: /^late/ }).click();
      await page.locator(".bud-stop").getByText("19 Mar: late").waitFor();
      await page.close();
    },
  },
  {
    day: "2027-04-16",
    told: "spring is late: this season only every crop comes six days later, and no curve changes",
    tell: async () => {
      const page = await open("/");
      await page.getByText("This season only, by your own word").click();
      const form = page.getByRole("form", { name: "A crop early or late, this season only" });
      await form.getByLabel("Late this season").fill("6");
      await form.getByRole("button", { name: "Say it" }).click();
      await page
        .getByText(/6 days late/)
        .first()
        .waitFor();
      // The same is said of all: one line, not one for each crop.
      expect(await page.getByRole("form", { name: /^What is said of / }).count()).toBe(1);
      await page.getByRole("form", { name: "What is said of Every crop" }).waitFor();
      expect(await curvesNow()).toBe(curvesInMarch);
      await page.close();
    },
  },
  {
    day: "2027-05-14",
    told: "a wedding is booked twice: before the second is saved, the tool says whose stems it would take",
    tell: async () => {
      const page = await open("/bookings");
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
      await page.close();
    },
  },
  {
    day: "2027-06-11",
    told: "voles ate a bed: its plants are gone, and Season is short of more focal stems than before",
    tell: async () => {
      const page = await open("/");
      const before = await shortOnSeason(page);
      await page.goto(`${farm.address()}/beds/1`, { waitUntil: "networkidle" });
      await page.getByText("Change this planting").first().click();
      await page
        .getByLabel(/^Alive at first cut/)
        .first()
        .fill("0");
      await page
        .getByRole("button", { name: /^Save the planting/ })
        .first()
        .click();
      await page
        .getByText(/^Saved: /)
        .first()
        .waitFor();
      await page.goto(`${farm.address()}/`, { waitUntil: "networkidle" });
      expect(await shortOnSeason(page)).toBeGreaterThan(before);
      await page.close();
    },
  },
  {
    day: "2027-07-15",
    told: "a picking day: one row comes as asked, and one comes short",
    tell: async () => {
      const page = await open("/today");
      const rows = page.locator(".cut-rows > li");
      await rows
        .first()
        .getByRole("button", { name: /^Save \d+$/ })
        .click();
      await page.getByText("Recorded: 1 row").waitFor();
      await rows
        .first()
        .getByRole("button", { name: /^One fewer/ })
        .click();
      await rows
        .first()
        .getByRole("button", { name: /^Save \d+$/ })
        .click();
      await page.getByText("Recorded: 2 rows").waitFor();
      await page.close();
    },
  },
  {
    day: "2027-08-16",
    told: "on Monday the weddings of last week are reviewed",
    tell: async () => {
      const page = await open("/bookings/review");
      await page.getByRole("button", { name: "All used" }).first().click();
      await page
        .getByText(/^Saved: /)
        .first()
        .waitFor();
      await page.close();
    },
  },
  {
    day: "2027-09-24",
    told: "a cold night is forecast: the alarm sounds, and says what to cut ahead",
    tell: async () => {
      const page = await open("/today");
      const form = page.getByRole("form", { name: "The coldest night ahead" });
      await form.getByLabel("Morning of the coldest night ahead").fill("2027-09-26");
      await form.getByLabel("Its low, as forecast").fill("30");
      await form.getByRole("button", { name: "Keep the forecast" }).click();
      await page.getByRole("heading", { name: /^Frost: / }).waitFor();
      await page
        .getByText(/^Cut on /)
        .first()
        .waitFor();
      await page.close();
    },
  },
  {
    day: "2027-10-15",
    told: "the cold night is behind, and the alarm with it",
    tell: async () => {
      const page = await open("/today");
      expect(await page.getByRole("heading", { name: /^Frost: / }).count()).toBe(0);
      await page.close();
    },
  },
  {
    day: "2027-11-12",
    told: "the season is over, and what became of it is told crop by crop",
    tell: async () => {
      const page = await open("/bookings/season?season=2027");
      await page.getByRole("heading", { level: 1 }).waitFor();
      expect(await page.locator("table tbody tr").count()).toBeGreaterThan(5);
      await page.close();
    },
  },
];

let curvesInMarch = "";
const curvesNow = async () => {
  const sheet = await fetch(`${farm.address()}/farm/files/sheet/curves.csv`);
  expect(sheet.status).toBe(200);
  return sheet.text();
};

describe.each(MONTHS)("$day", ({ day, told, tell }) => {
  test(`every screen stands, and ${told}`, async () => {
    if (day !== MONTHS[0].day) await farm.passTo(day);
    else curvesInMarch = await curvesNow();
    expect(await faultsOfScreens(farm.browser(), farm.address())).toEqual([]);
    await tell();
  });
});
