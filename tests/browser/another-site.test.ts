import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { openBrowser } from "./open-page";

/** A page of another site, open in the grower's own browser, tries what such a page can try. */

const CSV = "/farm/files/sheet/bookings.csv";
let stranger: Server;
let browser: Browser;
let page: Page;
let statuses: [path: string, status: number][] = [];

beforeAll(async () => {
  stranger = createServer((_, response) => response.end("<!doctype html><title>elsewhere</title><body></body>"));
  await new Promise<void>((resolve) => stranger.listen(0, "127.0.0.1", resolve));
  browser = await openBrowser(["--host-resolver-rules=MAP *.example 127.0.0.1"]);
});
afterAll(async () => {
  await browser.close();
  stranger.close();
});
beforeEach(async () => {
  page = await browser.newPage();
  statuses = [];
  page.on("response", (answer) => statuses.push([new URL(answer.url()).pathname, answer.status()]));
  await page.goto(`http://elsewhere.example:${(stranger.address() as AddressInfo).port}/`);
});

const inPage = (work: (address: string) => Promise<unknown>) => page.evaluate(work, demoAddress());

test("it reads no file of the farm: not by fetch, not as a script, not as a picture", async () => {
  const got = await page.evaluate(async (file) => {
    const tried = async (mode: RequestMode) =>
      fetch(file, { mode, credentials: "include" }).then(
        async (answer) => answer.type === "opaque" || (await answer.text()),
        () => "refused",
      );
    const loaded = (element: HTMLScriptElement | HTMLImageElement) =>
      new Promise((resolve) => {
        element.onload = () => resolve("loaded");
        element.onerror = () => resolve("refused");
        element.src = file;
        document.body.append(element);
      });
    return [await tried("cors"), await loaded(document.createElement("script")), await loaded(new Image())];
  }, demoAddress() + CSV);
  expect(got).toEqual(["refused", "refused", "refused"]);
  expect(statuses.filter(([path]) => path === CSV).every(([, status]) => status === 403)).toBe(true);
});

test("it puts no page of the tool into a frame, so that nobody presses Undo unseen", async () => {
  await inPage(async (address) => {
    const frame = document.createElement("iframe");
    frame.src = `${address}/farm/history`;
    document.body.append(frame);
    await new Promise((resolve) => {
      frame.onload = resolve;
    });
  });
  expect(statuses.filter(([path]) => path === "/farm/history")).toEqual([["/farm/history", 403]]);
  const shown = await Promise.all(page.frames().map((frame) => frame.content()));
  expect(shown.join("")).not.toContain("Undo");
});

test("it asks no question and writes nothing: neither text nor a form that it posts is let in", async () => {
  await inPage(async (address) => {
    const body = JSON.stringify({ bookingId: null, form: {} });
    await fetch(`${address}/bookings/coverage`, {
      method: "POST",
      mode: "no-cors",
      body,
      headers: { "content-type": "text/plain" },
    }).catch(() => null);
    await fetch(`${address}/bookings/coverage`, {
      method: "POST",
      body,
      headers: { "content-type": "application/json" },
    }).catch(() => null);
  });
  expect(statuses.filter(([path, status]) => path === "/bookings/coverage" && status < 400)).toEqual([]);
  const [answer] = await Promise.all([
    page.waitForNavigation(),
    inPage(async (address) => {
      const form = document.createElement("form");
      Object.assign(form, { action: `${address}/farm/history`, method: "post", enctype: "multipart/form-data" });
      form.innerHTML = '<input name="changeId" value="1">';
      document.body.append(form);
      form.submit();
    }),
  ]);
  expect([answer?.status(), await answer?.text()]).toEqual([403, expect.stringContaining("comes from another site")]);
});

test("a name of its own that it points at this machine is served nothing", async () => {
  const port = new URL(demoAddress()).port;
  const answer = await page.goto(`http://rebound.example:${port}${CSV}`);
  expect(answer?.status()).toBe(421);
});

test("the tool's own two names are two sites to each other", async () => {
  const address = demoAddress();
  await page.goto(address.replace("127.0.0.1", "localhost"));
  expect(statuses.at(-1)?.[1]).not.toBe(421);
  const asked = await page.request.fetch(address + CSV, { headers: { "sec-fetch-site": "cross-site" } });
  expect(asked.status()).toBe(403);
  const tried = await page.evaluate((file) => fetch(file, { mode: "no-cors" }).catch(() => "refused"), address + CSV);
  expect(tried).toBe("refused");
});
