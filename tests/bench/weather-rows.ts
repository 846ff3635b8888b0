import { openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { startFarm } from "#db/write/farm";
import { takeWeather } from "#db/write/weather";
import { DEMO_START } from "#demo/demo-sheets";
import { inventedWeather } from "#demo/invented-weather";
import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDay } from "#lib/domain/day";
import { recordedDays } from "#lib/domain/records/weather-day";
import type { Snapshot } from "#lib/domain/snapshot";
import { weatherNews } from "#lib/domain/weather-news";
import { grown } from "#lib/plan/road/grown";
import { replay } from "#lib/plan/road/replay";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { readWeather } from "#lib/sheets/weather-sheet";
import { monthDay } from "../small-farm";
import { type BenchRow, timed } from "./timing";

const CLIMATE = CLIMATE_STATIONS[0];
const SEASON = 2027;

/** Thirty years of daily weather from a file into the farm, and a season replayed through recorded years. */
export function weatherRows(): BenchRow[] {
  return [
    timed("30 years of weather: file read, compared, written and read back", 5, "2 s", broughtIn),
    ...[
      { name: "typical", size: TYPICAL, yearCount: 10 },
      { name: "large", size: LARGE, yearCount: 30 },
    ].map(({ name, size, yearCount }) => {
      const farm = byWarmth(seededFarm(1, size), yearCount);
      return timed(`season replayed through ${yearCount} years, ${name}`, 9, yearCount === 10 ? "1 s" : "", () =>
        replayed(farm),
      );
    }),
  ];
}

const THIRTY = inventedWeather(CLIMATE, SEASON - 30, firstDayOf(SEASON), 1);
const FILE = [
  "STATION,DATE,PRCP,TMAX,TMIN",
  ...Array.from(
    THIRTY.highC,
    (high, index) =>
      `X1,${toDay(THIRTY.firstDay + index)},0,${Math.round(high * 10)},${Math.round(THIRTY.lowC[index] * 10)}`,
  ),
].join("\n");

function broughtIn(): void {
  const database = openFarm(":memory:");
  startFarm(database, DEMO_START);
  const { weather } = readWeather(FILE, "tenths");
  const { newDays } = weatherNews(null, weather ? recordedDays(weather) : []);
  takeWeather(database, newDays);
  loadSnapshot(database);
  database.$client.close();
}

/** The farm in a climate, with a clock on every curve and so many recorded years. */
export const byWarmth = (farm: Snapshot, yearCount: number): Snapshot => ({
  ...farm,
  farm: { ...farm.farm, climate: CLIMATE },
  curves: farm.curves.map((curve, index) => ({
    ...curve,
    heatBaseC: 2 + (index % 20) / 2,
    heatFrom: monthDay(curve.anchor.kind === "day-of-year" ? "01-01" : "05-20"),
  })),
  weather: inventedWeather(CLIMATE, SEASON - yearCount, firstDayOf(SEASON), 2),
});

/** A record that was never replayed before: what is kept for another object is not used. */
function replayed(farm: Snapshot): void {
  const found = replay({ farm: farm.farm, weather: farm.weather && { ...farm.weather } }, SEASON);
  for (const row of grown(farm, SEASON)) found?.daysLateOf(row);
}
