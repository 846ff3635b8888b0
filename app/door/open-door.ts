import { randomBytes } from "node:crypto";
import { createServer, IncomingMessage, type RequestListener, type Server, type ServerResponse } from "node:http";
import type { Duplex } from "node:stream";
import { ANSWER_HEADERS, contentPolicy, isUntrue } from "./headers";
import { isJson, judge, METHODS, type Refusal } from "./judge";
import { HEAD_WITHIN_MS, MOST_CONNECTIONS, WHOLE_WITHIN_MS } from "./limits";
import { isWellFormed } from "./well-formed";

/** Time that a refused sender is given to read why, in milliseconds, before the connection is cut. */
const LINGER_MS = 1000;

/**
 * The server in front of the screens: it looks at every request, pages, files, actions and routes alike, before anything of it is read or run,
 * and puts the browser's orders on every answer.
 *
 * @param screens  answers what is let in
 * @param isDev    whether this is the server for contributors
 */
export function openDoor(screens: RequestListener, isDev = false): Server {
  const server = createServer({
    headersTimeout: HEAD_WITHIN_MS,
    requestTimeout: WHOLE_WITHIN_MS,
    connectionsCheckingInterval: 2000,
  });
  server.maxConnections = MOST_CONNECTIONS;
  const answer = (request: IncomingMessage, response: ServerResponse, isAsked: boolean) => {
    const nonce = randomBytes(16).toString("base64");
    for (const [name, said] of Object.entries(ANSWER_HEADERS)) response.setHeader(name, said);
    response.setHeader("content-security-policy", contentPolicy(nonce, isDev));
    const refusal = judge(knockOf(request), portOf(server));
    if (refusal) return turnAway(request, response, refusal);
    for (const name of Object.keys(request.headers)) if (isUntrue(name)) delete request.headers[name];
    // The framework takes the nonce for its own scripts from here.
    request.headers["content-security-policy"] = contentPolicy(nonce, isDev);
    if (isAsked) response.writeContinue();
    if (request.method === "POST" && !isJson(request.headers["content-type"] ?? ""))
      passForm(request, response, screens);
    else screens(request, response);
  };
  server.on("request", (request, response) => answer(request, response, false));
  // A sender that asks before it sends its body is answered before it does.
  server.on("checkContinue", (request, response) => answer(request, response, true));
  server.on("checkExpectation", (request, response) =>
    turnAway(request, response, { status: 417, words: "This expectation cannot be met." }),
  );
  // Only the server for contributors speaks by sockets, and only with its own pages.
  server.on("upgrade", (request, socket) => {
    if (!isDev || judge(knockOf(request), portOf(server)) || !request.headers.origin) socket.destroy();
  });
  server.on("clientError", (error: NodeJS.ErrnoException, socket) => hangUp(error, socket));
  return server;
}

/** What the door knows of a request. */
const knockOf = ({ method = "", url = "", headers, rawHeaders }: IncomingMessage) => ({
  method,
  target: url,
  headers,
  hostCount: rawHeaders.filter((name, index) => index % 2 === 0 && name.toLowerCase() === "host").length,
});

function portOf(server: Server): number {
  const address = server.address();
  return typeof address === "object" && address ? address.port : 0;
}

/** Reads a form, whose length is known to be small, and hands it on if it is whole. */
async function passForm(request: IncomingMessage, response: ServerResponse, screens: RequestListener): Promise<void> {
  try {
    const body = Buffer.concat(await request.toArray());
    const hasAction = request.headers["next-action"] !== undefined;
    if (isWellFormed(request.headers["content-type"] ?? "", hasAction, body)) screens(again(request, body), response);
    else turnAway(request, response, { status: 400, words: "This form did not arrive whole: send it again." });
  } catch {
    // The sender left before the form was whole; nobody waits for an answer.
    response.destroy();
  }
}

/** A request as it came, with the body that was read from it. */
function again(request: IncomingMessage, body: Buffer): IncomingMessage {
  const copy = new IncomingMessage(request.socket);
  const { method, url, headers, rawHeaders, httpVersion, httpVersionMajor, httpVersionMinor } = request;
  Object.assign(copy, { method, url, httpVersion, httpVersionMajor, httpVersionMinor, complete: true });
  Object.assign(copy.headers, headers);
  copy.rawHeaders.push(...rawHeaders);
  copy.push(body);
  copy.push(null);
  return copy;
}

/** Says why, lets what is still being sent run into the sand for a moment so that the words arrive, and cuts the connection. */
function turnAway(request: IncomingMessage, response: ServerResponse, { status, words }: Refusal): void {
  if (status === 405) response.setHeader("allow", METHODS.join(", "));
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8", connection: "close" });
  response.end(request.method === "HEAD" ? undefined : `${words}\n`);
  request.resume();
  const { socket } = request;
  setTimeout(() => socket.destroy(), LINGER_MS).unref();
}

const HANG_UPS: Readonly<Record<string, string>> = {
  HPE_HEADER_OVERFLOW: "431 Request Header Fields Too Large",
  ERR_HTTP_REQUEST_TIMEOUT: "408 Request Timeout",
};

/** What is no HTTP at all. */
function hangUp(error: NodeJS.ErrnoException, socket: Duplex): void {
  if (error.code === "ECONNRESET" || !socket.writable) return void socket.destroy();
  const status = HANG_UPS[error.code ?? ""] ?? "400 Bad Request";
  const words = "This request cannot be read.\n";
  socket.end(
    `HTTP/1.1 ${status}\r\nconnection: close\r\ncontent-type: text/plain; charset=utf-8\r\ncontent-length: ${words.length}\r\n\r\n${words}`,
  );
}
