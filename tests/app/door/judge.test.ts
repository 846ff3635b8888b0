import { describe, expect, test } from "vitest";
import { judge, type Knock } from "../../../app/door/judge";
import { MOST_FORM_BYTES, MOST_SHEETS_BYTES } from "../../../app/door/limits";

/*
 * The requirement numbers are those of the OWASP Application Security Verification Standard 4.0.3, level 1, from memory. The meaning of
 * Sec-Fetch-Site: https://www.w3.org/TR/fetch-metadata/ (W3C Fetch Metadata Request Headers).
 */

const PORT = 3100;
const HOST = `127.0.0.1:${PORT}`;
const OWN = { host: HOST, origin: `http://${HOST}`, "sec-fetch-site": "same-origin" };
const ask = (target: string, headers: Knock["headers"] = {}): Knock => ({
  method: "GET",
  target,
  headers: { host: HOST, ...headers },
  hostCount: 1,
});
const send = (target: string, headers: Knock["headers"] = {}): Knock => ({
  method: "POST",
  target,
  headers: { ...OWN, "content-type": "application/json", "content-length": "2", ...headers },
  hostCount: 1,
});
const statusOf = (knock: Knock) => judge(knock, PORT)?.status ?? 200;

describe("a name that points here", () => {
  test.each([HOST, `localhost:${PORT}`])("is served when it is the machine's own: %s", (host) => {
    expect(statusOf(ask("/", { host }))).toBe(200);
  });

  test.each([
    "rebound.example:3100",
    "127.0.0.1",
    "127.0.0.1:3101",
    "127.0.0.2:3100",
    "localhost.:3100",
    "",
    "[::1]:3100",
  ])("is turned away when it is any other, as after rebinding: %s", (host) => {
    for (const target of ["/", "/farm/files/all", "/farm/files/sheet/bookings.csv", "/picking/csv", "/icon.svg"])
      expect(statusOf(ask(target, { host }))).toBe(421);
  });

  test("is asked for exactly once", () => {
    expect(statusOf({ ...ask("/"), hostCount: 2 })).toBe(421);
    expect(statusOf({ ...ask("/"), headers: {}, hostCount: 0 })).toBe(421);
  });

  test("may leave the port out where that is the usual one", () => {
    expect(judge(ask("/", { host: "localhost" }), 80)).toBe(null);
  });
});

describe("ASVS 4.2.2, 13.2.3: a request that another site's page sends", () => {
  test.each(["cross-site", "same-site"])("is turned away whatever it asks, told by the browser as %s", (site) => {
    for (const target of ["/", "/bookings", "/farm/files/all", "/picking/csv"])
      expect(statusOf(ask(target, { "sec-fetch-site": site, "sec-fetch-mode": "navigate" }))).toBe(403);
    expect(statusOf(send("/bookings/coverage", { "sec-fetch-site": site }))).toBe(403);
  });

  test.each([
    "http://localhost:3100",
    "http://127.0.0.1:8080",
    "https://127.0.0.1:3100",
    "http://rebound.example",
    "null",
    "",
  ])("cannot write or ask by POST from the origin “%s”", (origin) => {
    expect(statusOf(send("/bookings/1", { origin }))).toBe(403);
  });

  test("cannot read with an origin of its own either", () => {
    expect(statusOf(ask("/farm/files/sheet/bookings.csv", { origin: "http://elsewhere.example" }))).toBe(403);
  });

  test("passes when it is the tool's own page, an address typed in, or a program on the machine", () => {
    expect(statusOf(send("/bookings/coverage"))).toBe(200);
    expect(statusOf(ask("/", { "sec-fetch-site": "none" }))).toBe(200);
    expect(statusOf(ask("/farm/files/all"))).toBe(200);
  });
});

describe("ASVS 13.1.3, 13.2.1, 5.1.5: what is asked", () => {
  test.each(["TRACE", "OPTIONS", "PUT", "DELETE", "PATCH", "CONNECT", "PROPFIND", "get"])(
    "%s is no question here",
    (method) => {
      expect(statusOf({ ...ask("/"), method })).toBe(405);
    },
  );

  test.each([
    "//elsewhere.example/",
    "/\\elsewhere.example",
    "/%5celsewhere",
    "/a//b",
    "http://elsewhere.example/",
    "*",
    "",
    "/%ff",
    "/%",
    "/%00",
    "/%2f/x",
  ])("the address “%s” is not read", (target) => {
    expect(statusOf(ask(target))).toBe(400);
  });

  test("an address as long as a book is refused", () => {
    expect(statusOf(ask(`/?q=${"a".repeat(5000)}`))).toBe(414);
  });

  test("strange letters in a query are the screens' own business", () => {
    expect(statusOf(ask("/dates?on=%ff//x"))).toBe(200);
  });
});

describe("ASVS 12.1.1, 13.2.5: a body", () => {
  const FORM = "multipart/form-data; boundary=x";

  test.each([
    "text/plain",
    "application/x-www-form-urlencoded",
    "text/plain;charset=UTF-8",
    "application/jsonx",
    "",
    "multipart/form-data",
  ])("of the kind “%s”, which any site can send unasked, is refused", (kind) => {
    expect(statusOf(send("/bookings/coverage", { "content-type": kind }))).toBe(415);
  });

  test("of plain text passes only with the header that names an action, which no other site can add", () => {
    expect(statusOf(send("/bookings/1", { "content-type": "text/plain;charset=UTF-8", "next-action": "ab" }))).toBe(
      200,
    );
  });

  test("over the cap of its address is refused by its length alone, in words that name both sizes", () => {
    const most = (target: string, length: number) =>
      statusOf(send(target, { "content-type": FORM, "content-length": `${length}` }));
    expect(most("/bookings/1", MOST_FORM_BYTES)).toBe(200);
    expect(most("/bookings/1", MOST_FORM_BYTES + 1)).toBe(413);
    expect(most("/farm/files", MOST_SHEETS_BYTES)).toBe(200);
    expect(most("/farm/files?x=1", MOST_SHEETS_BYTES + 1)).toBe(413);
    expect(judge(send("/bookings/1", { "content-length": "2000000" }), PORT)?.words).toBe(
      "This is 1,954 kB and the most taken here is 512 kB: send it in parts.",
    );
  });

  test.each([undefined, "", "-1", "1e3", "0x10"])("whose length is %s is refused before it is read", (length) => {
    expect(statusOf(send("/bookings/1", { "content-length": length }))).toBe(411);
  });

  test("that comes in pieces of unknown length is refused", () => {
    expect(statusOf(send("/bookings/1", { "transfer-encoding": "chunked" }))).toBe(411);
  });

  test("does not come with a plain question", () => {
    expect(statusOf(ask("/", { "content-length": "5" }))).toBe(400);
    expect(statusOf(ask("/", { "content-length": "0" }))).toBe(200);
  });
});
