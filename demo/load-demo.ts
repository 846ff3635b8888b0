import { existsSync, mkdirSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { namedFile, OWN_PLACE } from "#db/file/named-file";
import { nameNew } from "#db/file/write-file";
import { forgetChanges } from "#db/journal/journal";
import { hasFarm } from "#db/read/read";
import { emptyFarm } from "#db/write/farm";
import { type Day, parseDay } from "#lib/domain/day";
import { demoSeasonOn } from "./demo-season";
import { startDemoFarm } from "./start-demo-farm";

/**
 * `tsx demo/load-demo.ts [file [name]]`: puts the invented farm into a file that has no farm yet, its season the next one ahead; given a name, all
 * that is invented is taken out again and the farm is called so. Leaves a farm that is there alone. `FARM_TODAY` ("YYYY-MM-DD") stands in for the
 * clock. Without a file, only the tool's own place is filled: where `FARM_FILE` names another and no farm lies there, a stick may be out or a name
 * mistyped, and the page asks. A file that cannot be used as it stands is left so, and ends the script with `REFUSED`.
 */
function loadDemo(file: string, ownName: string | null): void {
  if (existsSync(file)) fillKept(file, ownName);
  // Where copies lie there was a farm: a new one in its place would hide that it is gone.
  else if (copiesIn(copiesFolder(file), file).length > 0) throw new FarmFileRefused("missing", file);
  else makeNew(file, ownName);
}

/** The exit code by which `npm start` knows a file that the screens explain better than a window of text. */
const REFUSED = 3;

/** A farm that is made is there whole, tables and records, or not at all: it takes its name last. */
function makeNew(file: string, ownName: string | null): void {
  mkdirSync(dirname(file), { recursive: true });
  const unfinished = `${file}.unfinished-${process.pid}`;
  try {
    const database = openFarm(unfinished);
    const isFilled = fillFarm(database, file, ownName);
    closeFarm(database);
    if (isFilled) nameNew(unfinished, file);
  } finally {
    rmSync(unfinished, { force: true });
    rmSync(`${unfinished}-journal`, { force: true });
  }
}

function fillKept(file: string, ownName: string | null): void {
  const database = openFarm(file);
  try {
    if (hasFarm(database)) console.log(`${file} has a farm already: left as it is.`);
    else fillFarm(database, file, ownName);
  } finally {
    closeFarm(database);
  }
}

function fillFarm(database: FarmDatabase, file: string, ownName: string | null): boolean {
  const season = demoSeasonOn(today());
  const written = startDemoFarm(database, season, today());
  if (written.ok) {
    if (ownName !== null) emptyFarm(database, ownName);
    forgetChanges(database);
    const what = ownName === null ? `The invented demo farm for ${season}` : `An empty farm, ${ownName},`;
    console.log(`${what} is in ${file}.`);
    return true;
  }
  console.error(`The demo farm cannot be loaded, ${written.problems.length} problems:`);
  for (const { place, message } of written.problems) console.error(`${place}: ${message}`);
  process.exitCode = 1;
  return false;
}

/** Today by the machine's own calendar. The script runs apart from the app, so it reads the clock itself, as `app/clock.ts` does. */
function today(): Day {
  if (process.env.FARM_TODAY) return parseDay(process.env.FARM_TODAY);
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return parseDay(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`);
}

try {
  const [given, ownName = null] = process.argv.slice(2);
  const file = given ?? namedFile();
  if (given === undefined && file !== OWN_PLACE && !existsSync(file)) throw new FarmFileRefused("missing", file);
  loadDemo(file, ownName);
} catch (error) {
  if (!(error instanceof FarmFileRefused)) throw error;
  console.error(error.message);
  process.exitCode = REFUSED;
}
