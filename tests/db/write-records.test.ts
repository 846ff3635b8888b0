import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { emptyFarm, startFarm } from "#db/write/farm";
import { importRecords } from "#db/write/records";
import { seededFarm } from "#demo/seeded-farm";
import type { FarmRecords } from "#lib/domain/farm-records";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { booking, crop, curve, day, farm, newBed, planting, recipe } from "../small-farm";
import { changeOf, done, kept, refused, withDatabase, withFarm } from "./kept-farm";

/** A farm in names instead of ids. */
function recordsOf(snapshot: Snapshot): FarmRecords {
  const crops = new ById("crop", snapshot.crops);
  const varieties = new ById("variety", snapshot.varieties);
  const beds = new ById("bed", snapshot.beds);
  const recipes = new ById("recipe", snapshot.recipes);
  const varietyOf = (id: number) => {
    const { cropId, name, colour } = varieties.get(id);
    return { crop: crops.get(cropId).name, variety: name, colour };
  };
  const namingCrop = <Line extends { cropId: number | null }>({ cropId, ...line }: Line) => ({
    ...line,
    crop: cropId === null ? null : crops.get(cropId).name,
  });
  return {
    farm: snapshot.farm,
    crops: snapshot.crops.map(({ id: _, ...row }) => row),
    varieties: snapshot.varieties.map(({ id, cropId: _crop, name: _name, ...own }) => ({ ...own, ...varietyOf(id) })),
    curves: snapshot.curves.map(({ id: _, cropId, varietyId, ...row }) => ({
      ...row,
      crop: crops.get(cropId).name,
      variety: varietyId === null ? null : varieties.get(varietyId).name,
    })),
    recipes: snapshot.recipes.map(({ id: _, ...row }) => row),
    beds: snapshot.beds.map(({ id: _, ...row }) => row),
    plantings: snapshot.plantings.map(({ id: _, bedId, varietyId, ...row }) => ({
      ...row,
      ...varietyOf(varietyId),
      bed: beds.get(bedId).name,
    })),
    bookings: snapshot.bookings.map(({ id: _, unacceptableCropIds, pieces, stemLines, promises, ...row }) => ({
      ...row,
      unacceptableCrops: unacceptableCropIds.map((id) => crops.get(id).name),
      pieces: pieces.map(({ recipeId, ...piece }) => ({ ...piece, recipe: recipes.get(recipeId).name })),
      stemLines: stemLines.map(namingCrop),
      promises: promises.map(namingCrop),
    })),
    coolerStock: snapshot.coolerStock.map(({ id: _, varietyId, ...row }) => ({ ...row, ...varietyOf(varietyId) })),
  };
}

test("a farm of 40 beds and 30 bookings, read in by names, is the same farm", () => {
  withDatabase((database) => {
    const seeded = seededFarm(11, { bedCount: 40, bookingCount: 30 });
    const promised = { role: "focal" as const, cropOnly: false, asks: [], colours: ["blush" as const], stemCount: 12 };
    const promises = [null, seeded.crops[0].id].map((cropId) => ({ ...promised, cropId }));
    const snapshot = {
      ...seeded,
      bookings: seeded.bookings.map((row) => (row.id % 2 === 0 ? { ...row, promises } : row)),
    };
    const coolerStock = [{ id: 1, varietyId: 3, cutOn: day("2027-06-09"), stemCount: 30 }];
    done(startFarm(database, { farm: farm(), crops: [], recipes: [] }));
    const written = done(importRecords(database, recordsOf({ ...snapshot, coolerStock })));
    expect(kept(database)).toEqual({ ...snapshot, coolerStock });
    expect(written.title).toContain("40 beds, 40 plantings, 30 bookings, 1 line in the cooler");
  });
});

test("records read into an emptied farm give the same names again, and one undo takes all of them out", () => {
  withFarm((database) => {
    const records = recordsOf(kept(database));
    done(emptyFarm(database, "Test farm"));
    const empty = kept(database);
    const change = changeOf(importRecords(database, records));
    expect(recordsOf(kept(database))).toEqual(records);
    expect(undoChange(database, change).ok).toBe(true);
    expect(kept(database)).toEqual(empty);
  });
});

test("plantings and the cooler bring their varieties, each once", () => {
  withFarm((database) => {
    const { bedId: _, varietyId: __, id: ___, ...plain } = planting({ id: 0 });
    const late = { crop: "Crop 2", variety: "Late", colour: "red" as const };
    const stock = { cutOn: day("2027-06-09"), stemCount: 3 };
    done(
      importRecords(database, {
        beds: [newBed("D9")],
        plantings: [
          { ...plain, ...late, bed: "D9" },
          { ...plain, ...late, bed: "D1" },
          { ...plain, crop: "Crop 1", variety: "Variety 2", colour: "plum", bed: "D9" },
        ],
        coolerStock: [{ ...stock, ...late }],
      }),
    );
    const { beds, varieties, plantings, coolerStock } = kept(database);
    expect(varieties.slice(2)).toEqual([{ id: 3, cropId: 2, name: "Late", colour: "red", ...AS_ITS_CROP }]);
    expect(beds.slice(2).map(({ id, name }) => [id, name])).toEqual([[3, "D9"]]);
    expect(plantings.slice(2).map(({ bedId, varietyId }) => [bedId, varietyId])).toEqual([
      [3, 3],
      [1, 3],
      [3, 2],
    ]);
    expect(coolerStock).toEqual([{ id: 1, varietyId: 3, ...stock }]);
  });
});

test("settings, crops, curves and recipes of the same name are replaced under their ids", () => {
  withFarm((database) => {
    const before = kept(database);
    const { id: _, ...aster } = crop({ id: 0, name: "Crop 1", scientific: "Callistephus chinensis", tender: true });
    const { id: __, cropId: ___, varietyId: ____, ...bloom } = curve({ stemsPerPlantByWeek: [2, 3] });
    const { id: _____, ...arch } = recipe({ id: 0, name: "Arch", unit: "foot" });
    done(
      importRecords(database, {
        farm: farm({ zone: "5b" }),
        crops: [aster],
        curves: [{ ...bloom, crop: "Crop 1", variety: null }],
        recipes: [arch],
      }),
    );
    expect(kept(database)).toEqual({
      ...before,
      farm: farm({ zone: "5b" }),
      crops: [{ id: 1, ...aster }, before.crops[1]],
      curves: [{ ...before.curves[0], stemsPerPlantByWeek: [2, 3] }, before.curves[1]],
      recipes: [before.recipes[0], { id: 2, ...arch }],
    });
  });
});

test("every unknown name, every bed, booking and colour that clashes is told at once, and nothing is written", () => {
  withFarm((database) => {
    const before = kept(database);
    const { bedId: _, varietyId: __, id: ___, ...plain } = planting({ id: 0 });
    const known = { crop: "Crop 1", variety: "Variety 1" };
    const { unacceptableCropIds: ____, id: _____, ...plainBooking } = booking({ id: 0 });
    const { id: ______, ...plainCurve } = curve();
    const problems = refused(
      importRecords(database, {
        curves: [
          { ...plainCurve, crop: "Crop 8", variety: null },
          { ...plainCurve, crop: "Crop 1", variety: "Variety 8" },
        ],
        varieties: [{ ...known, ...AS_ITS_CROP, colour: "blue" }],
        beds: [newBed("D3"), newBed("D1"), newBed("D3")],
        plantings: [
          { ...plain, ...known, colour: "cream", bed: "D7" },
          { ...plain, ...known, colour: "pink", bed: "D3" },
          { ...plain, crop: "Crop 8", variety: "New", colour: "pink", bed: "D3" },
        ],
        bookings: [
          {
            ...plainBooking,
            client: "New",
            unacceptableCrops: ["Crop 1", "Crop 8"],
            pieces: [{ recipe: "Tower", pieceCount: 1, colours: [] }],
            stemLines: [{ role: "focal", crop: "Crop 9", cropOnly: false, asks: [], colours: [], stemCount: 1 }],
            promises: [{ role: "focal", crop: "Crop 9", cropOnly: false, asks: [], colours: [], stemCount: 1 }],
          },
          { ...plainBooking, client: "Client 2", unacceptableCrops: [], pieces: [], stemLines: [], promises: [] },
        ],
        coolerStock: [{ crop: "Crop 8", variety: "New", colour: "pink", cutOn: day("2027-06-09"), stemCount: 3 }],
      }),
    );
    const colour = "elsewhere: a variety has one colour, or give this one another name";
    expect(problems).toEqual([
      `varieties[0].colour: Variety 1 is cream ${colour}`,
      "curves[0].crop: there is no crop called Crop 8",
      "curves[1].variety: Crop 1 has no variety called Variety 8",
      "beds[1].name: a bed called D1 is there already: choose another name",
      "beds[2].name: a bed called D3 is there already: choose another name",
      "plantings[0].bed: there is no bed called D7",
      `plantings[1].colour: Variety 1 is cream ${colour}`,
      "plantings[2].crop: there is no crop called Crop 8",
      "bookings[0].unacceptableCrops[1].crop: there is no crop called Crop 8",
      "bookings[0].pieces[0].recipe: there is no recipe called Tower",
      "bookings[0].stemLines[0].crop: there is no crop called Crop 9",
      "bookings[0].promises[0].crop: there is no crop called Crop 9",
      "bookings[1].client: a booking of Client 2 for Saturday 12 June 2027 is there already: change that one, or write another name",
      "coolerStock[0].crop: there is no crop called Crop 8",
    ]);
    expect(kept(database)).toEqual(before);
  });
});

test("no records are no change", () => {
  withFarm((database) => expect(importRecords(database, {})).toMatchObject({ ok: true, changeId: null, result: 0 }));
});

test("settings for a farm that was not started are refused", () => {
  withDatabase((database) =>
    expect(refused(importRecords(database, { farm: farm() }))).toEqual(["farm: the farm has not been started yet"]),
  );
});
