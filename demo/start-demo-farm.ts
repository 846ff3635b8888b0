import type { FarmDatabase } from "#db/client";
import { undoChange } from "#db/journal/journal";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import type { Written } from "#db/write/write";
import type { Reading } from "#lib/sheets/read-farm-sheets";
import { movedToSeason } from "./demo-season";
import { DEMO_START, readDemoSheets } from "./demo-sheets";

/**
 * Starts the invented farm in a database that has no farm yet, for one season. Refused, with every reason and nothing left behind, when a
 * sheet has a problem ("plantings.csv, line 12, colour") or there is a farm already.
 */
export function startDemoFarm(database: FarmDatabase, season: number, reading: Reading = readDemoSheets()): Written {
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
  const imported = importRecords(database, movedToSeason(records, season));
  if (!imported.ok && started.changeId !== null) undoChange(database, started.changeId);
  return imported;
}
