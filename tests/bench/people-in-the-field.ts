import type { Browser, Page } from "playwright-core";
import { PHONE } from "../browser/open-page";

const PEOPLE = 50;
const COUNTING = 20;
/** How long they go on, and how long somebody who counts takes for a row: brisk, and each at another pace. */
const GO_ON_MS = 10_000;
/** What is answered so soon after all fifty have come at once to a server just started is not counted: they have had Today open for a while. */
const WARM_UP_MS = 3000;
const ROW_MS = { least: 2000, more: 2000 };
/** As long as a page rests at most (app/field/live-farm.client.tsx). */
const LONGEST_REST_MS = 700;

const after = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** How soon what a helper counts stands on other screens, each on a phone of its own: milliseconds from the tap, count by count. */
export async function followed(browser: Browser, address: string, owner: Page, helper: Page) {
  const open = async (of: Page, name: string, path: string) => {
    const context = await browser.newContext({ viewport: PHONE, storageState: await of.context().storageState() });
    const page = await context.newPage();
    await page.goto(address + path, { waitUntil: "load" });
    return { name, page, times: [] as number[] };
  };
  const screens = [
    await open(helper, "a helper’s Today", "/today"),
    await open(owner, "the owner’s Today", "/today"),
    await open(owner, "Cooler", "/farm/cooler"),
    await open(owner, "Bookings", "/bookings"),
    await open(owner, "the next day’s list", "/picking?day=2027-06-12"),
  ];
  await helper.goto(`${address}/today`, { waitUntil: "load" });
  await after(3000);
  for (let count = 0; count < 6; count++) {
    // Stems that are not there move bookings and lists; stems that are stand in the cooler.
    const button = count % 2 === 0 ? { name: "None left" } : { name: /^Save \d+$/ };
    const answer = helper.waitForResponse((said) => said.url().endsWith("/today/tallies"));
    const start = performance.now();
    await helper.locator(".cut-rows > li").first().getByRole("button", button).click();
    const { revision } = await (await answer).json();
    await Promise.all(
      screens.map(async ({ page, times }) => {
        await page.waitForFunction(
          (at) => Number(document.querySelector<HTMLElement>("[data-revision]")?.dataset.revision) >= at,
          revision,
          { polling: 20 },
        );
        times.push(performance.now() - start);
      }),
    );
    await after(1500);
  }
  for (const { page } of screens) await page.context().close();
  return screens;
}

/** What a phone asks for when it makes its list anew: the framework's own question. */
async function questionOf(helper: Page): Promise<{ url: string; headers: Record<string, string> }> {
  const asked = helper.waitForRequest((request) => request.method() === "GET" && "rsc" in request.headers());
  await helper.locator(".cut-rows > li").first().getByRole("button", { name: "None left" }).click();
  const request = await asked;
  return { url: request.url(), headers: await request.allHeaders() };
}

/**
 * Fifty people with Today open, each of whom asks for the list anew whenever somebody has counted, as the page does; twenty of them count. Gives the
 * milliseconds of each answer.
 */
export async function fiftyPeople(address: string, helper: Page): Promise<{ ticks: number[]; pages: number[] }> {
  const form = helper.locator(".cut-rows form").last();
  const read = (name: string) => form.locator(`input[name=${name}]`).inputValue();
  const [bedId, varietyId] = [Number(await read("bedId")), Number(await read("varietyId"))];
  const question = await questionOf(helper);
  const { cookie = "", host: _, ...headers } = question.headers;
  const [ticks, pages]: [number[], number[]] = [[], []];
  const timed = async (times: number[], ask: () => Promise<Response>): Promise<string> => {
    const start = performance.now();
    const answer = await ask();
    const said = await answer.text();
    if (!answer.ok || answer.redirected) throw new Error(`answered ${answer.status}`);
    if (start >= begun) times.push(performance.now() - start);
    return said;
  };
  let latest = 0;
  const begun = performance.now() + WARM_UP_MS;
  const end = begun + GO_ON_MS;
  const follows = async () => {
    for (let seen = 0; performance.now() < end; ) {
      if (seen === latest) await after(20);
      else {
        seen = latest;
        const start = performance.now();
        await timed(pages, () => fetch(question.url, { headers: { ...headers, cookie } }));
        await after(Math.min(performance.now() - start, LONGEST_REST_MS));
      }
    }
  };
  const counts = async (person: number) => {
    for (let turn = 0; performance.now() < end; turn++) {
      await after(ROW_MS.least + ((person * 379 + turn * 617) % ROW_MS.more));
      const tally = {
        ...{ key: `bench-${person}-${turn}`, cutOn: "2027-06-10", bedId, varietyId, asked: [], stemsCut: 1 },
        ...{ seenStems: 0, seenRevision: 0, countedAt: "2027-06-10T06:00:00Z" },
      };
      const said = await timed(ticks, () =>
        fetch(`${address}/today/tallies`, {
          method: "POST",
          headers: { cookie, origin: address, "content-type": "application/json" },
          body: JSON.stringify({ tallies: [tally] }),
        }),
      );
      latest = Math.max(latest, JSON.parse(said).revision);
    }
  };
  await Promise.all([
    ...Array.from({ length: PEOPLE }, follows),
    ...Array.from({ length: COUNTING }, (_, person) => counts(person)),
  ]);
  return { ticks, pages };
}
