import { createServer, type RequestListener, type Server } from "node:http";
import { afterEach, describe, expect, test } from "vitest";
import { keptPages } from "../../app/kept-pages/kept-pages";

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

/** Screens that count how often they render, behind a door that gives every answer its nonce. */
async function served(options: { bytesAtMost?: number; answer?: RequestListener } = {}) {
  const state = { renderedCount: 0, stamp: "1" as string | null, hold: Promise.resolve() };
  const screens: RequestListener = async (request, response) => {
    // As the framework does with an answer whose reader is gone.
    if (response.destroyed) return;
    const number = ++state.renderedCount;
    await state.hold;
    const nonce = /'nonce-([^']+)'/.exec(String(request.headers["content-security-policy"]))?.[1];
    response.setHeader("content-type", "text/html; charset=utf-8");
    response.setHeader("vary", "rsc");
    response.write(`<script nonce="${nonce}"></script>${request.url} `);
    response.end(`rendered ${number}<script nonce="${nonce}"></script>`);
  };
  const listener = keptPages(options.answer ?? screens, () => state.stamp, options.bytesAtMost);
  let answerCount = 0;
  const server = createServer((request, response) => {
    const policy = `script-src 'nonce-n${++answerCount}'`;
    response.setHeader("content-security-policy", policy);
    request.headers["content-security-policy"] = policy;
    listener(request, response);
  });
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (typeof address !== "object" || !address) throw new Error("no port");
  const get = async (path: string, init: RequestInit = {}) => {
    const answer = await fetch(`http://127.0.0.1:${address.port}${path}`, init);
    return { status: answer.status, headers: answer.headers, text: await answer.text() };
  };
  return { state, get };
}

/** Nothing is rendered to its end until what this gives is called. */
function hold(state: { hold: Promise<void> }): () => void {
  let go = () => {};
  state.hold = new Promise((resolve) => {
    go = resolve;
  });
  return () => go();
}

describe("a page", () => {
  test("asked for twice is rendered once, and each answer carries its own nonce in policy and scripts", async () => {
    const { state, get } = await served();
    const answers = [await get("/beds?all"), await get("/beds?all")];
    expect(state.renderedCount).toBe(1);
    for (const [index, { headers, text }] of answers.entries()) {
      const nonce = `n${index + 1}`;
      expect(headers.get("content-security-policy")).toBe(`script-src 'nonce-${nonce}'`);
      expect(text).toBe(`<script nonce="${nonce}"></script>/beds?all rendered 1<script nonce="${nonce}"></script>`);
      expect(headers.get("vary")).toBe("rsc");
    }
  });

  test("is rendered anew after a write, and not kept while nobody can say whether there was one", async () => {
    const { state, get } = await served();
    await get("/");
    state.stamp = "2";
    expect((await get("/")).text).toContain("rendered 2");
    state.stamp = null;
    await get("/");
    await get("/");
    expect(state.renderedCount).toBe(4);
  });

  test("that was being rendered while somebody wrote is given to its reader and not kept", async () => {
    const { state, get } = await served();
    const go = hold(state);
    const first = get("/bookings");
    while (state.renderedCount === 0) await new Promise((resolve) => setImmediate(resolve));
    state.stamp = "2";
    go();
    expect((await first).text).toContain("rendered 1");
    expect((await get("/bookings")).text).toContain("rendered 2");
  });

  test("asked for by fifty at once is rendered once", async () => {
    const { state, get } = await served();
    const answers = await Promise.all(Array.from({ length: 50 }, () => get("/weeks/2027-W20")));
    expect(state.renderedCount).toBe(1);
    expect(new Set(answers.map(({ text }) => /nonce="([^"]+)"/.exec(text)?.[1])).size).toBe(50);
  });

  test("asked for after a write while it is being rendered as it was is rendered once more, when that is over, for all who asked since", async () => {
    const { state, get } = await served();
    const go = hold(state);
    const before = get("/today");
    while (state.renderedCount === 0) await new Promise((resolve) => setImmediate(resolve));
    const since = Array.from({ length: 20 }, (_, index) => {
      state.stamp = `${2 + index}`;
      return get("/today");
    });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(state.renderedCount).toBe(1);
    go();
    expect((await before).text).toContain("rendered 1");
    for (const { text } of await Promise.all(since)) expect(text).toContain("rendered 2");
    expect(state.renderedCount).toBe(2);
  });

  test("whose first reader leaves is rendered again, once, for those who wait", async () => {
    const { state, get } = await served();
    const go = hold(state);
    const leaving = new AbortController();
    const left = get("/beds", { signal: leaving.signal }).catch(() => null);
    while (state.renderedCount === 0) await new Promise((resolve) => setImmediate(resolve));
    const waiting = Array.from({ length: 5 }, () => get("/beds"));
    leaving.abort();
    await left;
    while (state.renderedCount === 1) await new Promise((resolve) => setImmediate(resolve));
    go();
    for (const { text } of await Promise.all(waiting)) expect(text).toContain("rendered 2");
    expect(state.renderedCount).toBe(2);
  });

  test("is rendered after another that is under way, and before it where that one hangs", async () => {
    const { state, get } = await served();
    const go = hold(state);
    const hangs = get("/keep-or-dig");
    while (state.renderedCount === 0) await new Promise((resolve) => setImmediate(resolve));
    const waits = get("/today");
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(state.renderedCount).toBe(1);
    while (state.renderedCount === 1) await new Promise((resolve) => setTimeout(resolve, 20));
    go();
    expect((await waits).text).toContain("/today rendered 2");
    expect((await hangs).text).toContain("/keep-or-dig rendered 1");
  });

  test("whose reader leaves before its turn is rendered for the next who asks", async () => {
    const { state, get } = await served();
    const go = hold(state);
    const before = get("/bookings");
    while (state.renderedCount === 0) await new Promise((resolve) => setImmediate(resolve));
    const leaving = new AbortController();
    const left = get("/today", { signal: leaving.signal }).catch(() => null);
    await new Promise((resolve) => setTimeout(resolve, 50));
    leaving.abort();
    await left;
    await new Promise((resolve) => setTimeout(resolve, 50));
    go();
    await before;
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect((await get("/today")).text).toContain("/today rendered 2");
  });

  test("is another for another address, season or kind of request", async () => {
    const { state, get } = await served();
    await get("/beds");
    await get("/beds?crop=1");
    await get("/beds", { headers: { cookie: "season=2028" } });
    await get("/beds", { headers: { rsc: "1" } });
    await get("/beds", { headers: { "accept-language": "en-NZ", referer: "http://127.0.0.1/" } });
    expect(state.renderedCount).toBe(4);
  });
});

describe("what is not kept", () => {
  test("a form sent, a page of the farm's files, an answer that is no page, and one that sets a cookie", async () => {
    const { state, get } = await served();
    for (let time = 0; time < 2; time++) {
      await get("/beds", { method: "POST", body: "x" });
      await get("/farm/history");
      await get("/bedside");
    }
    expect(state.renderedCount).toBe(6);
    for (const [status, name, said] of [
      [404, "content-type", "text/html"],
      [200, "content-type", "text/csv"],
      [200, "set-cookie", "season=2027"],
    ] as const) {
      let count = 0;
      const { get: ask } = await served({
        answer: (_, response) => {
          count++;
          response.statusCode = status;
          response.setHeader("content-type", "text/html");
          response.setHeader(name, said);
          response.end("once");
        },
      });
      expect([(await ask("/beds")).status, (await ask("/beds")).text]).toEqual([status, "once"]);
      expect(count).toBe(2);
    }
  });

  test("more than the memory for it: the page least lately read goes first", async () => {
    const { state, get } = await served({ bytesAtMost: 150 });
    await get("/beds?1");
    await get("/beds?2");
    await get("/beds?1");
    await get("/beds?3");
    expect(state.renderedCount).toBe(3);
    await get("/beds?1");
    expect(state.renderedCount).toBe(3);
    await get("/beds?2");
    expect(state.renderedCount).toBe(4);
  });
});
