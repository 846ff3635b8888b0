import { readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";

const AXE = readFileSync("node_modules/axe-core/axe.min.js", "utf8");

export const DESK = { width: 1280, height: 900 };
export const PHONE = { width: 390, height: 844 };

/** How long a page may take over what is waited for: an end for what hangs. A machine that is busy with other things is slow, and no fault. */
export const PATIENCE_MS = 120_000;

/** Debian's Chromium, headless and silent on the network. */
export const openBrowser = (more: readonly string[] = []): Promise<Browser> =>
  chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      ...more,
    ],
  });

/** What the content policy kept a page from doing, and every error that reached a page's console, since the file of tests began. */
export const breaches: string[] = [];

/** A page of the app, open and quiet: its scripts have taken over, so that what is typed is not typed into the void. */
export async function openPage(browser: Browser, address: string, path: string, viewport = DESK): Promise<Page> {
  const page = await browser.newPage({ viewport });
  page.setDefaultTimeout(PATIENCE_MS);
  page.on("console", (said) => {
    // A test may cut the line on purpose.
    if (said.type() === "error" && !said.text().startsWith("Failed to load resource"))
      breaches.push(`${path}: ${said.text()}`);
  });
  page.on("pageerror", (error) => breaches.push(`${path}: ${error.message}`));
  await page.goto(address + path, { waitUntil: "networkidle" });
  return page;
}

/** What axe finds wrong with the page as it stands, each with the first element concerned; an empty list is a pass. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run();
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
  });
}

/** Whether the page is wider than its window, which on a phone means sideways scrolling. */
export const scrollsSideways = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
