import { closeFarm, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { DEMO_SEASON } from "./demo-season";
import { startDemoFarm } from "./start-demo-farm";

/**
 * The invented farm as a plan sees it, by the road every farm takes: sheets, database in memory, rows parsed again. Ids are the database's.
 * @param today  with what was recorded by this day, the two seasons before included; null: the season alone
 * @throws Error with every problem of the sheets, if there are any
 */
export function demoSnapshot(season = DEMO_SEASON, today: Day | null = null): Snapshot {
  const database = openFarm(":memory:");
  try {
    const written = startDemoFarm(database, season, today);
    const read = written.ok ? loadSnapshot(database) : written;
    if (read.ok) return read.parsed;
    throw new Error(read.problems.map(({ place, message }) => `${place}: ${message}`).join("\n"));
  } finally {
    closeFarm(database);
  }
}
