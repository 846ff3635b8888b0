import { openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import { DEMO_START } from "#demo/demo-sheets";
import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { type BenchRow, timed } from "./timing";

/** Reading every row of a farm from SQLite, parsed and checked. */
export function recordRows(): BenchRow[] {
  return [
    { name: "typical", size: TYPICAL },
    { name: "large", size: LARGE },
  ].map(({ name, size }) => {
    const database = openFarm(":memory:");
    startFarm(database, DEMO_START);
    importRecords(database, farmRecordsOf(seededFarm(1, size)));
    return timed(`read the farm from SQLite, ${name}`, 9, "", () => loadSnapshot(database));
  });
}
