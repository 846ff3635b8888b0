import { describe, expect, test } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecast } from "#lib/plan/road/forecast";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { crop, curve, day, farm, monthDay, planting, snapshot, variety } from "../../small-farm";
import { catalogueCrop, catalogueCurve } from "../../truth/catalogue-curve";

const everyDay = farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7] });
const stemsOf = (given: Partial<Snapshot>) =>
  forecast(snapshot({ farm: everyDay, ...given }), 2027).plantings[0].openedStems;

/** A farm of one built-in crop with 100 plants of an age. */
const growing = (name: string, ageSeasons: number | null, plantedOn = "2027-04-10"): Partial<Snapshot> => {
  const { curves: _, ...facts } = catalogueCrop(name);
  return {
    crops: [crop({ id: 1, ...facts })],
    curves: [curve(catalogueCurve(name, "field"))],
    plantings: [planting({ id: 1, plantCount: 100, ageSeasons, plantedOn: day(plantedOn) })],
  };
};

describe("stems by age", () => {
  const byAge = [curve({ stemsPerPlantByWeek: [10], shareByAge: [0, 0.25, 1] })];
  const aged = (ageSeasons: number | null) =>
    stemsOf({ curves: byAge, plantings: [planting({ id: 1, plantCount: 20, ageSeasons })] });

  test("[F12] 20 plants of 10 stems with shares of 0, a quarter and 1 give 0, 50, 200, and 200 from then on", () => {
    expect([1, 2, 3, 4, 30].map(aged)).toEqual([0, 50, 200, 200, 200]);
  });

  test("[F12] an age that nobody has told is a grown plant's, and a curve without shares knows no age", () => {
    expect(aged(null)).toBe(200);
    const plain = [curve({ stemsPerPlantByWeek: [10] })];
    expect(stemsOf({ curves: plain, plantings: [planting({ id: 1, plantCount: 20, ageSeasons: 1 })] })).toBe(200);
  });

  test("[F12] 100 peonies set out this April, their age known, give none; grown ones 700", () => {
    expect(stemsOf(growing("Peony", 1))).toBe(0);
    expect(stemsOf(growing("Peony", null))).toBe(700);
  });

  test("[F12] roses planted on 1 May give less than a tenth of grown bushes", () => {
    expect(stemsOf(growing("Garden rose", 1, "2027-05-01"))).toBeLessThan(stemsOf(growing("Garden rose", null)) / 10);
  });

  /** Ranges from memory, as the catalogue says: peony 0, 0 to 2, 2 to 5, 4 to 8 and 8 to 15 stems; we hold to their order alone. */
  test("[F12] no built-in perennial gives less as it grows up, but for dahlias that crowd in the ground", () => {
    for (const name of ["Peony", "Garden rose", "Hydrangea", "Delphinium", "Yarrow", "Ninebark"]) {
      const { shareByAge } = catalogueCurve(name, "field");
      expect([...shareByAge].sort((a, b) => a - b)).toEqual(shareByAge);
      expect(shareByAge.at(-1)).toBe(1);
    }
    const { shareByAge } = catalogueCurve("Dahlia", "kept-in-ground");
    expect(shareByAge.slice(0, 3)).toEqual([1, 1, 1]);
    expect(shareByAge.at(-1)).toBeLessThan(1);
  });
});

describe("carried over to the next season", () => {
  const carried = (name: string, ageSeasons: number | null) =>
    carriedPlantings(snapshot({ ...growing(name, ageSeasons), varieties: [variety({ id: 1 })] }), 2027, 2028)[0];

  test("a peony stays where it is, a year older", () => {
    expect(carried("Peony", 1)).toMatchObject({ ageSeasons: 2, plantedOn: "2027-04-10", seasonYear: 2028 });
    expect(carried("Peony", null)).toMatchObject({ ageSeasons: null, plantedOn: "2027-04-10" });
  });

  test("tulips of one season, sweet peas and zinnias are planted anew, on the day of the new season", () => {
    for (const name of ["Tulip", "Sweet pea", "Zinnia"])
      expect(carried(name, 1)).toMatchObject({ ageSeasons: 1, plantedOn: "2028-04-10" });
  });

  test("a crop of her own that blooms on a day of the year in the field is taken to live on", () => {
    const own = snapshot({
      curves: [curve({ anchor: { kind: "day-of-year", firstCut: monthDay("06-01") } })],
      plantings: [planting({ id: 1, plantedOn: day("2024-05-01") })],
    });
    expect(carriedPlantings(own, 2027, 2028)[0].plantedOn).toBe("2024-05-01");
  });

  test("[K2] kept dahlias come with the flag of crowded clumps before their fourth winter, and are then dug by default; of unknown age they do not", () => {
    const kept = (ageSeasons: number | null) => {
      const { curves: _, ...facts } = catalogueCrop("Dahlia");
      const farmNow = snapshot({
        crops: [crop({ id: 1, ...facts })],
        curves: [curve({ ...catalogueCurve("Dahlia", "kept-in-ground") })],
        plantings: [planting({ id: 1, treatment: "kept-in-ground", ageSeasons })],
      });
      return carriedPlantings(farmNow, 2027, 2028)[0].flags;
    };
    expect([1, 2, 3, 4, null].map(kept)).toEqual([[], [], [], ["old crowded clumps"], []]);
  });
});
