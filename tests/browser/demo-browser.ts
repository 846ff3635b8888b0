import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { demoAddress } from "./demo-address";
import { breaches, DESK, openBrowser, openPage } from "./open-page";

/** A browser on the demo farm for all tests of a file. After the last of them no page may have broken the content policy or told its console of an error. */
export function demoBrowser() {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    expect(breaches).toEqual([]);
  });
  return {
    /** There once the tests run. */
    browser: () => browser,
    open: (path: string, viewport = DESK): Promise<Page> => openPage(browser, demoAddress(), path, viewport),
  };
}
