import { get } from "node:http";
import { tsImport } from "tsx/esm/api";

/**
 * Serves the built screens on this machine alone, behind the door; with `--dev`, screens that are made anew as they are edited. `PORT` names the
 * port, 3100 when it does not and whichever is free when it is 0; where somebody listens already, the next free one is taken.
 */

const HOST = "127.0.0.1";
const LAST_PORT = 65_535;
/** What she who opens the tool looks at first. */
const MAIN_SCREENS = ["/", "/bookings", "/keep-or-dig", "/beds", "/picking", "/buying", "/what-if", "/enquiry"];
const isDev = process.argv.includes("--dev");
const wantedPort = portIn(process.env.PORT || "3100");

process.env.NODE_ENV = isDev ? "development" : "production";
process.env.NEXT_TELEMETRY_DISABLED = "1";
const { default: next } = await import("next");
const { openDoor } = await tsImport("./door/open-door.ts", import.meta.url);
const { failedInWords } = await tsImport("./door/failed-page.ts", import.meta.url);
const { keptPages } = await tsImport("./kept-pages/kept-pages.ts", import.meta.url);
const { readAhead } = await tsImport("./kept-pages/read-ahead.ts", import.meta.url);

let open;
const opened = new Promise((resolve) => {
  open = resolve;
});
const door = openDoor(async (request, response) => (await opened)(request, response), isDev);
const port = await listen(wantedPort);
const app = next({ dev: isDev, hostname: HOST, port, httpServer: door });
await app.prepare();
const screens = failedInWords(app.getRequestHandler());
open(isDev ? screens : readAhead(keptPages(screens, stamp), stamp, MAIN_SCREENS, askOwn));
console.log(`\n  Stems & Saturdays is open at http://${HOST}:${port}\n  Leave this window open; Ctrl+C closes it.\n`);

for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, close);

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
  return new Promise((resolve, reject) => {
    const asking = get({ host: HOST, port, path: url, headers, agent: false }, (answer) => {
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
    door.listen(wanted, HOST, () => resolve(door.address().port));
  });
}

function portIn(text) {
  if (/^\d{1,5}$/.test(text) && Number(text) <= LAST_PORT) return Number(text);
  console.error(`PORT is "${text}": write a whole number from 0 to ${LAST_PORT}, or leave it out.`);
  process.exit(1);
}
