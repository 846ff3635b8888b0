import { describe, expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { removeBed } from "#db/write/beds";
import { putCurve, removeVariety } from "#db/write/crops";
import { carryPlantings, removePlanting, updatePlanting } from "#db/write/plantings";
import { importRecords } from "#db/write/records";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { curve, planting } from "../small-farm";
import { changeOf, done, fill, kept, refused, withDatabase, withFarm } from "./kept-farm";

const { id: _, ...plain } = curve({ varietyId: 1, plantingId: 1, stemsPerPlantByWeek: [3, 4] });

describe("a bloom curve of one planting", () => {
  test("stands beside those of its variety and crop, and a second one takes its place", () => {
    withFarm((database) => {
      const before = kept(database).curves;
      const { result: id } = done(putCurve(database, plain));
      done(putCurve(database, { ...plain, plantingId: null, stemsPerPlantByWeek: [9] }));
      expect(done(putCurve(database, { ...plain, stemsPerPlantByWeek: [5] })).result).toBe(id);
      expect(kept(database).curves).toHaveLength(before.length + 2);
      expect(kept(database).curves.find((row) => row.id === id)).toMatchObject({
        plantingId: 1,
        stemsPerPlantByWeek: [5],
      });
    });
  });

  test("is carried into the next season with its planting, as one change that can be undone", () => {
    withFarm((database) => {
      done(putCurve(database, plain));
      const before = kept(database);
      const carried = carriedPlantings(before, 2027, 2028);
      const change = changeOf(carryPlantings(database, 2027, 2028, carried));
      const after = kept(database);
      const own = after.curves.filter(({ plantingId }) => plantingId !== null);
      const next = after.plantings.find(({ seasonYear, varietyId }) => seasonYear === 2028 && varietyId === 1);
      expect(own.map(({ plantingId }) => plantingId)).toEqual([1, next?.id]);
      const { id: _first, plantingId: _of, ...first } = own[0];
      expect(own[1]).toMatchObject(first);
      expect(undoChange(database, change).ok).toBe(true);
      expect(kept(database)).toEqual(before);
    });
  });

  test("goes with its planting and its bed, and comes back with them", () => {
    for (const remove of [removePlanting, removeBed])
      withFarm((database) => {
        done(putCurve(database, plain));
        const before = kept(database);
        const change = changeOf(remove(database, 1));
        expect(kept(database).curves.some(({ plantingId }) => plantingId === 1)).toBe(false);
        expect(undoChange(database, change).ok).toBe(true);
        expect(kept(database)).toEqual(before);
      });
  });

  test("is left behind when the planting becomes one of another variety", () => {
    withFarm((database) => {
      done(putCurve(database, plain));
      const before = kept(database);
      const { id: _id, ...draft } = planting({ id: 1 });
      const change = changeOf(updatePlanting(database, 1, { ...draft, varietyId: 2 }));
      expect(kept(database).curves.some(({ plantingId }) => plantingId === 1)).toBe(false);
      undoChange(database, change);
      expect(kept(database)).toEqual(before);
    });
  });

  test("is refused for a planting that is not there or is of another variety; the variety stays while it is planted", () => {
    withFarm((database) => {
      expect(refused(putCurve(database, { ...plain, plantingId: 99 }))).toEqual([
        "plantingId: this planting is not on the farm",
      ]);
      expect(refused(putCurve(database, { ...plain, plantingId: 2 }))[0]).toContain("of another variety");
      expect(removeVariety(database, 1).ok).toBe(false);
    });
  });

  test("goes out as a row that names its bed, season and day, and comes back to the same planting", () => {
    withFarm((database) => {
      done(putCurve(database, plain));
      const { curves, crops, recipes, varieties, beds, plantings } = farmRecordsOf(kept(database));
      const text = farmSheets(kept(database)).find(({ name }) => name === "curves.csv")?.text ?? "";
      expect(text.split("\r\n")[0]).toContain("crop,variety,bed,season,planted_on,");
      expect(text).toMatch(/,D1,2027,2027-\d\d-\d\d,/);
      withDatabase((empty) => {
        fill(empty);
        done(removeBed(empty, 1));
        done(removeBed(empty, 2));
        done(importRecords(empty, { curves, crops, recipes, varieties, beds, plantings }));
        const back = kept(empty);
        const own = back.curves.find(({ plantingId }) => plantingId !== null);
        const of = back.plantings.find(({ id }) => id === own?.plantingId);
        expect(own).toMatchObject({ stemsPerPlantByWeek: [3, 4], varietyId: 1 });
        expect(back.beds.find(({ id }) => id === of?.bedId)?.name).toBe("D1");
        expect(farmRecordsOf(back).curves).toEqual(curves);
      });
    });
  });
});
