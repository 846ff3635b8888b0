import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { addDays, dayInYear, toDay } from "#lib/domain/day";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { monthDayAt, NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import { firstCutsOnRecord } from "#lib/plan/learning/first-cuts-on-record";
import { rootMeanSquare } from "#lib/plan/learning/fit-clock";
import { curveOfMeanDays, curveOfPlantedClock } from "#lib/plan/learning/learned-curve";
import { type PlantedSeason, plantedPoint } from "#lib/plan/learning/planted-point";
import { firstCutDay, warmthOf } from "#lib/plan/road/first-cut";
import { plantedLessonInWords } from "#lib/plan/words/lesson-words";
import { crop, curve, day, farm, monthDay, newBed, planting, snapshot } from "../../small-farm";
import { inventedWarmth, walkedIndex } from "./invented-seasons";

/** Three plantings in each of so many invented years, cut when degree days above `baseC` from planting come to `sum`, by some days of chance. */
function byWarmth(seed: number, yearCount: number, baseC: number, sum: number, chanceDays = 0): PlantedSeason[] {
  const random = seededRandom(seed);
  return Array.from({ length: yearCount }, () => inventedWarmth(random, 12)).flatMap((meanC, index) =>
    [130, 150, 171].map((planted) => {
      const plantedIndex = NEW_YEAR_INDEX + planted + wholeBetween(random, -4, 4);
      const cut = Math.round(walkedIndex(meanC, plantedIndex, baseC, sum) + 1 + chanceDays * (random() - 0.5));
      return { year: 2000 + index, firstDay: index * 365, meanC, plantedIndex, firstCutIndex: cut };
    }),
  );
}

/** The slow second method: for every base the sum is tried degree day by degree day, each year told by the best sum of the others. */
function byTrying(seasons: readonly PlantedSeason[], baseC: number): number {
  const cutBy = ({ meanC, plantedIndex }: PlantedSeason, sum: number) =>
    walkedIndex(meanC, plantedIndex, baseC, sum) + 1;
  const lateness = (rows: readonly PlantedSeason[], sum: number) =>
    rows.reduce((days, row) => days + cutBy(row, sum) - row.firstCutIndex, 0);
  const errors = seasons.map((season) => {
    const others = seasons.filter(({ year }) => year !== season.year);
    let sum = 1;
    while (lateness(others, sum) < 0) sum += 1;
    return cutBy(season, sum) - season.firstCutIndex;
  });
  return rootMeanSquare(errors);
}

describe("degree days from planting", () => {
  test("[H11] three plantings of 50, 60 and 55 days have a mean of 55, each year told by the others: by hand", () => {
    const meanC = new Float64Array(NEW_YEAR_INDEX + 365).fill(-5);
    const season = (year: number, days: number) => ({
      year,
      firstDay: 0,
      meanC,
      plantedIndex: 250,
      firstCutIndex: 250 + days,
    });
    const point = plantedPoint([season(2020, 50), season(2021, 60), season(2022, 55)]);
    expect(point.meanDays).toBe(55);
    expect(point.told.map(({ byMeanIndex }) => byMeanIndex - 250)).toEqual([57.5, 52.5, 55]);
    expect(point.meanErrorDays).toBeCloseTo(Math.sqrt((7.5 ** 2 + 7.5 ** 2) / 3), 9);
    expect(point.clock).toBeNull();
    expect(plantedLessonInWords(point, "us")).toBe(
      "Nothing tells these 3 first cuts better than the mean of their days, 55 days after planting: it is off by 6.1 days.",
    );
  });

  test("[H11] made by warmth above 8 °C, they are told by it within a day, and its base is found", () => {
    const point = plantedPoint(byWarmth(3, 8, 8, 600));
    expect(point.clock?.baseC).toBeGreaterThan(6.9);
    expect(point.clock?.baseC).toBeLessThan(9.1);
    expect(point.clockErrorDays).toBeLessThan(1);
    expect(point.meanErrorDays).toBeGreaterThan(3);
    expect(plantedLessonInWords(point, "metric")).toMatch(
      /^Warmth above 8 °C, from planting to 6\d\d degree days, tells these 24 first cuts within [\d.]+ days?\. /,
    );
  });

  test("[H11] errors left out are those of trying every sum, on 20 seeds, to a tenth of a day", () => {
    let clockCount = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const seasons = byWarmth(seed, 4, 6, 500, 6);
      const { clock, clockErrorDays } = plantedPoint(seasons);
      if (clock === null || clockErrorDays === null) continue;
      expect(Math.abs(clockErrorDays - byTrying(seasons, clock.baseC))).toBeLessThan(0.1);
      clockCount++;
    }
    expect(clockCount).toBeGreaterThan(10);
  });

  test("[H11] what is proposed never errs more than the mean days on the plantings it learned from, whatever made them", () => {
    let clockCount = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const seasons = byWarmth(seed, 3, 10, 350, 40);
      const { clock, meanDays, clockErrorDays, meanErrorDays } = plantedPoint(seasons);
      if (clock === null) continue;
      expect(clockErrorDays).toBeLessThan(meanErrorDays);
      const within = (told: (row: PlantedSeason) => number) =>
        rootMeanSquare(seasons.map((row) => told(row) - row.firstCutIndex));
      const byClock = within((row) => walkedIndex(row.meanC, row.plantedIndex, clock.baseC, clock.sumC) + 1);
      expect(byClock).toBeLessThanOrEqual(within(({ plantedIndex }) => plantedIndex + meanDays) + 0.01);
      clockCount++;
    }
    expect(clockCount).toBeGreaterThan(3);
  });

  test("two plantings, or plantings of one year, are refused", () => {
    const [a, b, c] = byWarmth(1, 1, 8, 600);
    expect(() => plantedPoint([a, b])).toThrow(RangeError);
    expect(() => plantedPoint([a, b, c])).toThrow(RangeError);
  });
});

describe("a curve that learned from plantings", () => {
  const CLIMATE = CLIMATE_STATIONS[1];
  const grown = curve({ anchor: { kind: "days-after-planting", days: 90 }, note: "kept as it is" });
  const point = plantedPoint(byWarmth(3, 8, 8, 600));
  const meanPlanted = NEW_YEAR_INDEX + 150;

  test("[H11] holds the clock: from its known planting day a usual year has the sum on its first cut, to the day", () => {
    const learned = curveOfPlantedClock(grown, point, meanPlanted, CLIMATE);
    if (learned?.anchor.kind !== "days-after-planting") throw new Error("no clock");
    expect(learned).toMatchObject({ heatFrom: monthDayAt(meanPlanted), heatPlace: null, note: "kept as it is" });
    const plantedOn = dayInYear(monthDayAt(meanPlanted), 2027);
    const told = firstCutDay(
      learned,
      planting({ id: 1, plantedOn, seasonYear: 2027 }),
      warmthOf(farm({ climate: CLIMATE })),
    );
    expect(told === null ? null : toDay(told)).toBe(addDays(plantedOn, learned.anchor.days));
    expect(
      curveOfPlantedClock(grown, { ...point, clock: null, clockErrorDays: null }, meanPlanted, CLIMATE),
    ).toBeNull();
    expect(
      curveOfPlantedClock(grown, { ...point, clock: { baseC: 8, sumC: 90_000 } }, meanPlanted, CLIMATE),
    ).toBeNull();
  });

  test("[H11] [F16] either is told from the plantings themselves, so that days learned before are not added to it, and stems learned are kept", () => {
    const taught = { ...grown, learned: [{ fromSeason: 2026, laterDays: 9, yieldFactor: 0.8 }] };
    const kept = [{ fromSeason: 2026, laterDays: 0, yieldFactor: 0.8 }];
    expect(curveOfMeanDays(taught, point).learned).toEqual(kept);
    expect(curveOfPlantedClock(taught, point, meanPlanted, CLIMATE)?.learned).toEqual(kept);
  });

  test("[H11] or holds the mean days by the calendar, with their error as the spread", () => {
    const learned = curveOfMeanDays({ ...grown, heatBaseC: 5, heatFrom: monthDay("05-01") }, point);
    expect(learned).toMatchObject({ heatBaseC: null, heatFrom: null });
    expect(learned.anchor).toEqual({ kind: "days-after-planting", days: Math.round(point.meanDays) });
    expect(learned.firstCutSpreadDays).toBeCloseTo(point.meanErrorDays, 1);
  });
});

test("first cuts on record are first blooms of plantings alone in their bed and set out as plants, each with its planting day", () => {
  const look = (id: number, bedId: number, lookedOn: string, sign: "first bloom" | "late" = "first bloom") => ({
    ...{ id, bedId, varietyId: 1, lookedOn: day(lookedOn), sign, daysToCut: null },
  });
  const of = curve({ anchor: { kind: "days-after-planting", days: 60 } });
  const rows = [
    planting({ id: 1, bedId: 1, plantedOn: day("2025-05-10"), seasonYear: 2025 }),
    planting({ id: 2, bedId: 1, plantedOn: day("2026-05-12"), seasonYear: 2026 }),
    planting({ id: 3, bedId: 2, plantedOn: day("2026-06-12"), seasonYear: 2026, sown: true }),
  ];
  const beds = [
    { id: 1, ...newBed("D1") },
    { id: 2, ...newBed("D2") },
  ];
  const budLooks = [
    look(1, 1, "2025-07-20"),
    look(2, 1, "2025-07-15"),
    look(3, 1, "2026-07-01", "late"),
    look(4, 1, "2026-07-22"),
    look(5, 2, "2026-08-10"),
  ];
  const given = snapshot({ crops: [crop({ id: 1 })], curves: [of], beds, plantings: rows, budLooks });
  const found = firstCutsOnRecord(given, { ...of, treatment: rows[0].treatment });
  expect(found).toEqual([
    { year: 2025, plantedOn: "2025-05-10", firstCut: "2025-07-15" },
    { year: 2026, plantedOn: "2026-05-12", firstCut: "2026-07-22" },
  ]);
});
