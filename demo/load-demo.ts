import { existsSync, linkSync, mkdirSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { forgetChanges } from "#db/journal/journal";
import { hasFarm } from "#db/read/read";
import { type Day, parseDay } from "#lib/domain/day";
import { seasonAheadOf } from "./demo-season";
import { startDemoFarm } from "./start-demo-farm";

/**
 * `tsx demo/load-demo.ts [file]`: puts the invented farm into a file that has no farm yet, its season the next one ahead. Leaves a farm that
 * is there alone. The file is the one given, else `FARM_FILE`, else `.data/farm.sqlite`; `FARM_TODAY` ("YYYY-MM-DD") stands in for the clock.
 * A file that cannot be used as it stands is left so, and ends the script with `REFUSED`.
 */
function loadDemo(file: string): void {
  if (existsSync(file)) fillKept(file);
  // Where copies lie there was a farm: a new one in its place would hide that it is gone.
  else if (copiesIn(copiesFolder(file), file).length > 0) throw new FarmFileRefused("missing", file);
  else makeNew(file);
}

/** The exit code by which `npm start` knows a file that the screens explain better than a window of text. */
const REFUSED = 3;

/** A farm that is made is there whole, tables and records, or not at all: it takes its name last. */
function makeNew(file: string): void {
  mkdirSync(dirname(file), { recursive: true });
  const unfinished = `${file}.unfinished-${process.pid}`;
  try {
    const database = openFarm(unfinished);
    const isFilled = fillFarm(database, file);
    closeFarm(database);
    if (isFilled) linkSync(unfinished, file);
  } finally {
    rmSync(unfinished, { force: true });
    rmSync(`${unfinished}-journal`, { force: true });
  }
}

function fillKept(file: string): void {
  const database = openFarm(file);
  try {
    if (hasFarm(database)) console.log(`${file} has a farm already: left as it is.`);
    else fillFarm(database, file);
  } finally {
    closeFarm(database);
  }
}

function fillFarm(database: FarmDatabase, file: string): boolean {
  const season = seasonAheadOf(today());
  const written = startDemoFarm(database, season);
  if (written.ok) {
    forgetChanges(database);
    console.log(`The invented demo farm for ${season} is in ${file}: ${written.title}.`);
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
  const named = process.argv[2] ?? process.env.FARM_FILE;
  // A folder that somebody named and that is not there is a stick that was taken out, or a slip.
  if (process.argv[2] === undefined && named !== undefined && !existsSync(dirname(named)))
    throw new FarmFileRefused("missing", named, "Its folder is not there either.");
  loadDemo(named ?? ".data/farm.sqlite");
} catch (error) {
  if (!(error instanceof FarmFileRefused)) throw error;
  console.error(error.message);
  process.exitCode = REFUSED;
}
