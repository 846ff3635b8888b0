import type { Browser, Page } from "playwright-core";
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

/** So many screens are open at once: while one is drawn the server makes the next. */
const AT_ONCE = 2;

/** What is wrong with any screen of the day, in words; nothing where all is well. */
export async function faultsOfScreens(browser: Browser, address: string): Promise<string[]> {
  const phone = await browser.newContext({ viewport: PHONE });
  const left = [...SCREENS];
  const faults: string[] = [];
  const look = async (): Promise<void> => {
    const page = await phone.newPage();
    for (let path = left.shift(); path !== undefined; path = left.shift())
      faults.push(...(await faultsOf(page, address, path)));
  };
  await Promise.all(Array.from({ length: AT_ONCE }, look));
  await phone.close();
  return faults;
}

async function faultsOf(page: Page, address: string, path: string): Promise<string[]> {
  const faults: string[] = [];
  const answer = await page.goto(address + path);
  if (answer?.status() !== 200) faults.push(`${path} answers ${answer?.status()}`);
  if ((await page.locator("h1").count()) === 0) faults.push(`${path} has no heading`);
  if (await scrollsSideways(page)) faults.push(`${path} scrolls sideways`);
  const screens = await page.evaluate(() => document.documentElement.scrollHeight / window.innerHeight);
  if (screens > LONGEST_SCREENS) faults.push(`${path} is ${screens.toFixed(1)} screens long`);
  return faults;
}
