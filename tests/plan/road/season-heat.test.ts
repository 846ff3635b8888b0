import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDayNumber } from "#lib/domain/day";
import { recordedDays, weatherOfDays } from "#lib/domain/records/weather-day";
import { seasonHeat } from "#lib/plan/road/season-heat";
import { usualHeat } from "#lib/plan/road/usual-heat";
import { usualYear } from "#lib/plan/road/usual-year";
import { earlyInWords, newDaysInWords, seasonHeatInWords } from "#lib/plan/words/weather-words";
import { day, farm } from "../../small-farm";

const [climate] = CLIMATE_STATIONS;
const home = farm({ climate });
const NEW_YEAR = toDayNumber(day("2027-01-01"));
const RANGE = { baseC: 10, ceilingC: null, limitC: null };
const usual = usualYear(climate, 2027);
const usualOf = (index: number) => usualHeat(usual.meanC[index % 365], ((index % 365) + 0.5) / 365, RANGE);

/** Days of 2027 whose mean lies so many degrees above 10 °C, or that nobody recorded (null). */
const recorded = (degrees: readonly (number | null)[]) =>
  weatherOfDays(
    degrees.flatMap((above, index) =>
      above === null ? [] : [{ day: NEW_YEAR + index, highC: 10 + above + 5, lowC: 10 + above - 5 }],
    ),
  );

describe("how early a season is by its warmth", () => {
  test("[H10] a season that adds on each day what the usual year adds is as usual; one with all of it a week sooner is a week early, a week later a week late", () => {
    const asOf = (shift: number) =>
      seasonHeat(
        {
          farm: home,
          weather: recorded(Array.from({ length: 180 }, (_, index) => usualOf(Math.max(0, index + shift)))),
        },
        2027,
        NEW_YEAR + 179,
      );
    expect(asOf(0)).toMatchObject({ through: NEW_YEAR + 179, daysEarly: 0, missingDayCount: 0 });
    expect(asOf(7)?.daysEarly).toBe(7);
    expect(asOf(-7)?.daysEarly).toBe(-7);
  });

  test("[H10] 150 days of 13 °C are 450 degree days, of 9 °C none; in °F they are 810", () => {
    const heat = seasonHeat({ farm: home, weather: recorded(new Array(150).fill(3)) }, 2027, NEW_YEAR + 400);
    expect(heat?.reached).toBeCloseTo(450, 9);
    expect(heat && seasonHeatInWords(heat, "us")).toMatch(
      /^Warmth to 30 May: 810 degree days above 50 °F since 1 January, usually [\d,]+: \d+ days? (early|late)\.$/,
    );
    const cold = seasonHeat({ farm: home, weather: recorded(new Array(150).fill(-1)) }, 2027, NEW_YEAR + 400);
    expect(cold?.reached).toBe(0);
  });

  test("[H10] nothing is said without a climate, without a recorded day of the year up to today, and in winter", () => {
    const weather = recorded(new Array(150).fill(3));
    expect(seasonHeat({ farm: farm(), weather }, 2027, NEW_YEAR + 149)).toBeNull();
    expect(seasonHeat({ farm: home, weather: null }, 2027, NEW_YEAR + 149)).toBeNull();
    expect(seasonHeat({ farm: home, weather }, 2028, NEW_YEAR + 500)).toBeNull();
    expect(seasonHeat({ farm: home, weather }, 2027, NEW_YEAR + 5)).toBeNull();
  });

  test("[H10] late in the year a cool autumn is not told as weeks late: nothing is said from the day on which a tenth of the usual year's warmth is to come", () => {
    const days = Array.from({ length: 365 }, (_, at) => usualOf(at));
    const ofYear = days.reduce((sum, warmth) => sum + warmth, 0);
    let sum = 0;
    const lastTold = days.findIndex((warmth) => {
      sum += warmth;
      return sum > 0.9 * ofYear;
    });
    const weather = recorded(new Array(365).fill(3));
    expect(seasonHeat({ farm: home, weather }, 2027, NEW_YEAR + lastTold - 1)).not.toBeNull();
    for (const at of [lastTold, lastTold + 30, 364])
      expect(seasonHeat({ farm: home, weather }, 2027, NEW_YEAR + at)).toBeNull();
  });

  test("[H10] with any days recorded or missing it is what adding up day after day and walking the usual year says", () => {
    const anyDays = fc.array(fc.option(fc.integer({ min: -8, max: 18 }), { freq: 5 }), {
      minLength: 120,
      maxLength: 200,
    });
    fc.assert(
      fc.property(anyDays, fc.integer({ min: 100, max: 320 }), (degrees, until) => {
        const weather = recorded(degrees);
        const heat = seasonHeat({ farm: home, weather }, 2027, NEW_YEAR + until);
        const lastIndex = degrees.reduce<number>((last, above, at) => (above !== null && at <= until ? at : last), -1);
        const sums = { reached: 0, usual: 0 };
        for (let at = 0; at <= lastIndex; at++) {
          const above = degrees[at];
          sums.usual += usualOf(at);
          sums.reached += above === null ? usualOf(at) : Math.max(0, above);
        }
        if (lastIndex < 0 || sums.usual < 50) {
          expect(heat).toBeNull();
          return;
        }
        let [walked, days] = [0, 0];
        while (walked + usualOf(days) < sums.reached) walked += usualOf(days++);
        const moment = days + (sums.reached - walked) / usualOf(days);
        expect(heat?.reached).toBeCloseTo(sums.reached, 6);
        expect(heat?.usual).toBeCloseTo(sums.usual, 6);
        expect(Math.abs((heat?.daysEarly ?? 99) - (moment - lastIndex - 1))).toBeLessThanOrEqual(0.5 + 1e-6);
        expect(heat?.missingDayCount).toBe(degrees.slice(0, lastIndex + 1).filter((above) => above === null).length);
        expect(recordedDays(weather as NonNullable<typeof weather>)).toHaveLength(
          degrees.filter((above) => above !== null).length,
        );
      }),
      { seed: 412, numRuns: 60 },
    );
  });
});

test("early, late and new days are told in words", () => {
  expect([earlyInWords(3), earlyInWords(-1), earlyInWords(0)]).toEqual(["3 days early", "1 day late", "as usual"]);
  expect(newDaysInWords(14, day("2027-06-09"))).toBe("14 new days, up to 9 Jun 2027");
  expect(newDaysInWords(0, null)).toBe("0 new days");
});
