import { randomBytes } from "node:crypto";
import { readFileSync } from "node:fs";
import { get } from "node:http";
import { get as getEncrypted } from "node:https";
import { parseArgs } from "node:util";
import { tsImport } from "tsx/esm/api";

/**
 * Serves the built screens behind the door: on this machine alone, or with `--people` on its network, to whoever signs in. `--dev` makes screens anew
 * as they are edited. `PORT` names the port, 3100 when it does not and whichever is free when it is 0; where somebody listens already, the next free
 * one is taken.
 */

const LAST_PORT = 65_535;
/** What she who opens the tool looks at first. */
const MAIN_SCREENS = ["/", "/bookings", "/keep-or-dig", "/beds", "/picking", "/buying", "/what-if", "/enquiry"];
const { isDev, isForPeople, host, tls } = asked();
const wantedPort = portIn(process.env.PORT || "3100");

process.env.NODE_ENV = isDev ? "development" : "production";
process.env.NEXT_TELEMETRY_DISABLED = "1";
const { default: next } = await import("next");
const { openDoor } = await tsImport("./door/open-door.ts", import.meta.url);
const { failedInWords } = await tsImport("./door/failed-page.ts", import.meta.url);
const { packed } = await tsImport("./door/packed.ts", import.meta.url);
const { keptPages } = await tsImport("./kept-pages/kept-pages.ts", import.meta.url);
const { readAhead } = await tsImport("./kept-pages/read-ahead.ts", import.meta.url);
const { OWN_ASKING } = await tsImport("./door/gate.ts", import.meta.url);
const { openToPeople, siteOf } = await tsImport("./people/open-to-people.ts", import.meta.url);
const { certNames } = await tsImport("./people/cert-names.ts", import.meta.url);

const scheme = tls ? "https" : "http";
/** By which the tool tells its own asking for pages from others'. */
const secret = randomBytes(32).toString("base64url");
const certified = tls ? orEnd(() => certNames(tls.cert)) : [];
const addressNow = () => `${scheme}://${siteOf(host, scheme, certified).names[0]}:${port}`;
const gate = isForPeople ? orEnd(() => openToPeople(secret, addressNow, tls !== undefined)) : undefined;
if (gate === null) {
  console.error("\n  The farm has no owner's password yet. Set one, then open it to its people: npm run password\n");
  process.exit(1);
}

let open;
const opened = new Promise((resolve) => {
  open = resolve;
});
const site = isForPeople ? () => siteOf(host, scheme, certified) : undefined;
const door = orEnd(() =>
  openDoor(async (request, response) => (await opened)(request, response), { isDev, site, gate, tls }),
);
const port = await listen(wantedPort).catch(endInWords);
const app = next({ dev: isDev, hostname: host === "0.0.0.0" ? "127.0.0.1" : host, port, httpServer: door });
await app.prepare();
const screens = failedInWords(app.getRequestHandler());
const pages = isDev ? screens : readAhead(keptPages(screens, stamp), stamp, MAIN_SCREENS, askOwn);
open(isForPeople ? packed(pages) : pages);
if (isForPeople) {
  const { printAddress } = await tsImport("./people/print-address.ts", import.meta.url);
  printAddress(addressNow());
} else
  console.log(`\n  Stems & Saturdays is open at http://${host}:${port}\n  Leave this window open; Ctrl+C closes it.\n`);

for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, close);

/** What some work of the start gives; where it fails the tool ends, and says why: a certificate that is none, a people's file that cannot be read. */
function orEnd(work) {
  try {
    return work();
  } catch (error) {
    return endInWords(error);
  }
}

function endInWords({ code = "", message }) {
  console.error(`The tool was not started: ${whyNot(code) ?? message}.`);
  process.exit(1);
}

function whyNot(code) {
  if (code === "EADDRNOTAVAIL") return `this machine has no address ${host}`;
  if (code === "EACCES") return `this account may not listen at port ${wantedPort}: PORT names another`;
  return code.startsWith("ERR_OSSL") ? "--cert and --key are no certificate with its key, each in PEM form" : null;
}

/** What the pages depend on beside their address: app/load.ts says, once a page has been asked for. Null when it cannot. */
function stamp() {
  try {
    return globalThis.farmStamp?.() ?? null;
  } catch {
    return null;
  }
}

/** Asks for a page as a browser would, over a connection of its own. */
function askOwn({ url, headers }) {
  const own = host === "0.0.0.0" ? "127.0.0.1" : host;
  return new Promise((resolve, reject) => {
    const ways = { host: own, port, path: url, headers: { ...headers, [OWN_ASKING]: secret }, agent: false };
    // The certificate is our own, and so is the answer: nobody stands between.
    const asking = (tls ? getEncrypted : get)({ ...ways, rejectUnauthorized: false }, (answer) => {
      answer.once("close", () => (answer.statusCode < 500 ? resolve() : reject(new Error(url)))).resume();
    });
    asking.once("error", reject);
  });
}

/** Answers what is under way, takes nothing more, and ends. */
function close() {
  door.close(() => process.exit(0));
  door.closeIdleConnections();
  setTimeout(() => process.exit(0), 3000).unref();
}

/** The port that is listened at: `wanted`, or the next that is free. */
function listen(wanted) {
  return new Promise((resolve, reject) => {
    door.once("error", (error) =>
      error.code === "EADDRINUSE" && wanted < LAST_PORT ? resolve(listen(wanted + 1)) : reject(error),
    );
    door.listen(wanted, host, () => resolve(door.address().port));
  });
}

function portIn(text) {
  if (/^\d{1,5}$/.test(text) && Number(text) <= LAST_PORT) return Number(text);
  console.error(`PORT is "${text}": write a whole number from 0 to ${LAST_PORT}, or leave it out.`);
  process.exit(1);
}

/** What was asked for when the tool was started; ends with words what cannot be. */
function asked() {
  const said = { dev: { type: "boolean" }, people: { type: "boolean" } };
  const named = { host: { type: "string" }, cert: { type: "string" }, key: { type: "string" } };
  try {
    const { values } = parseArgs({ options: { ...said, ...named } });
    const { dev: isDev = false, people: isForPeople = false, host, cert, key } = values;
    if (isDev && isForPeople) throw new Error("--dev and --people do not go together.");
    if (!isForPeople && (host || cert || key)) throw new Error("--host, --cert and --key go with --people.");
    if (!cert !== !key) throw new Error("--cert and --key go together.");
    const tls = cert && key ? { cert: readFileSync(cert), key: readFileSync(key) } : undefined;
    return { isDev, isForPeople, host: host ?? (isForPeople ? "0.0.0.0" : "127.0.0.1"), tls };
  } catch (error) {
    console.error(`The tool was not started: ${error.message}`);
    process.exit(1);
  }
}
