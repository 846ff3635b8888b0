import { describe, expect, test } from "vitest";
import { forgetChanges, latestChanges, letGo, recordChange, revision, undoChange } from "#db/journal/journal";
import { loadSnapshot } from "#db/read/read";
import { addBed, updateBed } from "#db/write/beds";
import { setBookingStatus } from "#db/write/bookings";
import { bed } from "../small-farm";
import { changeOf, done, kept, withDatabase, withFarm } from "./kept-farm";

describe("a change", () => {
  test("is kept with its words and a time, newest first", () => {
    withFarm((database) => {
      done(addBed(database, bed({ id: 0, name: "D9" })));
      done(setBookingStatus(database, 2, "cancelled"));
      const [newest, before] = latestChanges(database, 2);
      expect([newest.title, before.title]).toEqual(["set the booking of Client 2 to cancelled", "added bed D9"]);
      expect(newest.id).toBe(before.id + 1);
      expect(newest.madeAt).toMatch(/^\d{4}-\d{2}-\d{2} \d{2}:\d{2}:\d{2}$/);
    });
  });

  test("that touches nothing is not kept and does not move the revision", () => {
    withFarm((database) => {
      const before = { revision: revision(database), newest: latestChanges(database, 1) };
      expect(updateBed(database, 1, bed({ id: 1, name: "D1" }))).toMatchObject({ ok: true, changeId: null });
      expect(recordChange(database, "nothing", () => 7)).toEqual({ changeId: null, result: 7 });
      expect({ revision: revision(database), newest: latestChanges(database, 1) }).toEqual(before);
    });
  });

  test("is forgotten with all before it when the farm's beginning is set: nothing to undo, the revision stays, the rows stay", () => {
    withFarm((database) => {
      done(addBed(database, bed({ id: 0, name: "D9" })));
      const before = { revision: revision(database), snapshot: loadSnapshot(database) };
      forgetChanges(database);
      expect(latestChanges(database, 10)).toEqual([]);
      expect({ revision: revision(database), snapshot: loadSnapshot(database) }).toEqual(before);
      done(addBed(database, bed({ id: 0, name: "D10" })));
      expect(revision(database)).toBe(before.revision + 1);
    });
  });

  test("that throws halfway leaves nothing behind, and the farm can be written again", () => {
    withFarm((database) => {
      const before = { snapshot: kept(database), revision: revision(database), changes: latestChanges(database, 999) };
      const fail = () =>
        recordChange(database, "half", () => {
          database.$client.exec("DELETE FROM booking; UPDATE bed SET name = name || '!'");
          throw new Error("the lights went out");
        });
      expect(fail).toThrow("the lights went out");
      expect({ snapshot: kept(database), revision: revision(database), changes: latestChanges(database, 999) }).toEqual(
        before,
      );
      expect(changeOf(addBed(database, bed({ id: 0, name: "D9" })))).toBe(before.revision + 1);
    });
  });

  test("cannot be made inside another one, nor wait for anything", () => {
    withFarm((database) => {
      const before = kept(database);
      const nested = () => recordChange(database, "outer", () => addBed(database, bed({ id: 0, name: "D9" })));
      expect(nested).toThrow(RangeError);
      expect(() => recordChange(database, "later", async () => 1)).toThrow(RangeError);
      expect(kept(database)).toEqual(before);
    });
  });

  test("is one of the last 200: older ones are let go, the revision counts on", () => {
    withFarm((database) => {
      const first = latestChanges(database, 999).at(-1);
      for (let round = 1; round <= 230; round++)
        recordChange(database, `round ${round}`, () =>
          database.$client.prepare("UPDATE bed SET note = ? WHERE id = 1").run(String(round)),
        );
      const changes = latestChanges(database, 999);
      expect(changes).toHaveLength(200);
      expect(changes.map(({ title }) => title)).toEqual(
        Array.from({ length: 200 }, (_, index) => `round ${230 - index}`),
      );
      expect(revision(database)).toBe(changes[0].id);
      expect(undoChange(database, first?.id ?? 0)).toEqual({
        ok: false,
        message: "This change is no longer kept, so it cannot be undone.",
      });
      const orphans = database.$client
        .prepare("SELECT count(*) FROM change_row WHERE change_id NOT IN (SELECT id FROM change)")
        .pluck();
      expect(orphans.get()).toBe(0);
    });
  });

  test("and of large ones as many as hold so many rows, but never fewer than so many: the oldest go, with their rows", () => {
    withFarm((database) => {
      for (let round = 1; round <= 12; round++)
        recordChange(database, `round ${round}`, () =>
          database.$client.prepare("UPDATE bed SET note = ?").run(String(round)),
        );
      const titles = () => latestChanges(database, 999).map(({ title }) => title);
      const rowsOfOne = Number(database.$client.prepare("SELECT count(*) FROM bed").pluck().get());
      letGo(database.$client, { changes: 200, rows: 5 * rowsOfOne, changesWhateverTheirSize: 2 });
      expect(titles()).toEqual(["round 12", "round 11", "round 10", "round 9", "round 8"]);
      letGo(database.$client, { changes: 200, rows: 1, changesWhateverTheirSize: 2 });
      expect(titles()).toEqual(["round 12", "round 11"]);
      expect(database.$client.prepare("SELECT count(*) FROM change_row").pluck().get()).toBe(2 * rowsOfOne);
    });
  });

  test("the revision is 0 before the first write", () => {
    withDatabase((database) => expect(revision(database)).toBe(0));
  });
});
