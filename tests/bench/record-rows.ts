import { openFarm } from "#db/client";
import { recordChange } from "#db/journal/journal";
import { loadSnapshot } from "#db/read/read";
import { RowMemory } from "#db/read/row-memory";
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
  ].flatMap(({ name, size }) => {
    const database = openFarm(":memory:");
    startFarm(database, DEMO_START);
    importRecords(database, farmRecordsOf(seededFarm(1, size)));
    const memory = new RowMemory();
    const change = database.$client.prepare("UPDATE booking SET note = note || '.' WHERE id = 1");
    return [
      timed(`read the farm from SQLite, ${name}`, 9, "", () => loadSnapshot(database)),
      timed(`read it again after one booking has changed, ${name}`, 9, "", () => {
        recordChange(database, "noted something", () => change.run());
        return loadSnapshot(database, memory);
      }),
    ];
  });
}
