import { describe, expect, test } from "vitest";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { NEW_YEAR_INDEX, SEASON_DAYS } from "#lib/plan/learning/bloom-season";
import { errorsLeftOut, fitClock, RecordedSeasons, rootMeanSquare } from "#lib/plan/learning/fit-clock";
import { coldOfDays, easedBy, heatAddedUp, heatOfDay, indexOfSum } from "#lib/plan/learning/heat-clock";
import { firstCutIndex, learnClock } from "#lib/plan/learning/learned-clock";
import { inventedSeasons, inventedWarmth, walkedIndex } from "./invented-seasons";

const course = (meanC: Float64Array, baseC: number, fallPerDay = 0, fallPerColdDay = 0) => ({
  heat: heatAddedUp(meanC.map((warmth) => heatOfDay(warmth, { baseC }))),
  eased: easedBy(coldOfDays(meanC), fallPerDay, fallPerColdDay),
});
const plain = (startDay: number, baseC: number) => ({
  startDay,
  response: { baseC },
  fallPerDay: 0,
  fallPerColdDay: 0,
});

describe("a clock of warmth", () => {
  test("[H1] ten days of 14 °C from 1 January give 100 degree days above 4 °C, reached at the end of 10 January", () => {
    const even = new Float64Array(SEASON_DAYS).fill(14);
    expect(indexOfSum(course(even, 4), NEW_YEAR_INDEX, 100)).toBe(NEW_YEAR_INDEX + 9);
    expect(indexOfSum(course(even, 4), NEW_YEAR_INDEX, 95)).toBe(NEW_YEAR_INDEX + 8.5);
  });

  test("[H1] a frosty day takes nothing back, and a rate per ten degrees doubles from 10 to 20 °C", () => {
    expect(heatOfDay(-8, { baseC: 4 })).toBe(0);
    expect(heatOfDay(20, { perTenDegrees: 2 }) / heatOfDay(10, { perTenDegrees: 2 })).toBe(2);
  });

  test("[H1] a sum that falls by the day is reached earlier, and one that falls by the cold day earlier still after cold", () => {
    const cold = new Float64Array(SEASON_DAYS).fill(5);
    const even = indexOfSum(course(cold, 4), NEW_YEAR_INDEX, 100);
    const falling = indexOfSum(course(cold, 4, 0.01), NEW_YEAR_INDEX, 100);
    const chilled = indexOfSum(course(cold, 4, 0, 0.01), NEW_YEAR_INDEX, 100);
    expect(even).toBe(NEW_YEAR_INDEX + 99);
    expect(falling).toBeLessThan(even);
    expect(chilled).toBeLessThan(falling);
  });

  test("[H1] halving finds the day that walking finds, on 200 invented seasons (seed 11)", () => {
    const random = seededRandom(11);
    for (let round = 0; round < 200; round++) {
      const meanC = inventedWarmth(random);
      const start = NEW_YEAR_INDEX + wholeBetween(random, -60, 74);
      const baseC = wholeBetween(random, -4, 10);
      const sum = wholeBetween(random, 20, 600);
      expect(indexOfSum(course(meanC, baseC), start, sum)).toBeCloseTo(walkedIndex(meanC, start, baseC, sum), 6);
    }
  });
});

describe("learning from recorded seasons", () => {
  const heatTruth = (meanC: Float64Array) => Math.ceil(walkedIndex(meanC, NEW_YEAR_INDEX + 20, 4, 180));

  test("[H2] the sum behind invented seasons is found again, errors average out, and left-out errors are the refitted ones (seed 3)", () => {
    const seasons = inventedSeasons(seededRandom(3), 25, heatTruth);
    const recorded = new RecordedSeasons(seasons);
    const fitted = fitClock(recorded, plain(20, 4));
    expect(fitted?.sum).toBeGreaterThan(175);
    expect(fitted?.sum).toBeLessThan(190);
    expect(fitted?.errorDays).toBeLessThan(0.5);
    const errors = seasons.map(
      (season) => indexOfSum(course(season.meanC, 4), NEW_YEAR_INDEX + 20, fitted?.sum ?? 0) - season.firstCutIndex,
    );
    expect(Math.abs(errors.reduce((sum, error) => sum + error, 0) / errors.length)).toBeLessThan(0.01);
    const without = fitClock(new RecordedSeasons(seasons.slice(1)), plain(20, 4));
    const first = indexOfSum(course(seasons[0].meanC, 4), NEW_YEAR_INDEX + 20, without?.sum ?? 0);
    expect(errorsLeftOut(recorded, plain(20, 4))[0]).toBeCloseTo(first - seasons[0].firstCutIndex, 9);
  });

  test("[H3] shares sum to 1, the best clock has the largest, and none is heard that does not beat the calendar mean (seeds 1 to 3)", () => {
    for (let seed = 1; seed <= 3; seed++) {
      const learned = learnClock(inventedSeasons(seededRandom(seed), 20, heatTruth));
      const shares = learned.clocks.map(({ share }) => share);
      expect(learned.calendarShare + shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(Math.max(...shares)).toBe(shares[0]);
      for (const { leftOutErrorDays } of learned.clocks)
        expect(leftOutErrorDays).toBeLessThan(learned.leftOut.calendarDays);
    }
  });

  test("[H3] on later invented seasons, kept by heat, by cold then heat, or by heat and light, it errs less than the best plain heat sum does on average, and far less than the calendar mean (seeds 21 and 22)", () => {
    const truths = [
      heatTruth,
      (meanC: Float64Array) => {
        let cold = 0;
        let heat = 0;
        for (let index = 30; index < SEASON_DAYS; index++) {
          if (cold < 75) cold += meanC[index] < 6 ? 1 : 0;
          else heat += Math.max(0, meanC[index] - 4);
          if (heat > 180) return index;
        }
        return SEASON_DAYS - 1;
      },
      (meanC: Float64Array) => {
        let heat = 0;
        for (let index = NEW_YEAR_INDEX; index < SEASON_DAYS; index++) {
          const hours = 12 - 4 * Math.cos((2 * Math.PI * (index - NEW_YEAR_INDEX + 10)) / 365);
          heat += Math.max(0, meanC[index] - 2) * (hours / 12) ** 3;
          if (heat > 330) return index;
        }
        return SEASON_DAYS - 1;
      },
    ];
    const total = { mixed: 0, plainSum: 0, calendar: 0 };
    for (const truth of truths)
      for (let seed = 21; seed <= 22; seed++) {
        const random = seededRandom(seed);
        const scatter = () => Math.round((random() + random() + random() - 1.5) * 4);
        const seasons = inventedSeasons(random, 40, (meanC) => truth(meanC) + scatter());
        const [training, later] = [seasons.slice(0, 24), seasons.slice(24)];
        const learned = learnClock(training);
        const recorded = new RecordedSeasons(training);
        const plains = [0, 1, 2, 3, 4, 5, 6].flatMap((baseC) =>
          [0, 20, 31, 45].map((start) => fitClock(recorded, plain(start, baseC))),
        );
        const [best] = plains.filter((fitted) => fitted !== null).sort((a, b) => a.errorDays - b.errorDays);
        const errorOf = (tell: (season: (typeof later)[number]) => number) =>
          rootMeanSquare(later.map((season) => tell(season) - season.firstCutIndex));
        total.mixed += errorOf((season) => firstCutIndex(learned, season));
        total.plainSum += errorOf(({ meanC }) =>
          walkedIndex(
            meanC,
            NEW_YEAR_INDEX + best.clock.startDay,
            (best.clock.response as { baseC: number }).baseC,
            best.sum,
          ),
        );
        total.calendar += errorOf(() => learned.calendarIndex);
      }
    expect(total.mixed).toBeLessThan(total.plainSum);
    expect(total.mixed).toBeLessThan(0.5 * total.calendar);
  });

  test("[H4] on its own seasons it never errs more than the calendar mean, also where dates are thrown by dice (seeds 1 to 8)", () => {
    for (let seed = 1; seed <= 8; seed++) {
      const random = seededRandom(seed);
      const seasons = inventedSeasons(
        random,
        wholeBetween(random, 3, 15),
        () => NEW_YEAR_INDEX + wholeBetween(random, 90, 150),
      );
      const learned = learnClock(seasons);
      const error = rootMeanSquare(seasons.map((season) => firstCutIndex(learned, season) - season.firstCutIndex));
      const ofMean = rootMeanSquare(seasons.map((season) => learned.calendarIndex - season.firstCutIndex));
      expect(error).toBeLessThanOrEqual(ofMean + 1e-9);
      if (learned.clocks.length === 0) expect(learned.calendarShare).toBe(1);
    }
  });

  test("[H4] fewer than three seasons are refused", () => {
    expect(() => learnClock(inventedSeasons(seededRandom(1), 2, heatTruth))).toThrow(RangeError);
  });

  test("[H5] what comes after the known day changes nothing, and with all known it is the season's own answer (seed 8)", () => {
    const [last, ...training] = inventedSeasons(seededRandom(8), 20, heatTruth);
    const learned = learnClock(training);
    const known = last.firstCutIndex - 28;
    const other = last.meanC.map((warmth, index) => (index > known ? warmth + 9 : warmth));
    expect(firstCutIndex(learned, { ...last, meanC: other }, known)).toBe(firstCutIndex(learned, last, known));
    expect(firstCutIndex(learned, last, SEASON_DAYS)).toBe(firstCutIndex(learned, last));
    expect(firstCutIndex(learned, { ...last, meanC: other })).toBeLessThan(firstCutIndex(learned, last));
  });
});
