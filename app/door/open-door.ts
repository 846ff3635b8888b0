import { randomBytes } from "node:crypto";
import { createServer, IncomingMessage, type RequestListener, type Server, type ServerResponse } from "node:http";
import { createServer as createEncrypted } from "node:https";
import type { Duplex } from "node:stream";
import { calledActions } from "./called-actions";
import { type Gate, OWN_ASKING, ROLE_HEADER } from "./gate";
import { ANSWER_HEADERS, contentPolicy, isUntrue } from "./headers";
import { isJson, judge, METHODS, type Refusal, type Site, THIS_MACHINE } from "./judge";
import { HEAD_WITHIN_MS, MOST_CONNECTIONS, WHOLE_WITHIN_MS } from "./limits";
import { partsOf } from "./multipart";
import { isWellFormed } from "./well-formed";

/** Time that a refused sender is given to read why, in milliseconds, before the connection is cut. */
const LINGER_MS = 1000;

/**
 * `isDev` opens the server for contributors. `site` says by which names the tool is served, looked up anew for each request: a network gives new ones.
 * `gate` lets each of the farm's people through to what is theirs; without one whoever reaches the door is the owner. `tls` holds a certificate and its key.
 */
export type DoorWays = {
  readonly isDev?: boolean;
  readonly site?: () => Site;
  readonly gate?: Gate;
  readonly tls?: { readonly cert: Buffer; readonly key: Buffer };
};

/**
 * The server in front of the screens: it looks at every request, pages, files, actions and routes alike, before anything of it is read or run,
 * and puts the browser's orders on every answer.
 *
 * @param screens  answers what is let in
 */
export function openDoor(screens: RequestListener, ways: DoorWays = {}): Server {
  const { isDev = false, site = () => THIS_MACHINE, tls } = ways;
  const limits = {
    headersTimeout: HEAD_WITHIN_MS,
    requestTimeout: WHOLE_WITHIN_MS,
    connectionsCheckingInterval: 2000,
  };
  const server = tls ? createEncrypted({ ...limits, ...tls }) : createServer(limits);
  server.maxConnections = MOST_CONNECTIONS;
  // Who somebody is stands in a file, which may be damaged: then nobody comes in, and the server goes on.
  const admissionOf = (request: IncomingMessage) => {
    try {
      return ways.gate?.admits(request);
    } catch (error) {
      console.error(error);
      return { kind: "refused", refusal: { status: 503, words: "Who may come in cannot be read." } } as const;
    }
  };
  const answer = (request: IncomingMessage, response: ServerResponse, isAsked: boolean) => {
    const nonce = randomBytes(16).toString("base64");
    for (const [name, said] of Object.entries(ANSWER_HEADERS)) response.setHeader(name, said);
    response.setHeader("content-security-policy", contentPolicy(nonce, isDev));
    const refusal = judge(knockOf(request), portOf(server), site());
    if (refusal) return turnAway(request, response, refusal);
    const admission = admissionOf(request);
    if (admission?.kind === "refused") return turnAway(request, response, admission.refusal);
    for (const name of Object.keys(request.headers)) if (isUntrue(name)) delete request.headers[name];
    delete request.headers[OWN_ASKING];
    if (admission?.kind === "sent") return void response.writeHead(303, { location: admission.to }).end();
    // The framework takes the nonce for its own scripts from here.
    request.headers["content-security-policy"] = contentPolicy(nonce, isDev);
    if (isAsked) response.writeContinue();
    if (!ways.gate || !admission) return pass(request, response, screens, () => null);
    const { gate } = ways;
    const { role, asking } = admission;
    request.headers[ROLE_HEADER] = role;
    const toTheirs: RequestListener = (passed, said) => gate.letThrough(asking, () => screens(passed, said));
    return pass(request, response, toTheirs, (called) => gate.callRefusal(role, called));
  };
  server.on("request", (request, response) => answer(request, response, false));
  // A sender that asks before it sends its body is answered before it does.
  server.on("checkContinue", (request, response) => answer(request, response, true));
  server.on("checkExpectation", (request, response) =>
    turnAway(request, response, { status: 417, words: "This expectation cannot be met." }),
  );
  // Only the server for contributors speaks by sockets, and only with its own pages.
  server.on("upgrade", (request, socket) => {
    if (!isDev || judge(knockOf(request), portOf(server), site()) || !request.headers.origin) socket.destroy();
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

/** Hands a request on; the body of a form, and of whatever calls an action, is looked at before. */
function pass(request: IncomingMessage, response: ServerResponse, screens: RequestListener, mayCall: MayCall): void {
  const isCall = request.headers["next-action"] !== undefined || !isJson(request.headers["content-type"] ?? "");
  if (request.method === "POST" && isCall) passForm(request, response, screens, mayCall);
  else screens(request, response);
}

/** Why these actions may not be called, or null. */
type MayCall = (called: readonly string[]) => Refusal | null;

/** Reads a form, whose length is known to be small, and hands it on if it is whole and its sender may call what it calls. */
async function passForm(
  request: IncomingMessage,
  response: ServerResponse,
  screens: RequestListener,
  mayCall: MayCall,
): Promise<void> {
  try {
    const body = Buffer.concat(await request.toArray());
    const kind = request.headers["content-type"] ?? "";
    const action = request.headers["next-action"];
    const header = typeof action === "string" ? action : undefined;
    if (!isWellFormed(kind, header !== undefined, body))
      return turnAway(request, response, { status: 400, words: "This form did not arrive whole: send it again." });
    const parts = /^multipart\//i.test(kind) ? (partsOf(kind, body) ?? []) : [];
    const refusal = mayCall(calledActions(header, parts));
    if (refusal) turnAway(request, response, refusal);
    else screens(again(request, body), response);
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
