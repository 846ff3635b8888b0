import { describe, expect, test } from "vitest";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { addDays, dayInYear, monthDayOf, toDay, toDayNumber } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import { normalQuantile } from "#lib/maths/normal";
import { sharesAt } from "#lib/maths/philox";
import { frostDatesOf, frostDayAt, seasonSampler } from "#lib/plan/chance/sample-season";
import { DEFAULT_SPREADS } from "#lib/plan/chance/sample-spreads";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { forecast } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import { match } from "#lib/plan/road/match";
import { needs } from "#lib/plan/road/needs";
import { replay } from "#lib/plan/road/replay";
import { supplyOf } from "#lib/plan/road/supply";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { bed, booking, curve, day, farm, focal, monthDay, planting, snapshot } from "../../small-farm";
import { sampleSeasons } from "./sampled";

const CLIMATE = CLIMATE_STATIONS[0];
const SEED = 77;
const steady = { firstCutSpreadDays: 0, yieldSpread: 0, heatBaseC: 4.4, heatFrom: monthDay("01-01") };
const onDay = (firstCut: string) => ({ kind: "day-of-year", firstCut: monthDay(firstCut) }) as const;

/** A planting that blooms in May and one in June, both told by warmth, and one by the calendar; ten recorded years and more. */
const recorded = (change: Partial<BloomCurve> = {}): Snapshot =>
  snapshot({
    farm: farm({ climate: CLIMATE }),
    beds: [1, 2, 3].map((id) => bed({ id })),
    curves: [
      curve({ id: 1, treatment: "field", anchor: onDay("05-10"), ...steady, ...change }),
      curve({ id: 2, treatment: "kept-in-ground", anchor: onDay("06-08"), ...steady, ...change }),
      curve({ id: 3, treatment: "tunnel", anchor: onDay("05-20"), firstCutSpreadDays: 8, yieldSpread: 0 }),
    ],
    plantings: (["field", "kept-in-ground", "tunnel"] as const).map((treatment, index) =>
      planting({ id: index + 1, bedId: index + 1, treatment, plantedOn: day("2026-05-01"), winterSurvivalShare: 1 }),
    ),
    bookings: ["2027-05-15", "2027-05-29", "2027-06-12"].map((eventOn, index) =>
      booking({ id: index + 1, client: `C${index}`, eventOn: day(eventOn), stemLines: focal(60) }),
    ),
    weather: inventedWeather(CLIMATE, 2009, firstDayOf(2027), 5),
  });

const lates = (farmNow: Snapshot) => {
  const replayed = replay(farmNow, 2027);
  return grown(farmNow, 2027).map((row) => replayed?.daysLateOf(row) ?? null);
};
const yearOfSeason = (season: number) => sharesAt([SEED, 0], [season, 0, 0, 0]).a;

describe("sampled seasons of a farm with recorded years", () => {
  test("[Y3] every planting told by warmth is as late as in one and the same recorded year, the one of the season's share", () => {
    const farmNow = recorded();
    const [may, june] = lates(farmNow);
    const season = seasonSampler(farmNow, 2027, SEED, DEFAULT_SPREADS);
    const met = new Set<number>();
    for (let index = 0; index < 400; index++) {
      const year = Math.floor(yearOfSeason(index) * 18);
      met.add(year);
      const { plantings } = season(index);
      expect(plantings.slice(0, 2).map(({ shiftDays }) => shiftDays)).toEqual([may?.[year], june?.[year]]);
    }
    expect(met.size).toBe(18);
  });

  test("[Y3] the planting's own half of its spread comes on top, rounded by itself; the calendar's planting keeps its own rule", () => {
    const farmNow = recorded({ firstCutSpreadDays: 6 });
    const [may] = lates(farmNow);
    const season = seasonSampler(farmNow, 2027, SEED, DEFAULT_SPREADS);
    for (let index = 0; index < 200; index++) {
      const share = yearOfSeason(index);
      const own = (id: number) => normalQuantile(sharesAt([SEED, 0], [index, id, 2, 0]).a);
      const { plantings } = season(index);
      const ownDays = Math.round(6 * Math.SQRT1_2 * own(1));
      expect(plantings[0].shiftDays).toBe((may?.[Math.floor(share * 18)] ?? 0) + ownDays);
      const score = Math.SQRT1_2 * (normalQuantile(share) + own(3));
      expect(plantings[2].shiftDays + 0).toBe(Math.round(8 * score) + 0);
    }
  });

  test("[Y4] the frost is as far from the farm's median as the recorded year's was from theirs, found again day by day", () => {
    const farmNow = recorded();
    const { weather } = farmNow;
    const years = replay(farmNow, 2027)?.years ?? [];
    const places = years.map((year) => {
      for (let on = day(`${year}-07-15`); on <= `${year}-12-31`; on = addDays(on, 1))
        if ((weather?.lowC[toDayNumber(on) - weather.firstDay] ?? 99) <= 0) return toDayNumber(on) - firstDayOf(year);
      return Number.NaN;
    });
    const sorted = [...places].sort((a, b) => a - b);
    const median = (sorted[8] + sorted[9]) / 2;
    const season = seasonSampler(farmNow, 2027, SEED, DEFAULT_SPREADS);
    const ownMedian = toDayNumber(dayInYear(farmNow.farm.frost.firstAutumnP50, 2027));
    for (let index = 0; index < 200; index++) {
      const place = places[Math.floor(yearOfSeason(index) * 18)];
      expect(season(index).frostDay).toBe(ownMedian + Math.round(place - median));
    }
    expect(new Set(places).size).toBeGreaterThan(5);
  });

  test("[Y4] a year whose autumn was not recorded leaves the frost to the farm's dates", () => {
    const whole = recorded();
    const { weather } = whole;
    if (weather === null) throw new RangeError("no weather");
    const lowC = weather.lowC.map((low, index) =>
      monthDayOf(toDay(weather.firstDay + index)).startsWith("08") ? Number.NaN : low,
    );
    const farmNow = { ...whole, weather: { ...weather, lowC, highC: lowC.map((low) => low + 10) } };
    expect(replay(farmNow, 2027)?.frostDaysLate.every((late) => late === null)).toBe(true);
    const season = seasonSampler(farmNow, 2027, SEED, DEFAULT_SPREADS);
    const dates = frostDatesOf(farmNow.farm, 2027);
    for (let index = 0; index < 50; index++)
      expect(season(index).frostDay).toBe(frostDayAt(dates, sharesAt([SEED, 0], [index, 0, 0, 0]).d));
  });

  test("[R5] over 4,000 seasons a first cut told by warmth has the mean and the variance of its recorded years, and a late spring is late for the calendar's planting too", () => {
    const farmNow = recorded();
    const [, june] = lates(farmNow);
    const season = seasonSampler(farmNow, 2027, SEED, DEFAULT_SPREADS);
    const drawn = Array.from({ length: 4000 }, (_, index) => season(index).plantings.map(({ shiftDays }) => shiftDays));
    const meanOf = (days: readonly number[]) => days.reduce((sum, one) => sum + one, 0) / days.length;
    const varianceOf = (days: readonly number[]) => meanOf(days.map((one) => (one - meanOf(days)) ** 2));
    const recordedDays = [...(june ?? [])];
    const ofJune = drawn.map(([, days]) => days);
    const variance = varianceOf(recordedDays);
    expect(Math.abs(meanOf(ofJune) - meanOf(recordedDays))).toBeLessThan(4 * Math.sqrt(variance / 4000));
    expect(Math.abs(varianceOf(ofJune) / variance - 1)).toBeLessThan(0.15);
    const calendar = drawn.map(([, , days]) => days);
    const together = meanOf(ofJune.map((days, index) => days * calendar[index]));
    expect(together / Math.sqrt(variance * varianceOf(calendar))).toBeGreaterThan(0.3);
  });

  test("[R4] where the recorded year alone is left to chance, a sampled season is short of what the match of that year's forecast is", () => {
    const farmNow = { ...recorded(), plantings: recorded().plantings.slice(0, 2) };
    const byPlanting = lates(farmNow);
    const sampled = sampleSeasons(farmNow, 2027, SEED, 0, 40);
    const asked = needs(farmNow, 2027);
    const shorts = new Set<string>();
    for (let index = 0; index < 40; index++) {
      const year = Math.floor(yearOfSeason(index) * 18);
      const { plantings } = forecast(farmNow, 2027, undefined, {
        lateness: 0,
        heaviness: 0,
        daysLateOf: ({ planting: { id } }) => byPlanting[id - 1]?.[year] ?? null,
      });
      const matched = match(farmNow.farm, supplyOf(farmNow, plantings, 2027), asked, buyInFinder(farmNow));
      const short = sampled.shortStems.slice(index * asked.length, (index + 1) * asked.length);
      expect([...short]).toEqual([...matched.shortStems]);
      shorts.add([...short].join());
    }
    expect(shorts.size).toBeGreaterThan(4);
  });
});
