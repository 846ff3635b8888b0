import Database from "better-sqlite3";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoInFile, ended } from "./demo-in-file";
import { DESK, openBrowser, violations } from "./open-page";
import { type Served, serveBuilt } from "./served";

const { file, env, remove } = demoInFile();
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  remove();
});

/** What fails, and how a server is brought to fail at it. */
const FAILURES = {
  "a page": async () => serveBuilt({ ...env, FARM_TODAY: "no day at all" }),
  "the frame of all pages": async () => {
    const served = await serveBuilt(env);
    // Another program has put a view in the place of a table of ours: it opens as it should, and cannot be read.
    const tables = new Database(file);
    const columns = tables.prepare<[], string>("SELECT name FROM pragma_table_info('booking')").pluck().all();
    const read = columns.map((name) => (name === "note" ? "json_extract('{', '$') AS note" : name));
    tables.exec(
      `ALTER TABLE booking RENAME TO bookings_kept; CREATE VIEW booking AS SELECT ${read} FROM bookings_kept`,
    );
    tables.close();
    return served;
  },
};

describe.each(Object.entries(FAILURES))("where %s cannot be made", (_, serve) => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(async () => {
    await ended(served.server);
  });

  const opened = async (options: BrowserContextOptions): Promise<Page> => {
    const page = await browser.newPage({ viewport: DESK, ...options });
    const answer = await page.goto(`${served.address}/`, { waitUntil: "networkidle" });
    expect(answer?.status()).toBe(500);
    return page;
  };

  test.each(["light", "dark"] as const)(
    "%s: it says so in words that can be read, and leads on",
    async (colorScheme) => {
      const page = await opened({ colorScheme });
      await page.getByRole("heading", { name: "This page could not be made" }).waitFor();
      expect(await page.getByText("changes none of your records").isVisible()).toBe(true);
      expect(await page.getByRole("button", { name: "Try again" }).isVisible()).toBe(true);
      expect(await page.getByRole("link", { name: "Copies of the farm" }).getAttribute("href")).toBe("/farm/copies");
      expect(await violations(page)).toEqual([]);
      await page.close();
    },
  );

  test("without scripts it says the same", async () => {
    const page = await opened({ javaScriptEnabled: false });
    expect(await page.getByRole("heading", { name: "This page could not be made" }).isVisible()).toBe(true);
    const words = page.locator("main p").first();
    expect(await words.isVisible()).toBe(true);
    expect(await words.textContent()).toContain("changes none of your records");
    expect(await page.getByRole("link", { name: "History of changes" }).getAttribute("href")).toBe("/farm/history");
    await page.close();
  });

  test("without styles the words are there, and dark on light", async () => {
    const page = await browser.newPage({ viewport: DESK });
    await page.route(/\.css/, (route) => route.abort());
    await page.goto(`${served.address}/`, { waitUntil: "networkidle" });
    await page.getByRole("heading", { name: "This page could not be made" }).waitFor();
    const look = await page.evaluate(() => {
      const { color } = getComputedStyle(document.querySelector("h1") ?? document.body);
      return [color, getComputedStyle(document.body).backgroundColor];
    });
    expect(look).toEqual(["rgb(0, 0, 0)", "rgba(0, 0, 0, 0)"]);
    await page.close();
  });
});
