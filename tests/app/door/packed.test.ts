import { createServer, get, type IncomingMessage, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { gunzipSync } from "node:zlib";
import { afterEach, expect, test } from "vitest";
import { packed } from "../../../app/door/packed";

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

const GZIP = { "accept-encoding": "gzip" };

/** Serves these screens packed, and gives the port. */
async function served(screens: RequestListener): Promise<number> {
  const server = createServer(packed(screens));
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return (server.address() as AddressInfo).port;
}

/** Asks as a browser does; the answer as it comes over the line. */
const asked = (port: number, path: string, headers: Record<string, string>) =>
  new Promise<IncomingMessage>((resolve) => get({ port, path, headers }, resolve));

/** The whole answer of these screens, packed. */
async function got(screens: RequestListener, path = "/today", headers: Record<string, string> = GZIP) {
  const answer = await asked(await served(screens), path, headers);
  const body = Buffer.concat(await answer.toArray());
  return { status: answer.statusCode, headers: answer.headers, body };
}

const PAGE = `<p>${"a row of the list ".repeat(500)}</p>`;

const page: RequestListener = (_, response) => {
  response.setHeader("content-type", "text/html; charset=utf-8");
  response.flushHeaders();
  response.write(PAGE.slice(0, 100));
  response.write(PAGE.slice(100));
  response.end();
};

test("a page goes packed to who can unpack it, whole and smaller", async () => {
  const { headers, body } = await got(page);
  expect(headers["content-encoding"]).toBe("gzip");
  expect(gunzipSync(body).toString()).toBe(PAGE);
  expect(body.length).toBeLessThan(PAGE.length / 10);
  expect(Number(headers["content-length"])).toBe(body.length);
});

test("a page that is kept in one piece goes out as itself to each of its readers, and another as itself", async () => {
  const pages = [PAGE, PAGE.toUpperCase()].map((words) => Buffer.from(words));
  const port = await served((request, response) => {
    response.setHeader("content-type", "text/html; charset=utf-8");
    response.end(pages[Number(request.url?.slice(1))]);
  });
  for (const index of [0, 1, 0, 1]) {
    const answer = await asked(port, `/${index}`, GZIP);
    expect(gunzipSync(Buffer.concat(await answer.toArray())).equals(pages[index])).toBe(true);
  }
});

test("who cannot unpack it, or asks for a part of it, has it as it is", async () => {
  for (const headers of [{}, { "accept-encoding": "br" }, { "accept-encoding": "gzip", range: "bytes=0-9" }]) {
    const answer = await got(page, "/today", headers as Record<string, string>);
    expect([answer.headers["content-encoding"], answer.body.toString()]).toEqual([undefined, PAGE]);
  }
});

test("a head that is written with the status is kept, with the status", async () => {
  const { status, headers, body } = await got((_, response) => {
    response.writeHead(200, { "content-type": "text/css", etag: "w" }).end(PAGE);
  });
  expect([status, headers.etag, headers["content-encoding"], gunzipSync(body).toString()]).toEqual([
    200,
    "w",
    "gzip",
    PAGE,
  ]);
  const sent = await got((_, response) => void response.writeHead(303, { location: "/sign-in" }).end());
  expect([sent.status, sent.headers.location, sent.body.length]).toEqual([303, "/sign-in", 0]);
});

test("what is streamed goes out line by line, unpacked: the second is sent once the first has come", {
  timeout: 30_000,
}, async () => {
  let sendNext = () => {};
  const port = await served((_, response) => {
    response.setHeader("content-type", "text/event-stream");
    response.write("data: 1\n\n");
    sendNext = () => response.end("data: 2\n\n");
  });
  const answer = await asked(port, "/changes", GZIP);
  expect(answer.headers["content-encoding"]).toBe(undefined);
  const lines: string[] = [];
  for await (const line of answer) {
    lines.push(String(line));
    if (lines.length === 1) sendNext();
  }
  expect(lines).toEqual(["data: 1\n\n", "data: 2\n\n"]);
});

test("a picture, a file that is packed already and a short answer are sent as they are", async () => {
  const answers: [string, RequestListener][] = [
    ["picture", (_, response) => response.setHeader("content-type", "image/png").end(PAGE)],
    [
      "packed",
      (_, response) => response.setHeader("content-type", "text/css").setHeader("content-encoding", "br").end(PAGE),
    ],
    ["short", (_, response) => response.setHeader("content-type", "text/html").end("short")],
  ];
  for (const [name, screens] of answers)
    expect([name, (await got(screens)).headers["content-encoding"] === "gzip"]).toEqual([name, false]);
});
