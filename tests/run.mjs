import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { build, install, run } from "../app/once.mjs";

/** `npm test`: types, lint and format, nothing unused, then every test: those of days in three time zones, and the screens in a real browser. */

const CHROMIUM = "/usr/bin/chromium";

/**
 * Only lib/domain/day.ts, app/clock.ts, demo/load-demo.ts and db/copies touch `Date`, and tests/architecture.test.ts holds them to it. A time zone can
 * show only where days are read or written out, so the tests of those run west and east of Greenwich too; all others know none.
 */
const FAR_ZONES = ["America/New_York", "Pacific/Auckland"];
const TESTS_OF_DAYS = ["domain", "sheets", "truth", "app", "demo", "plan/words"].map((folder) => `tests/${folder}/`);
/** What in those folders writes no day out: zip files, odd bytes, the door, threads and their turns, what is kept between pages, refusals. */
const NO_DAYS = [
  "tests/sheets/{unzip-sheets,mangled-sheets,bounded-work}.test.ts",
  "tests/app/door/**",
  "tests/app/{actions,download,load,pool,asked-once,fair-queue,kept-pages,read-ahead,axis}.test.ts",
];

/** Tests that name the farm's file or the day for their process, or have it named for them, open a farm as a server does, for life: each needs a process of its own. */
const ALONE = readdirSync("tests", { recursive: true })
  .filter((name) => name.endsWith(".test.ts") && !name.startsWith("browser"))
  .map((name) => `tests/${name}`)
  .filter((file) => /FARM_FILE|process\.env|farmForActions/.test(readFileSync(file, "utf8")));

install();
needChromium();
mkdirSync(".stamps", { recursive: true });

step("Types");
run(process.execPath, ["node_modules/next/dist/bin/next", "typegen"], { env: { NEXT_TELEMETRY_DISABLED: "1" } });
run("node_modules/.bin/tsc", ["--noEmit"]);
step("Lint and format");
run("node_modules/.bin/biome", ["check", "--error-on-warnings", "."]);
step("Nothing unused");
run("node_modules/.bin/knip", ["--no-progress"]);
run("node_modules/.bin/knip", ["--no-progress", "--production"]);
build();

let passed = 0;
/** Each test that failed, or run that broke off, with its zone and the first words of why: a long log is read from its end. */
const failures = [];
step("Tests");
inNode("UTC", [], []);
for (const zone of FAR_ZONES) {
  step(`Tests of days in ${zone}`);
  inNode(zone, TESTS_OF_DAYS, NO_DAYS);
}
step("Tests in a browser");
vitest("browser", "UTC");
for (const failure of failures) console.log(`\nFAILED ${failure}`);
console.log(`\n${passed} passed, ${failures.length} failed`);
process.exit(failures.length === 0 && passed > 0 ? 0 : 1);

function step(name) {
  console.log(`\n== ${name}`);
}

/** The tests in Node, or those of some folders: nearly all share two processes, since starting one for each takes longer than what it tests. */
function inNode(zone, folders, left) {
  vitest("node", zone, "", [...folders, "--isolate=false"], [...ALONE, ...left]);
  const isAsked = (file) => folders.length === 0 || folders.some((folder) => file.startsWith(folder));
  const alone = ALONE.filter(isAsked);
  if (alone.length > 0) vitest("node", zone, "-alone", alone, left);
}

/** Runs a project of the suite in one time zone, without the files that are left out, and adds its tests up. */
function vitest(project, zone, part = "", options = [], left = []) {
  const report = `.stamps/${project}-${zone.replace("/", "-")}${part}.json`;
  rmSync(report, { force: true });
  const { status } = spawnSync(
    "node_modules/.bin/vitest",
    ["run", ...options, "--project", project, "--reporter=default", "--reporter=json", `--outputFile=${report}`],
    { stdio: "inherit", env: { ...process.env, TZ: zone, LEFT_OUT: left.join("\n") } },
  );
  const { numPassedTests, testResults } = existsSync(report)
    ? JSON.parse(readFileSync(report, "utf8"))
    : { numPassedTests: 0, testResults: [] };
  passed += numPassedTests;
  const seen = testResults.flatMap(failuresOf);
  if (status !== 0 && seen.length === 0) seen.push("the run broke off");
  failures.push(...seen.map((failure) => `in ${zone}: ${failure}`));
}

/** The failed tests of a file, or the file itself where it broke before or between its tests. */
function failuresOf({ name, status, message, assertionResults }) {
  const failed = assertionResults.filter((one) => one.status === "failed");
  if (failed.length > 0) return failed.map((one) => `${name}: ${one.fullName}: ${firstWords(one.failureMessages[0])}`);
  return status === "failed" ? [`${name}: ${firstWords(message)}`] : [];
}

function firstWords(message) {
  return (message ?? "").slice(0, 400);
}

/** The browser tests drive Debian's Chromium; nothing else is ever downloaded. */
function needChromium() {
  if (existsSync(CHROMIUM)) return;
  const isRoot = process.getuid?.() === 0;
  if (isRoot && existsSync("/usr/bin/apt-get")) {
    console.log("Installing Chromium from Debian's packages …");
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu-core"]);
    return;
  }
  console.error(`The browser tests need Chromium at ${CHROMIUM}. On Debian, as root: apt-get install chromium`);
  process.exit(1);
}
