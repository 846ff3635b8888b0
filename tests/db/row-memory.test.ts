import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { forgetChanges, KEPT, recordChange, revision } from "#db/journal/journal";
import { touchedTables } from "#db/journal/touched-tables";
import { loadSnapshot } from "#db/read/read";
import { RowMemory } from "#db/read/row-memory";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { provenPlan } from "../proven-plan";
import { kept, withFarm } from "./kept-farm";
import { anyStep } from "./steps";

const SEED = 20_270_613;
const SEASON = 2027;
const LISTS = ["crops", "varieties", "curves", "recipes", "beds", "plantings", "bookings", "coolerStock"] as const;

const matchOf = ({ match: { solution, needs } }: Plan) => ({ solution, kinds: needs.map(({ kind }) => kind) });

/** Every row is the same object exactly where it says the same, and so is every list. */
function expectShared(before: Snapshot, after: Snapshot): void {
  if (JSON.stringify(before.farm) === JSON.stringify(after.farm)) expect(after.farm).toBe(before.farm);
  for (const list of LISTS) {
    const was = new Map(before[list].map((row) => [row.id, row]));
    for (const row of after[list]) {
      const old = was.get(row.id);
      expect(row === old, `${list}[${row.id}]`).toBe(old !== undefined && JSON.stringify(old) === JSON.stringify(row));
    }
    const isSame = JSON.stringify(before[list]) === JSON.stringify(after[list]);
    expect(after[list] === before[list], list).toBe(isSame);
  }
}

describe("a farm read again with what was read before", () => {
  test("[L3] is the farm read afresh, and plans as it does, after every one of some two hundred random writes, and shares every row that stayed", () => {
    let writeCount = 0;
    fc.assert(
      fc.property(fc.array(anyStep, { minLength: 10, maxLength: 30 }), (steps) =>
        withFarm((database) => {
          const memory = new RowMemory();
          const read = () => {
            const snapshot = loadSnapshot(database, memory);
            if (!snapshot.ok) throw new Error(JSON.stringify(snapshot.problems));
            return snapshot.parsed;
          };
          let before = read();
          let planned = provenPlan(before, SEASON);
          for (const { run } of steps) {
            const reached = revision(database);
            run(database, before);
            const after = read();
            expect(after).toEqual(kept(database));
            expectShared(before, after);
            if (revision(database) > reached) writeCount++;
            else expect(after).toBe(before);
            before = after;
            planned = provenPlan(after, SEASON, undefined, planned);
            expect(matchOf(planned)).toEqual(matchOf(provenPlan(kept(database), SEASON)));
            expect(checkMatch(planned.match)).toEqual([]);
          }
        }),
      ),
      { seed: SEED, numRuns: 15 },
    );
    expect(writeCount).toBeGreaterThan(150);
  });

  test("is read whole again where the changes since are no longer kept", () => {
    withFarm((database) => {
      const memory = new RowMemory();
      const name = (id: number, words: string) =>
        recordChange(database, "named a bed", () =>
          database.$client.prepare("UPDATE bed SET name = ? WHERE id = ?").run(words, id),
        );
      loadSnapshot(database, memory);
      name(1, "Renamed first");
      for (let time = 0; time < KEPT.changes; time++)
        recordChange(database, "noted", () =>
          database.$client.exec("UPDATE booking SET note = note || '.' WHERE id = 1"),
        );
      expect(touchedTables(database, 0)).toBeNull();
      expect(loadSnapshot(database, memory)).toEqual(loadSnapshot(database));
      name(2, "Renamed last");
      expect(touchedTables(database, revision(database) - 1)).toEqual(new Set(["bed"]));
      expect(loadSnapshot(database, memory)).toEqual(loadSnapshot(database));
      forgetChanges(database);
      expect(loadSnapshot(database, memory)).toEqual(loadSnapshot(database));
    });
  });

  test("names a bad row each time it is read, and the row is itself again once it is mended", () => {
    withFarm((database) => {
      const memory = new RowMemory();
      const first = loadSnapshot(database, memory);
      // As another program writes: past the journal.
      const spoil = (name: string) => {
        database.$client.prepare("UPDATE bed SET name = ? WHERE id = 1").run(name);
        memory.doubt();
      };
      const { name } = database.$client.prepare<[], { name: string }>("SELECT name FROM bed WHERE id = 1").get() ?? {
        name: "",
      };
      spoil("x".repeat(500));
      for (let time = 0; time < 2; time++) {
        const read = loadSnapshot(database, memory);
        expect(read.ok ? [] : read.problems.map(({ place }) => place)).toEqual(["beds[1].name"]);
      }
      spoil(name);
      expect(loadSnapshot(database, memory)).toEqual(first);
    });
  });
});
