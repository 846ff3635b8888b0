import { describe, expect, test } from "vitest";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { addDays, type Day, dayInYear, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { DailyWeather } from "#lib/domain/weather";
import { quantile } from "#lib/maths/quantile";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { grown } from "#lib/plan/road/grown";
import { daysLateAt, type Replay, replay } from "#lib/plan/road/replay";
import { seasonBand } from "#lib/plan/road/season-band";
import { usualHeat } from "#lib/plan/road/usual-heat";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";
import { provenPlan } from "../../proven-plan";
import { booking, curve, day, farm, focal, monthDay, planting, snapshot } from "../../small-farm";

const CLIMATE = CLIMATE_STATIONS[0];
const annual = curve({
  id: 1,
  anchor: { kind: "days-after-planting", days: 60 },
  heatBaseC: 8,
  heatFrom: monthDay("05-20"),
  heatPlace: CLIMATE.station,
  firstCutSpreadDays: 9,
});
const perennial = curve({
  id: 2,
  treatment: "kept-in-ground",
  anchor: { kind: "day-of-year", firstCut: monthDay("06-02") },
  heatBaseC: 4.4,
  heatFrom: monthDay("01-01"),
});
const byCalendar = curve({ id: 3, treatment: "tunnel", firstCutSpreadDays: 5 });

/** Three plantings of 2027: by heat from planting, by heat from New Year, by the calendar. */
const grownIn = (weather: DailyWeather | null, given: Partial<Snapshot> = {}): Snapshot =>
  snapshot({
    farm: farm({ climate: CLIMATE }),
    curves: [annual, perennial, byCalendar],
    plantings: [
      planting({ id: 1, treatment: annual.treatment, plantedOn: day("2027-05-10") }),
      planting({ id: 2, treatment: "kept-in-ground", plantedOn: day("2025-05-10") }),
      planting({ id: 3, treatment: "tunnel", plantedOn: day("2027-03-10") }),
    ],
    weather,
    ...given,
  });
const replayOf = (farmNow: Snapshot): Replay => {
  const found = replay(farmNow, 2027);
  if (found === null) throw new RangeError("this farm cannot be replayed");
  return found;
};
const lateOf = (farmNow: Snapshot, plantingId: number): Int32Array | null => {
  const rows = grown(farmNow, 2027).map((row) => ({ id: row.planting.id, row }));
  return replayOf(farmNow).daysLateOf(new ById("row", rows).get(plantingId).row);
};
const TO_2026 = inventedWeather(CLIMATE, 2001, firstDayOf(2027), 21);

/** The slow second method: for each recorded year, day after day from its start, until the heat of the known point is there. */
function byAddition(of: BloomCurve, plantedOn: Day, weather: DailyWeather, years: readonly number[]): number[] {
  const base = of.heatBaseC ?? 0;
  const usual = (at: Day) => {
    const { meanC } = usualYear(CLIMATE, yearOf(at));
    const place = toDayNumber(at) - firstDayOf(yearOf(at));
    return usualHeat(meanC[place], (place + 0.5) / meanC.length, { baseC: base, ceilingC: null, limitC: null });
  };
  const recorded = (at: Day): number => {
    const index = toDayNumber(at) - weather.firstDay;
    return index >= 0 && index < weather.highC.length ? (weather.highC[index] + weather.lowC[index]) / 2 : Number.NaN;
  };
  const isAnnual = of.anchor.kind === "days-after-planting";
  const knownStart = dayInYear(of.heatFrom ?? monthDay("01-01"), 2026);
  const knownCut = of.anchor.kind === "day-of-year" ? dayInYear(of.anchor.firstCut, 2026) : addDays(knownStart, 60);
  let wanted = 0;
  for (let at = knownStart; at < knownCut; at = addDays(at, 1)) wanted += usual(at);
  const cuts = years.map((year) => {
    let had = 0;
    for (let at = isAnnual ? plantedOn : day("2027-01-01"); ; at = addDays(at, 1)) {
      const lent = addDays(
        dayInYear(monthDay("01-01"), year + yearOf(at) - 2027),
        toDayNumber(at) - firstDayOf(yearOf(at)),
      );
      const meanC = Number.isNaN(recorded(at)) ? recorded(lent) : recorded(at);
      const heat = Number.isNaN(meanC) ? usual(at) : Math.max(0, meanC - base);
      if (had + heat >= wanted - 1e-6) return Math.floor(toDayNumber(at) + (wanted - had) / heat + 0.5 + 1e-6);
      had += heat;
    }
  });
  const mean = cuts.reduce((sum, cut) => sum + cut, 0) / cuts.length;
  return cuts.map((cut) => Math.round(cut - mean) + 0);
}

describe("a season replayed through recorded years", () => {
  test("[Y1] first cuts are those of adding day after day in each year's weather, on 12 records that end anywhere", () => {
    const random = seededRandom(4);
    for (let run = 0; run < 12; run++) {
      const end = firstDayOf(2027) + (run % 2 ? wholeBetween(random, 0, 190) : 0);
      const weather = inventedWeather(CLIMATE, 2013, end, run);
      const farmNow = grownIn(weather);
      const { years } = replayOf(farmNow);
      expect(years).toHaveLength(14);
      expect([...(lateOf(farmNow, 1) ?? [])]).toEqual(byAddition(annual, day("2027-05-10"), weather, years));
      expect([...(lateOf(farmNow, 2) ?? [])]).toEqual(byAddition(perennial, day("2025-05-10"), weather, years));
    }
  });

  test("[Y1] of one curve and one day, what is sown in place is replayed by its own heat, and what is set out by its own", () => {
    const slower = { ...annual, sowingDays: 25 };
    const [setOut, sownThere] = [false, true].map((sown, index) =>
      planting({ id: index + 1, treatment: annual.treatment, plantedOn: day("2027-05-10"), sown }),
    );
    const together = grownIn(TO_2026, { curves: [slower], plantings: [setOut, sownThere] });
    const alone = grownIn({ ...TO_2026 }, { curves: [{ ...slower }], plantings: [sownThere] });
    lateOf(together, 1);
    expect(lateOf(together, 2)).toEqual(lateOf(alone, 2));
    expect(lateOf(together, 2)).not.toEqual(lateOf(together, 1));
  });

  test("[Y1] without a climate, without a clock, or with nine whole years there is nothing to replay", () => {
    expect(replay(grownIn(TO_2026, { farm: farm() }), 2027)).toBeNull();
    expect(lateOf(grownIn(TO_2026), 3)).toBeNull();
    expect(replay(grownIn(inventedWeather(CLIMATE, 2018, firstDayOf(2027), 1)), 2027)).toBeNull();
    expect(replay(grownIn(inventedWeather(CLIMATE, 2017, firstDayOf(2027), 1)), 2027)?.years).toHaveLength(10);
    const gap = inventedWeather(CLIMATE, 2017, firstDayOf(2027), 1);
    gap.highC.fill(Number.NaN, 100, 132);
    gap.lowC.fill(Number.NaN, 100, 132);
    expect(replay(grownIn(gap), 2027)).toBeNull();
  });

  test("[Y1] the days late of a planting have no mean, and years stand from the warmest spring to the coldest", () => {
    const late = lateOf(grownIn(TO_2026), 2) ?? new Int32Array(0);
    expect(Math.abs(late.reduce((sum, days) => sum + days, 0) / late.length)).toBeLessThanOrEqual(0.5);
    const firstHalf = late.slice(0, 13).reduce((sum, days) => sum + days, 0);
    const secondHalf = late.slice(13).reduce((sum, days) => sum + days, 0);
    expect(secondHalf - firstHalf).toBeGreaterThan(26);
  });

  test("[Y1] a spread closes as the season is recorded: ten weeks before the cut it is most of what it was at New Year, three weeks before less than half, at the cut nothing", () => {
    const spread = (weeksBefore: number) => {
      let variance = 0;
      for (let seed = 1; seed <= 12; seed++) {
        const cut = grown(grownIn(null), 2027)[1].firstCut ?? 0;
        const weather = inventedWeather(CLIMATE, 2005, cut - 7 * weeksBefore, seed);
        const late = lateOf(grownIn(weather), 2) ?? new Int32Array(0);
        variance += late.reduce((sum, days) => sum + days * days, 0) / late.length / 12;
      }
      return Math.sqrt(variance);
    };
    const [atNewYear, ten, six, three, none] = [21, 10, 6, 3, -3].map(spread);
    expect(ten).toBeGreaterThan(0.7 * atNewYear);
    expect(six).toBeLessThan(ten);
    expect(three).toBeLessThan(0.5 * ten);
    expect(none).toBe(0);
  });
});

describe("recorded days in a plan", () => {
  test("[F9] a spring ten degrees warmer than the climate brings the first cut forward, and a plan made from the one before is the plan afresh [L3]", () => {
    const usual = grownIn(null, { bookings: [booking({ id: 1, stemLines: focal(90) })] });
    const warm = inventedWeather(CLIMATE, 2027, firstDayOf(2027) + 130, 2);
    for (let index = 0; index < warm.highC.length; index++) {
      warm.highC[index] = usualYear(CLIMATE, 2027).highC[index] + 10;
      warm.lowC[index] = usualYear(CLIMATE, 2027).lowC[index] + 10;
    }
    const before = provenPlan(usual, 2027);
    const after = provenPlan({ ...usual, weather: warm }, 2027, undefined, before);
    const [, was] = before.forecast.plantings;
    const [, is] = after.forecast.plantings;
    expect((was.firstCut ?? 0) - (is.firstCut ?? 0)).toBeGreaterThan(20);
    expect(toDay(was.firstCut ?? 0)).toBe("2027-06-02");
    const afresh = provenPlan({ ...usual, weather: warm }, 2027);
    expect(after.forecast).toEqual(afresh.forecast);
    expect(after.match.shortStems).toEqual(afresh.match.shortStems);
    expect(after.forecast.plantings[2]).toBe(before.forecast.plantings[2]);
  });
});

describe("the band of a week by replayed years", () => {
  test("[Y2] it is the reach of years that are early and late by the 10 and 90 % quantiles of the days late", () => {
    const late = lateOf(grownIn(TO_2026), 2) ?? new Int32Array(0);
    const sorted = [...late].sort((a, b) => a - b);
    expect(daysLateAt(late, 0.1)).toBe(Math.round(quantile(sorted, 0.1)));
    const steady = {
      curves: [{ ...perennial, yieldSpread: 0, stemsPerPlantByWeek: [1, 2, 3, 1] }],
      plantings: [
        planting({ id: 2, treatment: "kept-in-ground", plantedOn: day("2025-05-10"), winterSurvivalShare: 1 }),
      ],
      bookings: ["2027-06-05", "2027-06-19"].map((eventOn, index) =>
        booking({ id: index + 1, client: `C${index}`, eventOn: day(eventOn), stemLines: focal(10) }),
      ),
      farm: farm({ climate: CLIMATE, frost: { ...farm().frost, firstAutumnP10: farm().frost.firstAutumnP50 } }),
    };
    const given = provenPlan(grownIn(TO_2026, steady), 2027);
    const cut = given.forecast.plantings[0].firstCut ?? 0;
    const moved = [0.1, 0.9].map((share) => {
      const onDay = toDay(cut + daysLateAt(late, share)).slice(5);
      const fixed = { ...steady.curves[0], heatBaseC: null, heatFrom: null };
      const anchor = { kind: "day-of-year", firstCut: monthDay(onDay) } as const;
      return provenPlan(grownIn(null, { ...steady, curves: [{ ...fixed, anchor }] }), 2027);
    });
    const reachOn = (one: typeof given, monday: string) =>
      one.weeks.find((week) => week.monday === monday)?.roles[0].reachableStems ?? 0;
    const bands = seasonBand(given);
    given.weeks.forEach(({ monday, roles }, week) => {
      const reaches = [roles[0].reachableStems, ...moved.map((one) => reachOn(one, monday))];
      expect(bands[week][0]).toEqual({ lowStems: Math.min(...reaches), highStems: Math.max(...reaches) });
    });
    expect(bands.some(([{ lowStems, highStems }]) => highStems - lowStems > 20)).toBe(true);
  });
});
