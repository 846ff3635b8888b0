import { closeFarm, openFarm } from "#db/client";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import { DEMO_START } from "#demo/demo-sheets";
import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";

/** Writes the invented farm of seed 1, typical or large as FARM_SIZE says, into the file that FARM_FILE names. */
const file = process.env.FARM_FILE;
if (!file) throw new RangeError("FARM_FILE must name the file to fill");
const database = openFarm(file);
startFarm(database, DEMO_START);
const written = importRecords(
  database,
  farmRecordsOf(seededFarm(1, process.env.FARM_SIZE === "typical" ? TYPICAL : LARGE)),
);
closeFarm(database);
if (!written.ok) throw new Error(written.problems.map(({ place, message }) => `${place}: ${message}`).join("\n"));
