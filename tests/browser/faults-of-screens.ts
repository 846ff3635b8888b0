import type { Browser } from "playwright-core";
import { PHONE, scrollsSideways } from "./open-page";

/** What a grower opens in a season. */
const SCREENS = [
  "/today",
  "/",
  "/bookings",
  "/picking",
  "/buying",
  "/beds",
  "/beds/buds",
  "/farm/cooler",
  "/enquiry",
  "/orders",
  "/keep-or-dig",
];

/** Heights of a phone. Season is the longest, in summer with most of its gaps ahead. */
const LONGEST_SCREENS = 10;

/** What is wrong with any screen of the day, in words; nothing where all is well. */
export async function faultsOfScreens(browser: Browser, address: string): Promise<string[]> {
  const page = await browser.newPage({ viewport: PHONE });
  const faults: string[] = [];
  for (const path of SCREENS) {
    const answer = await page.goto(address + path);
    if (answer?.status() !== 200) faults.push(`${path} answers ${answer?.status()}`);
    if ((await page.locator("h1").count()) === 0) faults.push(`${path} has no heading`);
    if (await scrollsSideways(page)) faults.push(`${path} scrolls sideways`);
    const screens = await page.evaluate(() => document.documentElement.scrollHeight / window.innerHeight);
    if (screens > LONGEST_SCREENS) faults.push(`${path} is ${screens.toFixed(1)} screens long`);
  }
  await page.close();
  return faults;
}
