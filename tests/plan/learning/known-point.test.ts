import { describe, expect, test } from "vitest";
import { seededRandom } from "#lib/maths/random";
import { type BloomSeason, NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import { clockGuesses } from "#lib/plan/learning/clock-guesses";
import { rootMeanSquare } from "#lib/plan/learning/fit-clock";
import { knownPoint } from "#lib/plan/learning/known-point";
import { inventedSeasons, walkedIndex } from "./invented-seasons";

const byHeat = (meanC: Float64Array) => Math.ceil(walkedIndex(meanC, NEW_YEAR_INDEX + 20, 4, 180));

/** The sum at which errors average out, by halving and walking day by day. */
function slowSum(seasons: readonly BloomSeason[], start: number, baseC: number): number {
  let low = 1;
  let high = 5000;
  for (let halving = 0; halving < 40; halving++) {
    const middle = Math.sqrt(low * high);
    const late = seasons.reduce(
      (sum, { meanC, firstCutIndex }) => sum + walkedIndex(meanC, start, baseC, middle) - firstCutIndex,
      0,
    );
    if (late < 0) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

/** Each season told by the sum of the others. */
const slowErrors = (seasons: readonly BloomSeason[], startDay: number, baseC: number): number[] =>
  seasons.map(({ meanC, firstCutIndex }, season) => {
    const start = NEW_YEAR_INDEX + startDay;
    const others = seasons.filter((_, index) => index !== season);
    return walkedIndex(meanC, start, baseC, slowSum(others, start, baseC)) - firstCutIndex;
  });

describe("the known point that recorded first cuts propose", () => {
  test("[H8] where warmth above 4 °C from 21 January made the cuts, that clock is proposed, and tells a season left out within a day", () => {
    const { clock, clockErrorDays, meanErrorDays } = knownPoint(inventedSeasons(seededRandom(5), 20, byHeat));
    expect(clock?.baseC).toBe(4);
    expect(clock?.sumC).toBeGreaterThan(150);
    expect(clock?.sumC).toBeLessThan(230);
    expect(clockErrorDays).toBeLessThan(1);
    expect(meanErrorDays).toBeGreaterThan(3);
  });

  test("[H8] its errors are those of refitting and walking day by day, and no plain clock that was looked at errs less (seed 8)", () => {
    const seasons = inventedSeasons(seededRandom(8), 8, byHeat);
    const { clock, clockErrorDays, told } = knownPoint(seasons);
    const slow = slowErrors(seasons, clock?.startDay ?? 0, clock?.baseC ?? 0);
    told.forEach(({ byClockIndex, recordedIndex }, season) => {
      expect((byClockIndex ?? 0) - recordedIndex).toBeCloseTo(slow[season], 1);
    });
    expect(rootMeanSquare(slow)).toBeCloseTo(clockErrorDays ?? 0, 1);
    const others = clockGuesses().filter(({ fallPerDay, fallPerColdDay }) => fallPerDay + fallPerColdDay === 0);
    for (const { response, startDay } of others.filter((_, index) => index % 5 === 0))
      if ("baseC" in response)
        expect(rootMeanSquare(slowErrors(seasons, startDay, response.baseC))).toBeGreaterThan(
          (clockErrorDays ?? 0) - 0.05,
        );
  });

  test("[H8] where the calendar made the cuts, the mean day is proposed and no clock (seeds 1 to 5)", () => {
    for (let seed = 1; seed <= 5; seed++) {
      const random = seededRandom(seed);
      const seasons = inventedSeasons(random, 15, () => NEW_YEAR_INDEX + 150 + Math.floor(random() * 3));
      const { clock, clockErrorDays, meanIndex, told } = knownPoint(seasons);
      expect([clock, clockErrorDays]).toEqual([null, null]);
      expect(meanIndex).toBeCloseTo(NEW_YEAR_INDEX + 151, 0);
      const others = seasons.slice(1).map(({ firstCutIndex }) => firstCutIndex);
      expect(told[0].byMeanIndex).toBeCloseTo(others.reduce((sum, day) => sum + day, 0) / others.length, 9);
    }
  });

  test("fewer than three seasons teach nothing", () => {
    expect(() => knownPoint(inventedSeasons(seededRandom(1), 2, byHeat))).toThrow(RangeError);
  });
});
