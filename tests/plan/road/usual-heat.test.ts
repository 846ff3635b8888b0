import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDayNumber } from "#lib/domain/day";
import { seededRandom } from "#lib/maths/random";
import { heatOf, usualHeat } from "#lib/plan/road/usual-heat";
import { Warmth } from "#lib/plan/road/warmth";
import { day } from "../../small-farm";

describe("the heat of a usual day", () => {
  test("[F9] far above the base it is the degrees above it, far below it nothing", () => {
    expect(usualHeat(25, 0.5, { baseC: 10, ceilingC: null, limitC: null })).toBeCloseTo(15, 9);
    expect(usualHeat(-20, 0.5, { baseC: 10, ceilingC: null, limitC: null })).toBe(0);
    expect(usualHeat(40, 0.5, { baseC: 10, ceilingC: 25, limitC: null })).toBeCloseTo(15, 9);
  });

  test("[F9] a day of 20 °C adds ten above a base of 10; with a ceiling of 25 and a limit of 30, one of 26 adds twelve, one of 30 or more nothing", () => {
    const range = { baseC: 10, ceilingC: 25, limitC: 30 };
    expect([8, 20, 25, 26, 28, 30, 33].map((meanC) => heatOf(meanC, range))).toEqual([0, 10, 15, 12, 6, 0, 0]);
    expect(heatOf(33, { ...range, limitC: null })).toBe(15);
  });

  test("[F9] it is the mean over the days that are spread about the usual one, added up in small steps", () => {
    const random = seededRandom(11);
    for (let run = 0; run < 40; run++) {
      const [usual, share, base] = [random() * 40 - 10, random(), random() * 12];
      const ceiling = run % 2 ? null : base + 5 + random() * 15;
      const limit = ceiling === null || run % 4 ? null : ceiling + 1 + random() * 12;
      const spread = 4 + 1.5 * Math.cos(2 * Math.PI * (share - 15 / 365));
      let mean = 0;
      const step = 0.005;
      for (let z = -8; z < 8; z += step) {
        const celsius = usual + spread * (z + step / 2);
        const slowed =
          ceiling === null || limit === null || celsius <= ceiling
            ? 1
            : Math.max(0, (limit - celsius) / (limit - ceiling));
        const heat = Math.max(0, Math.min(celsius, ceiling ?? celsius) - base) * slowed;
        mean += (heat * step * Math.exp(-((z + step / 2) ** 2) / 2)) / Math.sqrt(2 * Math.PI);
      }
      expect(usualHeat(usual, share, { baseC: base, ceilingC: ceiling, limitC: limit })).toBeCloseTo(mean, 3);
    }
  });

  test("[F9] recorded days count as they were: ten days at 20 °C in January give ten each above a base of 10", () => {
    const tenDays = {
      firstDay: toDayNumber(day("2027-01-05")),
      highC: new Float64Array(10).fill(25),
      lowC: new Float64Array(10).fill(15),
    };
    const range = { baseC: 10, ceilingC: null, limitC: null };
    const { firstDay, addedUp } = new Warmth(CLIMATE_STATIONS[0], tenDays).sums(2027, range);
    const usual = new Warmth(CLIMATE_STATIONS[0]).sums(2027, range);
    const from = tenDays.firstDay - firstDay;
    expect(addedUp[from + 10] - addedUp[from]).toBeCloseTo(100, 9);
    expect(addedUp[from]).toBe(usual.addedUp[from]);
    expect(addedUp[from + 40] - addedUp[from + 10]).toBeCloseTo(usual.addedUp[from + 40] - usual.addedUp[from + 10], 9);
  });
});
