import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { openBrowser } from "../browser/open-page";
import { type ServedSize, withServedFarm } from "./serve-farm";
import { type BenchRow, rowOf } from "./timing";

/**
 * The built app in Chromium: on the large farm what the server takes for Season, how much script Season loads and how soon typing shows
 * coverage; on the typical farm how soon a ticked bed shows the new weeks.
 */
export async function screenRows(): Promise<{ rows: BenchRow[]; lines: string[] }> {
  const large = await served("large", async (browser, address) => ({
    rows: [await season(address), await firstSight(browser, address), await typing(browser, address)],
    script: await seasonScript(browser, address),
  }));
  const toggled = await served("typical", toggling);
  return {
    rows: [...large.rows, toggled],
    lines: [`client script of Season: ${(large.script / 1024).toFixed(0)} kB gzip in all (to reach: 200 kB or less)`],
  };
}

/** Serves a farm and opens a browser beside it, for as long as `work` takes. */
const served = <T>(size: ServedSize, work: (browser: Browser, address: string) => Promise<T>): Promise<T> =>
  withServedFarm(size, async ({ address }) => {
    const browser = await openBrowser();
    try {
      return await work(browser, address);
    } finally {
      await browser.close();
    }
  });

async function season(address: string): Promise<BenchRow> {
  const times: number[] = [];
  for (let run = 0; run < 21; run++) {
    const start = performance.now();
    await (await fetch(address)).text();
    times.push(performance.now() - start);
  }
  return rowOf(
    "Season from the server, large farm",
    times.slice(1),
    "200 ms",
    "400 beds, 400 bookings; whole page over HTTP, warm",
  );
}

async function firstSight(browser: Browser, address: string): Promise<BenchRow> {
  const times: number[] = [];
  for (let run = 0; run < 5; run++) {
    const page = await browser.newPage();
    const start = performance.now();
    await page.goto(address, { waitUntil: "domcontentloaded" });
    times.push(performance.now() - start);
    await page.close();
  }
  return rowOf("Season in Chromium, large farm", times, "", "to the parsed page");
}

/** From a keystroke to the new coverage on the page, as the page itself measures it. */
async function typing(browser: Browser, address: string): Promise<BenchRow> {
  const page = await browser.newPage();
  await page.goto(`${address}/bookings/1`, { waitUntil: "networkidle" });
  const times = await page.evaluate(async () => {
    const input = document.querySelector<HTMLInputElement>('input[name="pieces[0].pieceCount"]');
    const panel = document.querySelector("section[data-stale] [aria-live]");
    if (!input || !panel) throw new Error("no booking form on the page");
    const put = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
    const measured: number[] = [];
    for (let run = 0; run < 16; run++) {
      const shown = new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          if (document.querySelector('section[data-stale="false"]')) {
            watch.disconnect();
            resolve();
          }
        });
        watch.observe(panel, { subtree: true, childList: true, characterData: true });
      });
      const start = performance.now();
      put?.call(input, String(2 + run));
      input.dispatchEvent(new Event("input", { bubbles: true }));
      await shown;
      measured.push(performance.now() - start);
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    return measured.slice(2);
  });
  await page.close();
  return rowOf("typing a count to its coverage, large farm", times, "100 ms", "in Chromium, through the server");
}

/** From a tick on Keep or dig to the new weeks on the page, as the page itself measures it. */
async function toggling(browser: Browser, address: string): Promise<BenchRow> {
  const page = await browser.newPage();
  await page.goto(`${address}/keep-or-dig`, { waitUntil: "networkidle" });
  const times = await page.evaluate(async () => {
    const strip = document.querySelector(".net-cost");
    if (!strip) throw new Error("no bed to tick on the page");
    const measured: number[] = [];
    for (let run = 0; run < 21; run++) {
      const boxes = document.querySelectorAll<HTMLInputElement>(".keep-check input:enabled");
      const shown = new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          if (strip.getAttribute("data-stale") !== "false") return;
          watch.disconnect();
          resolve();
        });
        watch.observe(strip, { attributes: true, attributeFilter: ["data-stale"] });
      });
      const start = performance.now();
      boxes[run % boxes.length].click();
      await shown;
      measured.push(performance.now() - start);
      await new Promise((resolve) => setTimeout(resolve, 1500));
    }
    return measured.slice(3);
  });
  await page.close();
  return rowOf("ticking a bed to the new weeks, typical farm", times, "100 ms", "in Chromium, through the server");
}

/** Bytes of all scripts that Season loads, each gzipped. */
async function seasonScript(browser: Browser, address: string): Promise<number> {
  const page = await browser.newPage();
  const bodies: Promise<Buffer>[] = [];
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") bodies.push(response.body());
  });
  await page.goto(address, { waitUntil: "networkidle" });
  const sizes = (await Promise.all(bodies)).map((body) => gzipSync(body).length);
  await page.close();
  return sizes.reduce((sum, size) => sum + size, 0);
}
