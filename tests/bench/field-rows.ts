import type { Browser, CDPSession, Page } from "playwright-core";
import { type FarmWithPeople, farmWithPeople } from "../browser/farm-with-people";
import { openBrowser, PHONE } from "../browser/open-page";
import { type BenchRow, rowOf } from "./timing";

/** A phone that is slow, on a line that is slow: processor six times slower, 400 kbit/s both ways, 150 ms there and back. */
const SLOW = { cpu: 6, bytesPerSecond: 400_000 / 8, latencyMs: 150 };
const PEOPLE = 50;
const TICKING = 20;
const TICKS_EACH = 5;

/** What a helper's phone takes over the farm's network, how soon it is of use on a slow one, and how soon fifty are answered while twenty count. */
export async function fieldRows(): Promise<{ rows: BenchRow[]; lines: string[] }> {
  const farm = await farmWithPeople("2027-06-10");
  const browser = await openBrowser();
  try {
    const owner = await farm.ownersPhone(browser);
    const helper = await farm.helpersPhone(browser, owner, "Wren");
    const cookies = await helper.context().cookies();
    const weights = await weighed(browser, farm, cookies);
    const usable = await soonUsable(browser, farm, cookies);
    const answered = await fiftyPeople(farm, cookies, helper);
    return {
      rows: [
        rowOf("Today on a slow phone, first visit, to a row that can be counted", usable, "3,000 ms"),
        rowOf("fifty people in the field, twenty counting: an answer", answered, "p99 300 ms"),
      ],
      lines: weights,
    };
  } finally {
    await browser.close();
    await farm.end();
  }
}

type Cookies = Awaited<ReturnType<ReturnType<Page["context"]>["cookies"]>>;

/** A phone of the helper's that has never been here, as far as its cache goes. */
async function freshPhone(browser: Browser, cookies: Cookies): Promise<{ page: Page; line: CDPSession }> {
  const context = await browser.newContext({ viewport: PHONE });
  await context.addCookies(cookies);
  const page = await context.newPage();
  const line = await context.newCDPSession(page);
  await line.send("Network.enable");
  return { page, line };
}

async function weighed(browser: Browser, { address }: FarmWithPeople, cookies: Cookies): Promise<string[]> {
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

/** Until a row's button does what it says. */
async function soonUsable(browser: Browser, { address }: FarmWithPeople, cookies: Cookies): Promise<number[]> {
  const times: number[] = [];
  for (let run = 0; run < 3; run++) {
    const { page, line } = await freshPhone(browser, cookies);
    const { cpu: rate, bytesPerSecond, latencyMs: latency } = SLOW;
    const speed = { downloadThroughput: bytesPerSecond, uploadThroughput: bytesPerSecond };
    await line.send("Network.emulateNetworkConditions", { offline: false, latency, ...speed });
    await line.send("Emulation.setCPUThrottlingRate", { rate });
    const start = performance.now();
    await page.goto(`${address}/today`, { waitUntil: "commit" });
    await page.waitForFunction(
      () => {
        const button = document.querySelector<HTMLButtonElement>('.cut-rows button[aria-label^="One more"]');
        const field = button?.parentElement?.querySelector("input");
        if (!button || !field) return false;
        const before = field.value;
        button.click();
        return field.value !== before;
      },
      undefined,
      { timeout: 120_000 },
    );
    times.push(performance.now() - start);
    await page.context().close();
  }
  return times;
}

/** Fifty ask for Today again and again; twenty of them send counts in between. Gives the time of each answer. */
async function fiftyPeople({ address }: FarmWithPeople, cookies: Cookies, helper: Page): Promise<number[]> {
  const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
  const headers = { cookie, origin: address, "content-type": "application/json" };
  const form = helper.locator(".cut-rows form").first();
  const read = (name: string) => form.locator(`input[name=${name}]`).inputValue();
  const [bedId, varietyId] = [Number(await read("bedId")), Number(await read("varietyId"))];
  const times: number[] = [];
  const timed = async (ask: () => Promise<Response>) => {
    const start = performance.now();
    const answer = await ask();
    await answer.arrayBuffer();
    if (!answer.ok) throw new Error(`answered ${answer.status}`);
    times.push(performance.now() - start);
  };
  const count = (person: number, turn: number) => ({
    ...{ key: `bench-${person}-${turn}`, cutOn: "2027-06-10", bedId, varietyId, asked: [], stemsCut: 1 },
    ...{ seenStems: 0, seenRevision: 0, countedAt: "2027-06-10T06:00:00Z" },
  });
  const person = async (number: number) => {
    for (let turn = 0; turn < TICKS_EACH; turn++) {
      await new Promise((resolve) => setTimeout(resolve, 200 + ((number * 37 + turn * 61) % 600)));
      if (number < TICKING) {
        const body = JSON.stringify({ tallies: [count(number, turn)] });
        await timed(() => fetch(`${address}/today/tallies`, { method: "POST", headers, body }));
      }
      await timed(() => fetch(`${address}/today`, { headers: { cookie } }));
    }
  };
  await Promise.all(Array.from({ length: PEOPLE }, (_, number) => person(number)));
  return times;
}
