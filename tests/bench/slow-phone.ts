import type { Browser, CDPSession, Page } from "playwright-core";
import { PHONE } from "../browser/open-page";

/** A phone that is slow, on a line that is slow: processor six times slower, 400 kbit/s both ways, 150 ms there and back. */
const SLOW = { cpu: 6, bytesPerSecond: 400_000 / 8, latencyMs: 150 };
const RUNS = 3;

export type Cookies = Awaited<ReturnType<ReturnType<Page["context"]>["cookies"]>>;

/** A phone that has never been here, as far as its cache goes. On the farm's network without a certificate no service worker stands between. */
async function freshPhone(browser: Browser, cookies: Cookies): Promise<{ page: Page; line: CDPSession }> {
  const context = await browser.newContext({ viewport: PHONE, serviceWorkers: "block" });
  await context.addCookies(cookies);
  const page = await context.newPage();
  const line = await context.newCDPSession(page);
  await line.send("Network.enable");
  return { page, line };
}

/** What comes over the line at each visit, in words. */
export async function weighed(browser: Browser, address: string, cookies: Cookies): Promise<string[]> {
  const { page, line } = await freshPhone(browser, cookies);
  let bytes = 0;
  let fontBytes = 0;
  const fonts = new Set<string>();
  line.on("Network.responseReceived", ({ requestId, type }) => type === "Font" && fonts.add(requestId));
  line.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    if (fonts.has(requestId)) fontBytes += encodedDataLength;
    else bytes += encodedDataLength;
  });
  const said: string[] = [];
  for (const [path, visit] of [
    ["/today", "first visit"],
    ["/today", "second visit"],
    ["/picking", "first visit after Today"],
    ["/picking?day=2027-06-12", "first visit after Picking"],
    ["/farm/cooler", "first visit after Today"],
    ["/beds/buds", "first visit after Today"],
  ] as const) {
    [bytes, fontBytes] = [0, 0];
    await page.goto(address + path, { waitUntil: "load" });
    await page.waitForTimeout(1500);
    said.push(`${path}, ${visit}: ${inKilobytes(bytes)}, and ${inKilobytes(fontBytes)} of fonts`);
  }
  await page.context().close();
  return said;
}

const inKilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(0)} kB`;

/** Milliseconds from asking for Today until its first row is painted and would be saved, and until its scripts count, at the first visit and afterwards. */
export async function soonUsable(browser: Browser, address: string, cookies: Cookies) {
  const [shown, first, afterwards]: [number[], number[], number[]] = [[], [], []];
  for (let run = 0; run < RUNS; run++) {
    const { page, line } = await freshPhone(browser, cookies);
    const { cpu: rate, bytesPerSecond, latencyMs: latency } = SLOW;
    const speed = { downloadThroughput: bytesPerSecond, uploadThroughput: bytesPerSecond };
    await line.send("Network.emulateNetworkConditions", { offline: false, latency, ...speed });
    await line.send("Emulation.setCPUThrottlingRate", { rate });
    const start = performance.now();
    await page.goto(`${address}/today`, { waitUntil: "commit" });
    await page.waitForFunction(isRowPainted, undefined, { timeout: 120_000, polling: 50 });
    shown.push(performance.now() - start);
    await page.waitForFunction(isCounting, undefined, { timeout: 120_000, polling: 50 });
    first.push(performance.now() - start);
    await page.waitForLoadState("networkidle").catch(() => {});
    const again = performance.now();
    await page.reload({ waitUntil: "commit" });
    await page.waitForFunction(isCounting, undefined, { timeout: 120_000, polling: 50 });
    afterwards.push(performance.now() - again);
    await page.context().close();
  }
  return { shown, first, afterwards };
}

/** Whether the first row's form stands on the screen: without scripts the browser sends it by itself. */
function isRowPainted(): boolean {
  const save = document.querySelector<HTMLElement>(".cut-rows form button[type=submit]");
  const isPainted = performance.getEntriesByName("first-contentful-paint").length > 0;
  return isPainted && save !== null && save.getBoundingClientRect().height > 0;
}

/** Presses a row's "One more" at each look, and says whether an earlier press has done what it says. */
function isCounting(): boolean {
  const button = document.querySelector<HTMLButtonElement>('.cut-rows button[aria-label^="One more"]');
  const field = button?.parentElement?.querySelector("input");
  if (!button || !field) return false;
  if (field.dataset.was !== undefined && field.value !== field.dataset.was) return true;
  field.dataset.was = field.value;
  button.click();
  return false;
}
