import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import { firstFigures } from "#lib/plan/what-if/first-figures";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { frostMoves, spareMoves, survivalMoves, wageMoves } from "#lib/plan/words/first-figure-words";
import { provenPlan } from "../../proven-plan";
import { monthDay } from "../../small-farm";
import { dahliaFarm } from "./farm";

const stemsShort = ({ gaps }: ReturnType<typeof provenPlan>) =>
  gaps.reduce((sum, { shortStems }) => sum + shortStems, 0);

describe("what the four first figures move", () => {
  test("of two dahlia beds none is kept, and a tenth spare of 30 and 10 stems is 4", () => {
    const small = { ...dahliaFarm(), bookings: dahliaFarm().bookings.map((row) => ({ ...row, spareShare: 0.1 })) };
    expect(firstFigures(provenPlan(small, 2027))).toMatchObject({
      winterBedCount: 2,
      keptBedCount: 0,
      stems: 44,
      spareStems: 4,
    });
  });

  test("the earlier frost is the what-if of the same day, on the demo and on ten seeded farms", () => {
    const farms = [
      demoSnapshot(),
      ...Array.from({ length: 10 }, (_, seed) => seededFarm(seed, { bedCount: 12, bookingCount: 12 })),
    ];
    const differences = farms.map((farm) => {
      const frost = farm.farm.frost.firstAutumnP50;
      const earlier = new Date(Date.parse(`2027-${frost}`) - 14 * 86_400_000).toISOString().slice(5, 10);
      const { snapshot } = applyChanges(farm, 2027, [{ kind: "frost-moved", firstFrost: monthDay(earlier) }]);
      const stands = provenPlan(farm, 2027);
      const moved = stemsShort(provenPlan(snapshot, 2027)) - stemsShort(stands);
      expect(firstFigures(stands).earlyFrostShortStems).toBe(moved);
      return moved;
    });
    expect(Math.max(...differences)).toBeGreaterThan(0);
  });

  test("hours to dig all beds are those of the farm's rates: 100 clumps at 30, 14 and 90 an hour", () => {
    const farm = dahliaFarm();
    const { digClumpsPerHour, divideClumpsPerHour, replantTubersPerHour } = farm.farm.winter;
    const clumps = farm.plantings
      .filter(({ varietyId, seasonYear }) => varietyId === 1 && seasonYear === 2027)
      .reduce((sum, { plantCount }) => sum + plantCount, 0);
    expect(firstFigures(provenPlan(farm, 2027)).digHours).toBeCloseTo(
      clumps / digClumpsPerHour + clumps / divideClumpsPerHour + clumps / replantTubersPerHour,
      9,
    );
  });
});

describe("in words", () => {
  const figures = {
    seasonYear: 2027,
    winterBedCount: 17,
    keptBedCount: 1,
    earlyFrostShortStems: 277,
    digHours: 61.2,
    stems: 13_540,
    spareStems: 1231,
  };
  const { farm } = demoSnapshot();

  test("each says what it moves, with its numbers", () => {
    expect(survivalMoves(figures, farm, 6).moves).toBe("of 17 beds that could stay, six pay at 75 %");
    expect(survivalMoves(figures, farm, null).moves).toBe("of 17 beds that could stay, one does");
    expect(frostMoves(figures, farm).moves).toBe("two weeks earlier: 277 more stems short in 2027");
    expect(wageMoves(figures, farm).moves).toBe("digging all 17 beds and replanting: 61 hours, $1,224");
    expect(spareMoves(figures).moves).toBe("1,231 of the 13,540 stems booked for 2027 are spare");
  });

  test("a farm without dahlias, bookings or tender crops is told so", () => {
    const none = { ...figures, winterBedCount: 0, keptBedCount: 0, earlyFrostShortStems: 0, stems: 0, spareStems: 0 };
    expect(survivalMoves(none, farm, null).moves).toBe("no bed of 2027 could stay in the ground");
    expect(frostMoves(none, farm).moves).toBe("two weeks earlier: no stem more is short in 2027");
    expect(wageMoves(none, farm).moves).toBe("no bed is there to dig");
    expect(spareMoves(none).moves).toBe("nothing is booked for 2027 yet");
  });
});
