import { expect, test } from "vitest";
import { putCoolerStock } from "#db/write/beds";
import { removeBooking } from "#db/write/bookings";
import {
  addCrop,
  addVariety,
  putCurve,
  removeCrop,
  removeCurve,
  removeVariety,
  updateCrop,
  updateVariety,
} from "#db/write/crops";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { crop, curve, day, monthDay, variety } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const ASTER = {
  name: "China aster",
  scientific: "Callistephus chinensis",
  shape: "mass" as const,
  roles: ["secondary" as const, "focal" as const],
  usualRole: "secondary" as const,
  headSize: "medium" as const,
  stemLength: "long" as const,
  outOfWater: null,
  traitsOrigin: { mark: "common practice" as const, source: null },
  tender: true,
  overwinters: false,
  holdDays: { count: 6.5, mark: "published" as const, source: "SOME-SOURCE" },
  stretchDays: { count: 8.5, mark: "own" as const, source: null },
  dryHoldDays: { count: 14, mark: "published" as const, source: "THIRD" },
  holdUpToC: { count: 3, mark: "common practice" as const, source: null },
  cutSpareShare: { count: 0.175, mark: "trade" as const, source: null },
  notColderC: { count: -0.5, mark: "from memory" as const, source: null },
  fieldDays: { count: 0, mark: "trade" as const, source: null },
  bunchStems: { count: 10, mark: "common practice" as const, source: null },
  bucketStems: { count: 80, mark: "from memory" as const, source: null },
  buyInCents: { count: 112, mark: "published-secondary" as const, source: "OTHER" },
  buyInColours: ["white" as const, "pink" as const],
  buyInMonths: [11, 12, 1],
  tradeOrigin: { mark: "trade" as const, source: "SOME-MARKET" },
  cutStage: "outer petals open; centre “tight”",
  cautions: ["sap may irritate skin", "not near food"],
};

test("an added and a changed crop come back as they were given, each number with its origin", () => {
  withFarm((database) => {
    const { crops } = kept(database);
    const { result: id } = done(addCrop(database, ASTER));
    expect(kept(database).crops).toEqual([...crops, { id, ...ASTER }]);
    const own = { ...ASTER, name: "Aster", tender: false, overwinters: true, cautions: [], roles: ["line" as const] };
    done(updateCrop(database, id, own));
    expect(kept(database).crops).toEqual([...crops, { id, ...own }]);
    done(removeCrop(database, id));
    expect(kept(database).crops).toEqual(crops);
  });
});

test("a crop's name is its own, and it stays while anything names it", () => {
  withFarm((database) => {
    const before = kept(database);
    const why = ["name: a crop called Crop 1 is there already: choose another name"];
    expect(refused(addCrop(database, { ...ASTER, name: "Crop 1" }))).toEqual(why);
    expect(refused(updateCrop(database, 2, { ...ASTER, name: "Crop 1" }))).toEqual(why);
    expect(refused(updateCrop(database, 99, ASTER))).toEqual(["id: this crop is not on the farm"]);
    expect(refused(removeCrop(database, 99))).toEqual(["id: this crop is not on the farm"]);
    expect(refused(removeCrop(database, 1))).toEqual([
      "id: Crop 1 is named by 2 varieties: remove or change those first",
    ]);
    expect(refused(removeCrop(database, 2))).toEqual([
      "id: Crop 2 is named by 1 line of stems in a booking and 1 promise to a client: remove or change those first",
    ]);
    expect(kept(database)).toEqual(before);
    done(removeBooking(database, 1));
    done(removeCrop(database, 2));
  });
});

test("a variety is added, changed, moved with its curves to another crop, and removed with them", () => {
  withFarm((database) => {
    const { varieties, curves } = kept(database);
    const { result: id } = done(addVariety(database, { cropId: 1, name: "Late", colour: "silver", ...AS_ITS_CROP }));
    const own = done(putCurve(database, curve({ varietyId: id }))).result;
    const later = {
      ...{ cropId: 2, name: "Later", colour: "red" as const, roles: ["focal" as const, "accent" as const] },
      ...{ headSize: "large" as const, stemLength: "short" as const, outOfWater: "wilts" as const },
      ...{ holdDays: 2.5, stretchDays: 4 },
    };
    done(updateVariety(database, id, later));
    expect(kept(database).varieties).toEqual([...varieties, { id, ...later }]);
    expect(kept(database).curves).toEqual([...curves, { ...curve({ varietyId: id }), id: own, cropId: 2 }]);
    done(removeVariety(database, id));
    expect(kept(database)).toMatchObject({ varieties, curves });
  });
});

test("a variety's name is its own within its crop, and it stays while it is planted or in the cooler", () => {
  withFarm((database) => {
    done(putCoolerStock(database, { varietyId: 1, cutOn: day("2027-06-09"), stemCount: 4 }));
    const before = kept(database);
    const why = ["name: this crop has a variety called Variety 1 already: choose another name"];
    expect(refused(addVariety(database, variety({ id: 0, name: "Variety 1" })))).toEqual(why);
    expect(refused(updateVariety(database, 2, variety({ id: 2, name: "Variety 1" })))).toEqual(why);
    expect(refused(addVariety(database, variety({ id: 0, cropId: 99 })))).toEqual([
      "cropId: this crop is not on the farm",
    ]);
    expect(refused(updateVariety(database, 99, variety({ id: 99 })))).toEqual(["id: this variety is not on the farm"]);
    expect(refused(updateVariety(database, 1, variety({ id: 1, cropId: 99 })))).toEqual([
      "cropId: this crop is not on the farm",
    ]);
    expect(refused(removeVariety(database, 99))).toEqual(["id: this variety is not on the farm"]);
    expect(refused(removeVariety(database, 1))).toEqual([
      "id: Variety 1 is named by 1 planting and 1 line in the cooler: remove or change those first",
    ]);
    expect(kept(database)).toEqual(before);
    done(addVariety(database, variety({ id: 0, cropId: 2, name: "Variety 1" })));
  });
});

test("there is one curve for a crop, variety and treatment: putting it again replaces it under its id", () => {
  withFarm((database) => {
    const { id: _, ...draft } = curve({
      treatment: "tunnel",
      anchor: { kind: "days-after-planting", days: 84 },
      stemsPerPlantByWeek: [0.1 + 0.2, 0, 2.5, 1 / 3],
      firstCutSpreadDays: 6.25,
      yieldSpread: 0.3,
      timingOrigin: { mark: "published", source: "SOME-SOURCE" },
      note: "measured in 2026",
    });
    const { curves } = kept(database);
    const ofCrop = done(putCurve(database, draft)).result;
    const ofVariety = done(putCurve(database, { ...draft, varietyId: 2 })).result;
    const other = { ...draft, anchor: { kind: "day-of-year" as const, firstCut: monthDay("07-04") }, note: "" };
    expect(done(putCurve(database, other)).result).toBe(ofCrop);
    expect(kept(database).curves).toEqual([
      ...curves,
      { id: ofCrop, ...other },
      { id: ofVariety, ...draft, varietyId: 2 },
    ]);
    expect(done(putCurve(database, other)).changeId).toBeNull();
    done(removeCurve(database, ofCrop));
    expect(kept(database).curves).toEqual([...curves, { id: ofVariety, ...draft, varietyId: 2 }]);
  });
});

test("a curve needs a crop of the farm, and a variety of that crop", () => {
  withFarm((database) => {
    const before = kept(database);
    expect(refused(putCurve(database, curve({ cropId: 99 })))).toEqual(["cropId: this crop is not on the farm"]);
    expect(refused(putCurve(database, curve({ varietyId: 99 })))).toEqual([
      "varietyId: this variety is not on the farm",
    ]);
    expect(refused(putCurve(database, curve({ cropId: 2, varietyId: 1 })))).toEqual([
      "varietyId: this variety is of another crop: choose one of the curve's own crop",
    ]);
    expect(refused(removeCurve(database, 99))).toEqual(["id: this bloom curve is not on the farm"]);
    expect(kept(database)).toEqual(before);
    expect(done(addCrop(database, crop({ id: 0, name: "New" }))).result).toBeGreaterThan(2);
  });
});
