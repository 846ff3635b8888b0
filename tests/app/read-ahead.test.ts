import { createServer, get as httpGet, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as after } from "node:timers/promises";
import { afterEach, expect, test, vi } from "vitest";
import { keptPages } from "../../app/kept-pages/kept-pages";
import type { PageAsked } from "../../app/kept-pages/page-asked";
import { readAhead } from "../../app/kept-pages/read-ahead";

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

const QUIET_MS = 300;

/** Screens that note what they render, with what the server has rendered ahead. The farm is read, as `stamp` says, by the first page. */
async function served(first: readonly string[]) {
  const state = { rendered: [] as string[], stamp: null as string | null, version: 1, hold: Promise.resolve() };
  const screens: RequestListener = async (request, response) => {
    state.stamp = `${state.version}`;
    state.rendered.push(request.url ?? "");
    expect(request.headers).not.toHaveProperty("page-ahead");
    await state.hold;
    response.setHeader("content-type", "text/html");
    response.end(`rendered ${state.rendered.length}`);
  };
  const ask = ({ url, headers }: PageAsked) =>
    new Promise<void>((resolve, reject) => {
      httpGet(
        { port: (server.address() as AddressInfo).port, host: "127.0.0.1", path: url, headers, agent: false },
        (answer) => {
          answer.once("close", resolve).resume();
        },
      ).once("error", reject);
    });
  const stampOf = () => state.stamp;
  const server = createServer(readAhead(keptPages(screens, stampOf), stampOf, first, ask, QUIET_MS));
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const get = async (path: string, headers: Record<string, string> = {}) => {
    const answer = await fetch(`http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`, { headers });
    return answer.text();
  };
  const write = () => {
    state.stamp = `${++state.version}`;
    state.rendered.length = 0;
  };
  /** Nothing is answered until what this gives is called. */
  const hold = () => {
    let go = () => {};
    state.hold = new Promise((resolve) => {
      go = resolve;
    });
    return () => go();
  };
  const rendered = (...urls: readonly string[]) =>
    vi.waitFor(() => expect(state.rendered).toEqual(urls), { timeout: 60_000 });
  return { state, get, hold, write, rendered };
}

test("soon after the start the main screens are rendered, in their order, and the first reader has them at once", async () => {
  const { get, rendered } = await served(["/", "/bookings", "/beds"]);
  // The first reads the farm, before which nothing is kept.
  await rendered("/", "/", "/bookings", "/beds");
  expect(await get("/beds", { accept: "text/html,*/*;q=0.8", "accept-encoding": "gzip" })).toBe("rendered 4");
  await rendered("/", "/", "/bookings", "/beds");
});

test("after a write those that were read last are rendered again, the last one first, as they were asked for", async () => {
  const { state, get, hold, write, rendered } = await served(["/"]);
  await rendered("/", "/");
  await get("/beds", { cookie: "season=2028" });
  await get("/bookings");
  // While she is being answered nothing is rendered ahead: the write falls into that time.
  const letGo = hold();
  const reader = get("/picking");
  await vi.waitFor(() => expect(state.rendered).toContain("/picking"), { timeout: 60_000 });
  write();
  letGo();
  await reader;
  await rendered("/picking", "/bookings", "/beds", "/");
  expect(await get("/beds", { cookie: "season=2028" })).toBe("rendered 3");
  expect(await get("/beds")).toBe("rendered 5");
});

test("nothing is rendered ahead while a reader is being answered, and all of it afterwards", async () => {
  const { state, get, hold, write, rendered } = await served(["/", "/beds"]);
  await rendered("/", "/", "/beds");
  write();
  const letGo = hold();
  const reader = get("/buying");
  await rendered("/buying");
  await after(1000);
  expect(state.rendered).toEqual(["/buying"]);
  letGo();
  await reader;
  await rendered("/buying", "/", "/beds");
});

test("whoever claims to be the server itself is a reader", async () => {
  const { get, write, rendered } = await served(["/", "/beds"]);
  await rendered("/", "/", "/beds");
  write();
  await get("/picking", { "page-ahead": "0".repeat(32) });
  await rendered("/picking", "/", "/beds");
  write();
  await get("/farm");
  await rendered("/farm", "/picking", "/", "/beds");
});
