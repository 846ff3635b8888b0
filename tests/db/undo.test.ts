import { describe, expect, test } from "vitest";
import { latestChanges, revision, undoChange, undoRefusal } from "#db/journal/journal";
import { addBed, removeBed, updateBed } from "#db/write/beds";
import { removeBooking } from "#db/write/bookings";
import { addVariety, putCurve, removeVariety, updateCrop, updateVariety } from "#db/write/crops";
import { emptyFarm } from "#db/write/farm";
import { addPlanting } from "#db/write/plantings";
import { bed, crop, curve, planting, variety } from "../small-farm";
import { changeOf, done, kept, withFarm } from "./kept-farm";

describe("an undo", () => {
  test("brings a removed bed back with its plantings, under their old ids, and moves the revision", () => {
    withFarm((database) => {
      const before = kept(database);
      const removed = changeOf(removeBed(database, 1));
      expect(kept(database).plantings.map(({ bedId }) => bedId)).toEqual([2]);
      expect(undoChange(database, removed)).toEqual({ ok: true, changeId: removed + 1 });
      expect(kept(database)).toEqual(before);
      expect(revision(database)).toBe(removed + 1);
    });
  });

  test("brings a removed booking back with every line in its place", () => {
    withFarm((database) => {
      const before = kept(database);
      expect(undoChange(database, changeOf(removeBooking(database, 1))).ok).toBe(true);
      expect(kept(database)).toEqual(before);
    });
  });

  test("brings an emptied farm back whole, and can itself be undone and done again", () => {
    withFarm((database) => {
      const full = kept(database);
      const emptied = changeOf(emptyFarm(database, "Mine"));
      const empty = kept(database);
      const back = undoChange(database, emptied);
      expect(kept(database)).toEqual(full);
      const again = back.ok && back.changeId ? undoChange(database, back.changeId) : back;
      expect(kept(database)).toEqual(empty);
      expect(again.ok && again.changeId && undoChange(database, again.changeId).ok).toBe(true);
      expect(kept(database)).toEqual(full);
      expect(latestChanges(database, 4).map(({ title }) => title)).toEqual([
        "took back: emptied the farm, now Mine",
        "put back: emptied the farm, now Mine",
        "took back: emptied the farm, now Mine",
        "emptied the farm, now Mine",
      ]);
    });
  });

  test("can be tried, which says what stands in its way or that nothing does, and writes nothing", () => {
    withFarm((database) => {
      const renamed = changeOf(updateBed(database, 1, bed({ id: 1, name: "East" })));
      const before = { snapshot: kept(database), revision: revision(database) };
      expect(undoRefusal(database, renamed)).toBe(null);
      expect(undoRefusal(database, 99_999)).toBe("This change is no longer kept, so it cannot be undone.");
      expect({ snapshot: kept(database), revision: revision(database) }).toEqual(before);
    });
  });

  test("is refused when a row was changed since, and touches nothing", () => {
    withFarm((database) => {
      const first = changeOf(updateBed(database, 1, bed({ id: 1, name: "East" })));
      done(updateBed(database, 1, bed({ id: 1, name: "West" })));
      const before = { snapshot: kept(database), revision: revision(database) };
      expect(undoChange(database, first)).toEqual({
        ok: false,
        message: "Cannot undo this: a bed that it wrote has been changed since. Undo that first.",
      });
      expect({ snapshot: kept(database), revision: revision(database) }).toEqual(before);
      expect(undoRefusal(database, first)).toBe(
        "Cannot undo this: a bed that it wrote has been changed since. Undo that first.",
      );
    });
  });

  test("is refused the second time", () => {
    withFarm((database) => {
      const change = changeOf(updateBed(database, 1, bed({ id: 1, name: "East" })));
      expect(undoChange(database, change).ok).toBe(true);
      expect(undoChange(database, change).ok).toBe(false);
    });
  });

  test("of a bed is refused once something grows in it: the planting must not vanish with it", () => {
    withFarm((database) => {
      const added = done(addBed(database, bed({ id: 0, name: "D9" })));
      done(addPlanting(database, planting({ id: 0, bedId: added.result })));
      const before = kept(database);
      expect(undoChange(database, added.changeId ?? 0)).toEqual({
        ok: false,
        message: "Cannot undo this: a planting added since belongs to what would be taken back. Undo that first.",
      });
      expect(kept(database)).toEqual(before);
    });
  });

  test("of a variety is refused once it is planted", () => {
    withFarm((database) => {
      const added = done(addVariety(database, variety({ id: 0, name: "Late" })));
      done(addPlanting(database, planting({ id: 0, varietyId: added.result })));
      const before = kept(database);
      expect(undoChange(database, added.changeId ?? 0).ok).toBe(false);
      expect(kept(database)).toEqual(before);
    });
  });

  test("of a removal is refused when its name has been given away", () => {
    withFarm((database) => {
      const removed = changeOf(removeBed(database, 1));
      done(addBed(database, bed({ id: 0, name: "D1" })));
      const before = kept(database);
      expect(undoChange(database, removed)).toEqual({
        ok: false,
        message: "Cannot undo “removed bed D1”: what was written since stands in its way. Undo that first.",
      });
      expect(kept(database)).toEqual(before);
    });
  });

  test("leaves later changes to other rows alone", () => {
    withFarm((database) => {
      const renamed = changeOf(updateBed(database, 1, bed({ id: 1, name: "East" })));
      done(updateCrop(database, 2, crop({ id: 2, name: "Snapdragon" })));
      expect(undoChange(database, renamed).ok).toBe(true);
      const { beds, crops } = kept(database);
      expect([beds[0].name, crops[1].name]).toEqual(["D1", "Snapdragon"]);
    });
  });

  test("an id is never given twice, so that a removed row can always come back", () => {
    withFarm((database) => {
      const added = done(addVariety(database, variety({ id: 0, name: "Late" })));
      const removed = changeOf(removeVariety(database, added.result));
      const other = done(addVariety(database, variety({ id: 0, name: "Later" })));
      expect(other.result).toBeGreaterThan(added.result);
      expect(undoChange(database, removed).ok).toBe(true);
      expect(kept(database).varieties.map(({ name }) => name)).toEqual(["Variety 1", "Variety 2", "Late", "Later"]);
    });
  });

  test("gives back numbers digit for digit", () => {
    withFarm((database) => {
      const lengthMetres = 0.1 + 0.2;
      done(updateBed(database, 1, bed({ id: 1, name: "D1", lengthMetres })));
      const change = changeOf(updateBed(database, 1, bed({ id: 1, name: "D1", lengthMetres: 1 / 3 })));
      expect(undoChange(database, change).ok).toBe(true);
      expect(kept(database).beds[0].lengthMetres).toBe(lengthMetres);
    });
  });

  test("of a move to another crop brings the variety's own curves back too", () => {
    withFarm((database) => {
      const own = done(putCurve(database, curve({ varietyId: 2 }))).result;
      const before = kept(database);
      const change = changeOf(updateVariety(database, 2, variety({ id: 2, cropId: 2, colour: "plum" })));
      expect(kept(database).curves.find(({ id }) => id === own)).toMatchObject({ cropId: 2, varietyId: 2 });
      expect(undoChange(database, change).ok).toBe(true);
      expect(kept(database)).toEqual(before);
    });
  });
});
