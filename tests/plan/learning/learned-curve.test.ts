import { describe, expect, test } from "vitest";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDay } from "#lib/domain/day";
import { OWN } from "#lib/domain/sourced";
import { monthDayAt, NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import { type KnownPoint, knownPoint } from "#lib/plan/learning/known-point";
import { curveOfClock, curveOfMean } from "#lib/plan/learning/learned-curve";
import { recordedSeasons } from "#lib/plan/learning/recorded-seasons";
import { firstCutDay, warmthOf } from "#lib/plan/road/first-cut";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { lessonInWords } from "#lib/plan/words/lesson-words";
import { curve, farm, planting } from "../../small-farm";
import { walkedIndex } from "./invented-seasons";

const CLIMATE = CLIMATE_STATIONS[0];
const WEATHER = inventedWeather(CLIMATE, 2000, firstDayOf(2026), 6);
const YEARS = Array.from({ length: 20 }, (_, index) => 2003 + index);
const kept = curve({
  anchor: { kind: "day-of-year", firstCut: monthDayAt(NEW_YEAR_INDEX + 160) },
  note: "kept as it is",
});

/** First cuts that warmth above 5 °C from 10 February made in this weather. */
function seasonsByWarmth() {
  const empty = YEARS.map((year) => ({ year, firstCut: toDay(firstDayOf(year)) }));
  const { seasons } = recordedSeasons(WEATHER, empty, YEARS);
  return seasons.map((season) => ({
    ...season,
    firstCutIndex: Math.round(walkedIndex(season.meanC, NEW_YEAR_INDEX + 40, 5, 350)),
  }));
}

describe("a curve that learned from first cuts", () => {
  const point = knownPoint(seasonsByWarmth());

  test("[H8] holds the clock so that the plan tells each recorded year within two days of the clock itself", () => {
    const learned = curveOfClock(kept, point, CLIMATE);
    expect(learned).toMatchObject({ heatPlace: null, heatOrigin: OWN, timingOrigin: OWN, note: "kept as it is" });
    expect(learned?.stemsPerPlantByWeek).toEqual(kept.stemsPerPlantByWeek);
    for (const { year, meanC, firstDay } of seasonsByWarmth()) {
      const told =
        learned &&
        firstCutDay(learned, planting({ id: 1, seasonYear: year }), warmthOf(farm({ climate: CLIMATE }), WEATHER));
      const byClock = walkedIndex(
        meanC,
        NEW_YEAR_INDEX + (point.clock?.startDay ?? 0),
        point.clock?.baseC ?? 0,
        point.clock?.sumC ?? 0,
      );
      expect(Math.abs((told ?? 0) - firstDay - byClock)).toBeLessThan(2);
    }
  });

  test("[H8] or holds the mean day by the calendar, with its error as the spread", () => {
    const learned = curveOfMean({ ...kept, heatBaseC: 5, heatFrom: monthDayAt(NEW_YEAR_INDEX) }, point);
    expect(learned).toMatchObject({ heatBaseC: null, heatFrom: null, timingOrigin: OWN });
    expect(learned.anchor).toEqual({ kind: "day-of-year", firstCut: monthDayAt(point.meanIndex) });
    expect(learned.firstCutSpreadDays).toBeCloseTo(point.meanErrorDays, 1);
  });

  test("where no clock is proposed, or a usual year never reaches its sum, there is none to hold", () => {
    const none: KnownPoint = { ...point, clock: null, clockErrorDays: null };
    expect(curveOfClock(kept, none, CLIMATE)).toBeNull();
    expect(curveOfClock(kept, { ...point, clock: { startDay: 0, baseC: 5, sumC: 90_000 } }, CLIMATE)).toBeNull();
  });

  test("[H8] is said in the farm's degrees, answer first, and says so where nothing beats the mean day", () => {
    const given = { ...point, clock: { startDay: 20, baseC: 5, sumC: 300 }, clockErrorDays: 2.04, meanErrorDays: 6.5 };
    expect(lessonInWords({ ...given, meanIndex: NEW_YEAR_INDEX + 155 }, "us")).toBe(
      "Warmth above 41 °F, counted from 21 Jan to 540 degree days, tells these 20 first cuts within 2 days. Their mean day, 5 Jun, is off by 6.5 days.",
    );
    expect(
      lessonInWords({ ...given, clock: null, clockErrorDays: null, meanIndex: NEW_YEAR_INDEX + 155 }, "metric"),
    ).toBe("Nothing tells these 20 first cuts better than their mean day, 5 Jun: it is off by 6.5 days.");
  });
});
