import { expect, test } from "vitest";
import { addBed, putCoolerStock, removeBed, removeCoolerStock, updateBed } from "#db/write/beds";
import { addPlanting, carryPlantings, removePlanting, setTreatment, updatePlanting } from "#db/write/plantings";
import { bed, day, planting } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const SPRAYED = {
  name: "East 7",
  lengthMetres: 30.48,
  widthMetres: 0.9,
  flags: ["vole damage" as const, "wet soil" as const],
  noEntryFrom: day("2027-06-01"),
  noEntryUntil: day("2027-06-03"),
  note: "by the hedge",
};

const ASKED = {
  bedId: 2,
  varietyId: 1,
  seasonYear: 2028,
  treatment: "kept-in-ground" as const,
  plantedOn: day("2026-05-11"),
  plantCount: 0,
  ageSeasons: 3,
  daysLate: -6,
  yieldFactor: 0.85,
  sown: true,
  aliveShare: 0.95,
  gradeOutShare: 1 / 3,
  winterSurvivalShare: 0.7,
  flags: ["too precious to risk" as const, "virus or gall" as const],
};

test("an added and a changed bed come back as they were given, and a removed one takes its plantings along", () => {
  withFarm((database) => {
    const { beds, plantings } = kept(database);
    const { result: id } = done(addBed(database, SPRAYED));
    expect(kept(database).beds).toEqual([...beds, { id, ...SPRAYED }]);
    const dry = { ...SPRAYED, name: "East 8", flags: [], noEntryFrom: null, noEntryUntil: null };
    done(updateBed(database, id, dry));
    expect(kept(database).beds).toEqual([...beds, { id, ...dry }]);
    done(removeBed(database, 2));
    expect(kept(database).beds).toEqual([beds[0], { id, ...dry }]);
    expect(kept(database).plantings).toEqual([plantings[0]]);
  });
});

test("a bed's name is its own", () => {
  withFarm((database) => {
    const before = kept(database);
    const why = ["name: a bed called D1 is there already: choose another name"];
    expect(refused(addBed(database, bed({ id: 0, name: "D1" })))).toEqual(why);
    expect(refused(updateBed(database, 2, bed({ id: 2, name: "D1" })))).toEqual(why);
    expect(refused(updateBed(database, 99, SPRAYED))).toEqual(["id: this bed is not on the farm"]);
    expect(refused(removeBed(database, 99))).toEqual(["id: this bed is not on the farm"]);
    expect(kept(database)).toEqual(before);
  });
});

test("an added and a changed planting come back as they were given", () => {
  withFarm((database) => {
    const { plantings } = kept(database);
    const { result: id, title } = done(addPlanting(database, ASKED));
    expect(title).toBe("planted Variety 1 in bed D2");
    expect(kept(database).plantings).toEqual([...plantings, { id, ...ASKED }]);
    const moved = { ...ASKED, bedId: 1, winterSurvivalShare: null, flags: [] };
    done(updatePlanting(database, id, moved));
    expect(kept(database).plantings).toEqual([...plantings, { id, ...moved }]);
    done(removePlanting(database, id));
    expect(kept(database).plantings).toEqual(plantings);
  });
});

test("a planting needs a bed and a variety of the farm: both are told", () => {
  withFarm((database) => {
    const before = kept(database);
    const lost = { ...ASKED, bedId: 98, varietyId: 99 };
    const why = ["bedId: this bed is not on the farm", "varietyId: this variety is not on the farm"];
    expect(refused(addPlanting(database, lost))).toEqual(why);
    expect(refused(updatePlanting(database, 1, lost))).toEqual(why);
    expect(refused(updatePlanting(database, 99, ASKED))).toEqual(["id: this planting is not on the farm"]);
    expect(refused(removePlanting(database, 99))).toEqual(["id: this planting is not on the farm"]);
    expect(kept(database)).toEqual(before);
  });
});

test("plantings get a treatment together; their expected survival only when it is given", () => {
  withFarm((database) => {
    const third = done(addPlanting(database, ASKED)).result;
    const [one, two, three] = kept(database).plantings;
    done(setTreatment(database, [1, third], "spring-planted"));
    const dug = { treatment: "spring-planted" };
    expect(kept(database).plantings).toEqual([{ ...one, ...dug }, two, { ...three, ...dug }]);
    const { title } = done(setTreatment(database, [1, 2], "kept-in-ground", { winterSurvivalShare: 0.6 }));
    expect(title).toBe("2 plantings: kept in the ground over winter");
    const left = { treatment: "kept-in-ground", winterSurvivalShare: 0.6 };
    expect(kept(database).plantings).toEqual([
      { ...one, ...left },
      { ...two, ...left },
      { ...three, ...dug },
    ]);
    done(setTreatment(database, [2], "kept-in-ground", { winterSurvivalShare: null }));
    expect(kept(database).plantings[1]).toEqual({ ...two, treatment: "kept-in-ground", winterSurvivalShare: null });
  });
});

test("a treatment for plantings of which some are gone is refused for all", () => {
  withFarm((database) => {
    const before = kept(database);
    expect(refused(setTreatment(database, [1, 98, 2, 99], "tunnel"))).toEqual([
      "plantingIds[1]: this planting is not on the farm",
      "plantingIds[3]: this planting is not on the farm",
    ]);
    expect(kept(database)).toEqual(before);
  });
});

test("plantings are carried to the next season as one change, or not at all", () => {
  withFarm((database) => {
    const { plantings } = kept(database);
    const next = plantings.map(({ id: _, ...row }) => ({ ...row, seasonYear: 2028, plantCount: 60 }));
    const { result, title } = done(carryPlantings(database, 2027, 2028, next));
    expect(title).toBe("carried 2 plantings from 2027 to 2028");
    expect(kept(database).plantings).toEqual([
      ...plantings,
      ...next.map((row, index) => ({ id: result[index], ...row })),
    ]);

    const before = kept(database);
    const lost = [next[0], { ...next[1], bedId: 99 }];
    expect(refused(carryPlantings(database, 2027, 2028, lost))).toEqual([
      "plantings[1].bedId: this bed is not on the farm",
    ]);
    expect(() => carryPlantings(database, 2027, 2028, [planting({ id: 0 })])).toThrow(RangeError);
    expect(kept(database)).toEqual(before);
  });
});

test("stems are put into the cooler, changed and taken out", () => {
  withFarm((database) => {
    const cut = { varietyId: 2, cutOn: day("2027-06-09"), stemCount: 45 };
    const first = done(putCoolerStock(database, cut)).result;
    const second = done(putCoolerStock(database, { ...cut, varietyId: 1 })).result;
    done(putCoolerStock(database, { ...cut, id: first, stemCount: 0 }));
    expect(kept(database).coolerStock).toEqual([
      { id: first, ...cut, stemCount: 0 },
      { id: second, ...cut, varietyId: 1 },
    ]);
    done(removeCoolerStock(database, first));
    expect(kept(database).coolerStock).toEqual([{ id: second, ...cut, varietyId: 1 }]);
    expect(refused(putCoolerStock(database, { ...cut, varietyId: 99 }))).toEqual([
      "varietyId: this variety is not on the farm",
    ]);
    expect(refused(putCoolerStock(database, { ...cut, id: 99 }))).toEqual([
      "id: this line in the cooler is not on the farm",
    ]);
    expect(refused(removeCoolerStock(database, 99))).toEqual(["id: this line in the cooler is not on the farm"]);
  });
});
