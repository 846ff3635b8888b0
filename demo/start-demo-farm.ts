import type { FarmDatabase } from "#db/client";
import { undoChange } from "#db/journal/journal";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import type { Written } from "#db/write/write";
import type { Day } from "#lib/domain/day";
import type { Reading } from "#lib/sheets/read-farm-sheets";
import { movedToSeason } from "./demo-season";
import { DEMO_START, readDemoSheets } from "./demo-sheets";
import { DEMO_CLIMATE, demoWeather } from "./demo-weather";
import { addRecordedSeasons } from "./recorded-seasons";

/**
 * Starts the invented farm in a database that has no farm yet, for one season, as it stands on a day, with what was recorded by then of it and of the two seasons
 * before, and nothing in the cooler that is not cut yet; without a day, the season alone. Refused, with every reason and nothing left behind, when a sheet has a problem ("plantings.csv, line 12, colour") or there is a farm already.
 */
export function startDemoFarm(
  database: FarmDatabase,
  season: number,
  today: Day | null = null,
  reading: Reading = readDemoSheets(),
): Written {
  const { records, problems } = reading;
  if (problems.length)
    return {
      ok: false,
      problems: problems.map(({ file, line, column, message }) => ({
        place: `${file}, line ${line}${column === null ? "" : `, ${column}`}`,
        message,
      })),
    };
  const started = startFarm(database, DEMO_START);
  if (!started.ok) return started;
  const farm = { ...(records.farm ?? DEMO_START.farm), climate: DEMO_CLIMATE };
  const weather = demoWeather(season, today);
  const ofSeason = movedToSeason(records, season);
  const coolerStock = ofSeason.coolerStock?.filter(({ cutOn }) => today === null || cutOn < today);
  const imported = importRecords(database, { ...ofSeason, coolerStock, farm, weather });
  if (!imported.ok && started.changeId !== null) undoChange(database, started.changeId);
  return imported.ok && today !== null ? addRecordedSeasons(database, ofSeason, season, today) : imported;
}
