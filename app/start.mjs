import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { build, install, run } from "./once.mjs";

/** `npm start`: installs, builds, loads the demo farm where there is none yet, and serves on this machine alone. */

const HOST = "127.0.0.1";
/** The farm's file cannot be used as it stands: every page says why, and what mends it. */
const FILE_REFUSED = 3;
const FIRST_PORT = Number(process.env.PORT ?? 3100);

install();
build();
run(process.execPath, ["--import", "tsx", "demo/load-demo.ts"], {
  otherwise: "The farm's file could not be made ready.",
  alsoWell: FILE_REFUSED,
});

const port = await freePort(FIRST_PORT);
console.log(`\n  Stems & Saturdays is open at http://${HOST}:${port}\n  Leave this window open; Ctrl+C closes it.\n`);
const server = spawn(process.execPath, ["node_modules/next/dist/bin/next", "start", "-H", HOST, "-p", String(port)], {
  stdio: ["ignore", "inherit", "inherit"],
  env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1" },
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
server.on("exit", (code) => process.exit(code ?? 0));

/** The first port from `port` on that nobody listens at. */
function freePort(port) {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once("error", (error) =>
      error.code === "EADDRINUSE" && port < 65535 ? resolve(freePort(port + 1)) : reject(error),
    );
    probe.listen(port, HOST, () => probe.close(() => resolve(port)));
  });
}
