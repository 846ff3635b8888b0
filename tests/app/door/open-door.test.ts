import type { IncomingMessage, Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { openDoor } from "../../../app/door/open-door";
import { knock } from "./knock";

/** A door with no screens behind it but one that keeps what was let in and says "in". */
const letIn: { request: IncomingMessage; body: string }[] = [];
let door: Server;
let port = 0;
let own = "";

beforeAll(async () => {
  door = openDoor(async (request, response) => {
    letIn.push({ request, body: Buffer.concat(await request.toArray()).toString() });
    response.end("in");
  });
  await new Promise<void>((resolve) => door.listen(0, "127.0.0.1", resolve));
  port = (door.address() as AddressInfo).port;
  own = `Host: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nConnection: close\r\n`;
});
afterAll(() => door.close());
beforeEach(() => {
  letIn.length = 0;
});

const post = (headers: string, body = "") =>
  knock(port, `POST /bookings/1 HTTP/1.1\r\n${own}Content-Length: ${Buffer.byteLength(body)}\r\n${headers}\r\n${body}`);

describe("what is let in", () => {
  test("gets its body whole, and none of the headers by which a proxy or the framework would speak", async () => {
    const body = '--x\r\nContent-Disposition: form-data; name="client"\r\n\r\nÀ la ferme\r\n--x--\r\n';
    const headers =
      "Content-Type: multipart/form-data; boundary=x\r\nX-Forwarded-Host: evil\r\nX-Nonce: a\r\nForwarded: for=1\r\n";
    const said = await post(`${headers}Content-Security-Policy: script-src 'nonce-mine'\r\n`, body);
    expect(said.status).toBe(200);
    expect(letIn.map((one) => one.body)).toEqual([body]);
    const { headers: passed, method, url } = letIn[0].request;
    expect([method, url]).toEqual(["POST", "/bookings/1"]);
    expect(Object.keys(passed).filter((name) => /^x-|forwarded/.test(name))).toEqual([]);
    expect(passed["content-security-policy"]).not.toContain("mine");
  });

  test("is answered with the browser's orders and a nonce of its own (ASVS 14.4.1 to 14.4.7, from memory)", async () => {
    const ask = () => knock(port, `GET / HTTP/1.1\r\n${own}\r\n`);
    const [one, two] = [await ask(), await ask()];
    for (const order of [
      "x-content-type-options: nosniff",
      "referrer-policy: same-origin",
      "x-frame-options: DENY",
      "permissions-policy: ",
    ])
      expect(one.head).toContain(order);
    for (const rule of ["default-src 'none'", "frame-ancestors 'none'", "base-uri 'none'", "style-src-attr 'none'"])
      expect(one.head).toContain(rule);
    expect(one.head).not.toMatch(/unsafe-(inline|eval)/);
    const nonce = (head: string) => /'nonce-([^']+)'/.exec(head)?.[1];
    expect(nonce(one.head)).toHaveLength(24);
    expect(nonce(one.head)).not.toBe(nonce(two.head));
    expect(letIn[0].request.headers["content-security-policy"]).toContain(`'nonce-${nonce(one.head)}'`);
  });
});

describe("what is not", () => {
  test("reaches no screen, is told why in words, and with the same orders", async () => {
    const said = await knock(port, "GET /farm/files/all HTTP/1.1\r\nHost: rebound.example\r\n\r\n");
    expect([said.status, said.isClosed]).toEqual([421, true]);
    expect(said.body).toContain("Nothing is served under this name");
    expect(said.head).toContain("x-content-type-options: nosniff");
    expect(letIn).toEqual([]);
  });

  test("is answered before its body is sent, also when the sender asks first", async () => {
    const large = "Content-Length: 999999999\r\nContent-Type: multipart/form-data; boundary=x\r\n";
    for (const asking of ["", "Expect: 100-continue\r\n"]) {
      const said = await knock(port, `POST /farm/files HTTP/1.1\r\n${own}${large}${asking}\r\n`);
      expect([said.status, said.isClosed]).toEqual([413, true]);
      expect(said.body).toContain("send it in parts");
    }
    expect(letIn).toEqual([]);
  });

  test("is read no further when it goes on sending", async () => {
    let readBytes = (): number => 0;
    door.once("connection", (socket) => {
      readBytes = () => socket.bytesRead;
    });
    const large = `POST /farm/files HTTP/1.1\r\n${own}Content-Length: 999999999\r\nContent-Type: application/json\r\n\r\n`;
    const said = await knock(port, Buffer.concat([Buffer.from(large), Buffer.alloc(64 * 1024 * 1024, "a")]));
    expect(said.isClosed).toBe(true);
    expect(letIn).toEqual([]);
    expect(readBytes()).toBeGreaterThan(0);
    expect(readBytes()).toBeLessThan(4 * 1024 * 1024);
  });

  test.each([
    ["text a form of any site can send", "Content-Type: text/plain\r\n", "{}", 415],
    ["a form that is cut off", "Content-Type: multipart/form-data; boundary=x\r\n", "--x\r\nContent-Disp", 400],
    ["a form that is garbage", "Content-Type: multipart/form-data; boundary=x\r\n", "garbage", 400],
    ["a call that is no JSON", "Content-Type: text/plain\r\nNext-Action: ab\r\n", "{", 400],
  ])("passes when it is %s", async (_, headers, body, status) => {
    expect((await post(headers, body)).status).toBe(status);
    expect(letIn).toEqual([]);
  });

  test.each([
    ["no HTTP", "\0\0\0\r\n\r\n", 400],
    ["TRACE", "TRACE / HTTP/1.1\r\nHost: OWN\r\n\r\n", 405],
    ["a method nobody knows", "FOO / HTTP/1.1\r\nHost: OWN\r\n\r\n", 400],
    ["a head of 20 kB", `GET / HTTP/1.1\r\nHost: OWN\r\nX: ${"a".repeat(20_000)}\r\n\r\n`, 431],
    ["two lengths", "POST / HTTP/1.1\r\nHost: OWN\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab", 400],
    [
      "a length and pieces",
      "POST / HTTP/1.1\r\nHost: OWN\r\nContent-Length: 1\r\nTransfer-Encoding: chunked\r\n\r\n",
      400,
    ],
    ["two names", "GET / HTTP/1.1\r\nHost: OWN\r\nHost: rebound.example\r\n\r\n", 421],
    ["no name", "GET / HTTP/1.0\r\n\r\n", 421],
    ["an expectation", "GET / HTTP/1.1\r\nHost: OWN\r\nExpect: the-moon\r\n\r\n", 417],
  ])("is answered as what it is when it is %s", async (_, bytes, status) => {
    const said = await knock(port, bytes.replace("OWN", `127.0.0.1:${port}`));
    expect([said.status, said.isClosed]).toEqual([status, true]);
    expect(letIn).toEqual([]);
  });

  test.each([
    "GET / HTTP/1.1\r\nHost: OWN\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n\r\n",
    "CONNECT a:1 HTTP/1.1\r\nHost: OWN\r\n\r\n",
  ])("is hung up on when it wants to leave HTTP: %s", async (bytes) => {
    expect(await knock(port, bytes.replace("OWN", `127.0.0.1:${port}`))).toMatchObject({ status: 0, isClosed: true });
  });
});

test("when it cannot be read who may come in, nobody does, in words, and the server goes on", async () => {
  const logged = vi.spyOn(console, "error").mockImplementation(() => {});
  const gate = {
    admits: () => {
      throw new SyntaxError("the people file is damaged");
    },
    callRefusal: () => null,
    letThrough: () => undefined,
  };
  const closed = openDoor((_, response) => void response.end("in"), { gate });
  await new Promise<void>((resolve) => closed.listen(0, "127.0.0.1", resolve));
  const { port: at } = closed.address() as AddressInfo;
  for (const _ of [1, 2]) {
    const answer = await fetch(`http://127.0.0.1:${at}/`);
    expect([answer.status, (await answer.text()).includes("Who may come in cannot be read.")]).toEqual([503, true]);
  }
  expect(logged).toHaveBeenCalledTimes(2);
  logged.mockRestore();
  closed.close();
});
