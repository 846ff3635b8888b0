import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { faultsOfScreens } from "./faults-of-screens";
import {
  bookTwice,
  countClumps,
  cutTwoRows,
  emptyLots,
  forecastFrost,
  loseAll,
  noteLateBuds,
  orderAndReceive,
  sayItFroze,
  sayLate,
  shortOnSeason,
  takeFinalCount,
} from "./lived-deeds";
import { PHONE } from "./open-page";
import { ownDemo } from "./own-demo";

/**
 * One invented season of the demo farm, lived through on a phone from March to November: a late spring, a bed that voles ate, a booking taken twice, an
 * early frost. One server runs all the while: each month it is a day of it, its screens are looked at, and what happened is told to the tool.
 */

const farm = ownDemo("2027-03-19");

/** Opens a screen on the month's page. */
type Go = (path: string) => Promise<Page>;

type Month = { readonly day: string; readonly told: string; readonly tell: (go: Go) => Promise<void> };

const MONTHS: readonly Month[] = [
  {
    day: "2027-03-19",
    told: "buds are behind: they are noted as late, and the walk says so",
    tell: async (go) => noteLateBuds(await go("/beds/buds")),
  },
  {
    day: "2027-04-16",
    told: "the clumps that came through are counted, and spring is late: this season only every crop comes six days later, and no curve changes",
    tell: async (go) => {
      await countClumps(await go("/beds/buds"), "30");
      await sayLate(await go("/"), "6");
      expect(await curvesNow()).toBe(curvesInMarch);
    },
  },
  {
    day: "2027-05-14",
    told: "a wedding is booked twice: before the second is saved, the tool says whose stems it would take",
    tell: async (go) => bookTwice(await go("/bookings")),
  },
  {
    day: "2027-06-11",
    told: "voles ate a bed: its plants are gone in two taps, and Season is short of more focal stems than before",
    tell: async (go) => {
      const before = await shortOnSeason(await go("/"));
      await loseAll(await go("/beds/1"));
      expect(await shortOnSeason(await go("/"))).toBeGreaterThan(before);
    },
  },
  {
    day: "2027-07-15",
    told: "a picking day: one row comes as asked and one short, an order is placed and comes short, and stems leave the cooler, used and dead",
    tell: async (go) => {
      await cutTwoRows(await go("/today"));
      await orderAndReceive(await go("/buying"), "2027-07-15");
      await emptyLots(await go("/farm/cooler"));
    },
  },
  {
    day: "2027-08-16",
    told: "on Monday the weddings of last week are reviewed, and a final count is taken",
    tell: async (go) => {
      const page = await go("/bookings/review");
      await page.getByRole("button", { name: "All used" }).first().click();
      await page
        .getByText(/^Saved: /)
        .first()
        .waitFor();
      const booking = await go(await takeFinalCount(await go("/bookings")));
      await booking.getByText("As at the final count of 16 Aug.").waitFor();
    },
  },
  {
    day: "2027-09-24",
    told: "a cold night is forecast: the alarm sounds, and says what to cut ahead",
    tell: async (go) => forecastFrost(await go("/today"), "2027-09-26", "30"),
  },
  {
    day: "2027-10-15",
    told: "the cold night is behind, and the alarm with it: it froze, and no dahlia is on a list any more",
    tell: async (go) => {
      const page = await go("/today");
      expect(await page.getByRole("heading", { name: /^Frost: / }).count()).toBe(0);
      await sayItFroze(page, "2027-09-26", "Sun 26 Sep");
      expect(await (await go("/picking")).locator("main").textContent()).not.toMatch(/Dahlia/);
    },
  },
  {
    day: "2027-11-12",
    told: "the season is over: what became of it is told crop by crop, how true its forecasts were, and the winter that was counted is among what it taught",
    tell: async (go) => {
      const page = await go("/bookings/season?season=2027");
      await page.getByRole("heading", { level: 1 }).waitFor();
      expect(await page.locator("table tbody tr").count()).toBeGreaterThan(5);
      await page.getByRole("link", { name: "How true the forecasts of 2027 were" }).click();
      await page.locator("table.how-true tbody tr").first().waitFor();
      expect(await page.locator(".lead").textContent()).toMatch(
        / first cuts .+ came within \d+ days? of what winter said .+ Bed by bed, .+ were off by \d+ %/,
      );
      await (await go("/farm/year-end")).getByText(/to spring 2027 30 of 40/).waitFor();
    },
  },
];

let curvesInMarch = "";
const curvesNow = async () => {
  const sheet = await fetch(`${farm.address()}/farm/files/sheet/curves.csv`);
  expect(sheet.status).toBe(200);
  return sheet.text();
};

/** One page on the phone, for all that is told of a month. */
async function onPhone(tell: Month["tell"]): Promise<void> {
  let page: Page | undefined;
  const go: Go = async (path) => {
    if (page) await page.goto(farm.address() + path, { waitUntil: "networkidle" });
    else page = await farm.open(path, PHONE);
    return page;
  };
  await tell(go);
  await page?.close();
}

describe.each(MONTHS)("$day", ({ day, told, tell }) => {
  test(`every screen stands, and ${told}`, async () => {
    if (day !== MONTHS[0].day) await farm.passTo(day);
    else curvesInMarch = await curvesNow();
    expect(await faultsOfScreens(farm.browser(), farm.address())).toEqual([]);
    await onPhone(tell);
  });
});
