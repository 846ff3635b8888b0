import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { workerScript } from "../../../app/field-worker/worker-script";
import { mayOpen } from "../../../app/people/allowed";

type Cached = Map<string, Map<string, Response>>;
type Heard = { request: Request; respondWith: (answer: Promise<Response>) => void };

const FARM = "https://farm.example:3100";

/** The worker in a browser of its own, small as it is: caches by name, and a farm that answers as long as there is a line. */
function worker(buildId: string, cached: Cached = new Map()) {
  const listeners = new Map<string, (event: unknown) => void>();
  const farm = { hasLine: true, said: "made 06:40" };
  const phone = { hasRoom: true };
  const addressOf = (asked: Request | string) => (typeof asked === "string" ? asked : asked.url);
  const caches = {
    keys: async () => [...cached.keys()],
    delete: async (name: string) => cached.delete(name),
    open: async (name: string) => {
      const pages = cached.get(name) ?? new Map<string, Response>();
      cached.set(name, pages);
      return {
        match: async (asked: Request | string) => pages.get(addressOf(asked))?.clone(),
        put: async (asked: Request | string, answer: Response) => {
          if (!phone.hasRoom) throw new DOMException("no room", "QuotaExceededError");
          pages.set(addressOf(asked), answer);
        },
        add: async (asked: string) => void pages.set(asked, new Response("a file")),
      };
    },
    match: async (asked: Request | string, { cacheName }: { cacheName: string }) =>
      cached.get(cacheName)?.get(addressOf(asked))?.clone(),
  };
  const self = {
    location: { origin: FARM },
    clients: { claim: async () => {} },
    skipWaiting: () => {},
    addEventListener: (name: string, listener: (event: unknown) => void) => listeners.set(name, listener),
  };
  const fetch = async () => {
    if (!farm.hasLine) throw new TypeError("no line");
    return new Response(farm.said);
  };
  runInNewContext(workerScript(buildId), {
    ...{ self, caches, fetch, URL, setTimeout, Promise, Error },
    Response: Object.assign(Response, {
      redirect: (to: string) => new Response(null, { status: 302, headers: { to } }),
    }),
  });
  const waited = async (name: string, data?: unknown) => {
    let work: Promise<unknown> = Promise.resolve();
    listeners.get(name)?.({ data, waitUntil: (promise: Promise<unknown>) => (work = promise) });
    await work;
  };
  const ask = async (path: string, mode = "navigate", method = "GET") => {
    let answer: Promise<Response> | null = null;
    const request = { url: FARM + path, method, mode } as unknown as Request;
    const event: Heard = { request, respondWith: (given) => (answer = given) };
    listeners.get("fetch")?.(event);
    return answer as Promise<Response> | null;
  };
  return {
    farm,
    phone,
    cached,
    ask,
    begin: () => waited("activate"),
    keep: (data: unknown) => waited("message", data),
  };
}

test("a page of the field that was open is given again without a line; another leads to today's list", async () => {
  const { farm, ask } = worker("b1");
  await (await ask("/today"))?.text();
  farm.hasLine = false;
  expect(await (await ask("/today"))?.text()).toBe("made 06:40");
  expect((await ask("/picking?day=2027-06-11"))?.status).toBe(302);
});

test("without a line and with nothing kept it says so, and keeps no page that is not of the field", async () => {
  const { farm, ask } = worker("b1");
  await ask("/bookings");
  await ask("/farm/people");
  farm.hasLine = false;
  for (const path of ["/bookings", "/farm/people", "/today"]) {
    const answer = await ask(path);
    expect([path, answer?.status, (await answer?.text())?.includes("No signal")]).toEqual([path, 503, true]);
  }
});

test("with a line the farm's own answer is given, and kept in the place of the one before", async () => {
  const { farm, ask } = worker("b1");
  await (await ask("/today"))?.text();
  farm.said = "made 07:10";
  expect(await (await ask("/today"))?.text()).toBe("made 07:10");
  farm.hasLine = false;
  expect(await (await ask("/today"))?.text()).toBe("made 07:10");
});

test("on a phone without room the farm's own answer is given all the same, and nothing of it is kept", async () => {
  const { farm, phone, ask, keep } = worker("b1");
  phone.hasRoom = false;
  expect(await (await ask("/today"))?.text()).toBe("made 06:40");
  expect(await (await ask("/_next/static/a.js", "no-cors"))?.text()).toBe("made 06:40");
  await keep({ pages: [`${FARM}/today`] });
  farm.hasLine = false;
  expect((await ask("/today"))?.status).toBe(503);
});

test("whoever is shown the way in has no page kept any more", async () => {
  for (const way of ["/sign-in", "/join/abc"]) {
    const { farm, ask } = worker("b1");
    await (await ask("/today"))?.text();
    await (await ask(way))?.text();
    farm.hasLine = false;
    expect((await ask("/today"))?.status).toBe(503);
  }
});

test("a new build of the tool drops what the one before kept", async () => {
  const before = worker("b1");
  await (await before.ask("/today"))?.text();
  const after = worker("b2", before.cached);
  await after.begin();
  after.farm.hasLine = false;
  expect((await after.ask("/today"))?.status).toBe(503);
});

test("what is sent, asked in between and heard goes through untouched; files of the screens are kept", async () => {
  const { farm, ask } = worker("b1");
  expect(await ask("/today/tallies", "cors", "POST")).toBeNull();
  expect(await ask("/changes", "cors")).toBeNull();
  expect(await ask("/today?_rsc=1", "cors")).toBeNull();
  await (await ask("/_next/static/a.js", "no-cors"))?.text();
  farm.hasLine = false;
  expect(await (await ask("/_next/static/a.js", "no-cors"))?.text()).toBe("made 06:40");
});

test("a page that was open before the worker came is kept when it says so", async () => {
  const { farm, ask, keep } = worker("b1");
  await keep({ pages: [`${FARM}/today`], files: [`${FARM}/_next/static/a.js`] });
  farm.hasLine = false;
  expect(await (await ask("/today"))?.text()).toBe("made 06:40");
  expect(await (await ask("/_next/static/a.js", "no-cors"))?.text()).toBe("a file");
});

test("every page that is kept is one that a helper may open", () => {
  const [, list] = /FIELD_PAGES = (\[.*?\]);/.exec(workerScript("b1")) ?? [];
  const pages: string[] = JSON.parse(list ?? "[]");
  expect(pages.length).toBeGreaterThan(3);
  for (const page of pages) expect([page, mayOpen("helper", page)]).toEqual([page, true]);
});
