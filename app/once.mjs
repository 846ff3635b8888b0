import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * Steps that are done once and again only when what they rest on has changed. Used by `npm start` and `npm test`; needs nothing but Node,
 * since it runs before anything is installed.
 */

/** Runs a program in the project's folder with its output shown; ends the run with a sentence when it fails, which `alsoWell` is not. */
export function run(program, parameters, { env = {}, otherwise, alsoWell = 0 } = {}) {
  const { status, error } = spawnSync(program, parameters, { stdio: "inherit", env: { ...process.env, ...env } });
  if (status === 0 || status === alsoWell) return;
  console.error(`\n${otherwise ?? `${program} ${parameters.join(" ")} failed`}${error ? ` (${error.message})` : ""}`);
  process.exit(status ?? 1);
}

/** Does `work` unless `stamp` already holds the fingerprint of `paths`: files, or folders with all that is in them. */
function once(name, stamp, paths, work) {
  const fingerprint = fingerprintOf(paths);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === fingerprint) return;
  console.log(`${name} …`);
  work();
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, fingerprint);
}

/** Installs what the lock file lists, if it changed. */
export function install() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 9)) {
    console.error(`Node 20.9 or newer is needed; this is ${process.versions.node}.`);
    process.exit(1);
  }
  once(
    "Installing packages (the database is built from source: a minute or two)",
    "node_modules/.stamp",
    ["package-lock.json", ".npmrc"],
    () => {
      // No package runs a script of its own; the one that must be built is built from the sources that the lock file vouches for.
      run("npm", ["ci", "--ignore-scripts", "--no-fund", "--no-audit"], {
        otherwise: "The packages could not be installed.",
      });
      run("npm", ["--prefix", "node_modules/better-sqlite3", "run", "build-release", ...ownHeaders()], {
        otherwise:
          "The database could not be built: it needs python3, make and a C++ compiler (on Debian: apt-get install python3 make g++).",
      });
    },
  );
}

/** Names the headers that came with this Node, where they did; otherwise the builder fetches them from nodejs.org, checked by their sums. */
function ownHeaders() {
  const prefix = join(dirname(process.execPath), "..");
  return existsSync(join(prefix, "include", "node", "node.h")) ? ["--", `--nodedir=${prefix}`] : [];
}

/** Builds the screens, if anything they are made of changed. */
export function build() {
  const madeOf = ["app", "lib", "db", "package-lock.json", "next.config.ts", "tsconfig.json"];
  once("Building the screens", ".next/.stamp", madeOf, () =>
    run(process.execPath, ["node_modules/next/dist/bin/next", "build"], { env: { NEXT_TELEMETRY_DISABLED: "1" } }),
  );
}

function fingerprintOf(paths) {
  const hash = createHash("sha256").update(process.versions.node);
  for (const path of paths.flatMap(filesIn)) hash.update(path).update(readFileSync(path));
  return hash.digest("hex");
}

function filesIn(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesIn(join(path, name)));
}
