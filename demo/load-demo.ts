import { closeFarm, openFarm } from "#db/client";
import { forgetChanges } from "#db/journal/journal";
import { hasFarm } from "#db/read/read";
import { type Day, parseDay } from "#lib/domain/day";
import { seasonAheadOf } from "./demo-season";
import { startDemoFarm } from "./start-demo-farm";

/**
 * `tsx demo/load-demo.ts [file]`: puts the invented farm into a file that has no farm yet, its season the next one ahead. Leaves a farm that
 * is there alone. The file is the one given, else `FARM_FILE`, else `.data/farm.sqlite`; `FARM_TODAY` ("YYYY-MM-DD") stands in for the clock.
 */
function loadDemo(file: string): void {
  const database = openFarm(file);
  try {
    if (hasFarm(database)) {
      console.log(`${file} has a farm already: left as it is.`);
      return;
    }
    const season = seasonAheadOf(today());
    const written = startDemoFarm(database, season);
    if (written.ok) {
      forgetChanges(database);
      console.log(`The invented demo farm for ${season} is in ${file}: ${written.title}.`);
      return;
    }
    console.error(`The demo farm cannot be loaded, ${written.problems.length} problems:`);
    for (const { place, message } of written.problems) console.error(`${place}: ${message}`);
    process.exitCode = 1;
  } finally {
    closeFarm(database);
  }
}

/** Today by the machine's own calendar. The script runs apart from the app, so it reads the clock itself, as `app/clock.ts` does. */
function today(): Day {
  if (process.env.FARM_TODAY) return parseDay(process.env.FARM_TODAY);
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return parseDay(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`);
}

loadDemo(process.argv[2] ?? process.env.FARM_FILE ?? ".data/farm.sqlite");
