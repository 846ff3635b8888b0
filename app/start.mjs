import { build, install, run } from "./once.mjs";

/** `npm start`: installs, builds, loads the demo farm where there is none yet, and serves on this machine alone. */

/** The farm's file cannot be used as it stands: every page says why, and what mends it. */
const FILE_REFUSED = 3;

install();
build();
run(process.execPath, ["--import", "tsx", "demo/load-demo.ts"], {
  otherwise: "The farm's file could not be made ready.",
  alsoWell: FILE_REFUSED,
});
await import("./serve.mjs");
