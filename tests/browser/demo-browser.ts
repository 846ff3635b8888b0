import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { demoAddress } from "./demo-address";
import { breaches, DESK, openBrowser, openPage } from "./open-page";

/**
 * A browser on the demo farm for all tests of a file. After the last of them no page may have broken the content policy or told its console of an error.
 * @param address  where the farm is served: this lane's, if none is told
 * @param end      ends what was served for this file alone
 */
export function demoBrowser(address = demoAddress, end = async (): Promise<void> => {}) {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    await end();
    expect(breaches).toEqual([]);
  });
  return {
    /** There once the tests run. */
    browser: () => browser,
    open: (path: string, viewport = DESK): Promise<Page> => openPage(browser, address(), path, viewport),
  };
}
