import { describe, expect, test } from "vitest";
import { latestChanges, recordChange, undoChange } from "#db/journal/journal";
import { loadSnapshot } from "#db/read/read";
import { RowMemory } from "#db/read/row-memory";
import { importRecords } from "#db/write/records";
import { removeWeather, takeWeather } from "#db/write/weather";
import { addDays, type Day } from "#lib/domain/day";
import { recordedDays, type WeatherDay } from "#lib/domain/records/weather-day";
import { day } from "../small-farm";
import { changeOf, done, kept, withFarm } from "./kept-farm";

/** Thirty years of days, each a tenth warmer than the one before until it starts again. */
function daysFrom(first: Day, dayCount: number): WeatherDay[] {
  const days: WeatherDay[] = [];
  for (let date = first, at = 0; at < dayCount; at++, date = addDays(date, 1))
    days.push({ date, highC: (100 + (at % 250)) / 10, lowC: (at % 90) / 10 });
  return days;
}

const weatherOf = (database: Parameters<typeof kept>[0]) => {
  const { weather } = kept(database);
  return weather ? recordedDays(weather) : [];
};

describe("weather in the farm's file", () => {
  test("thirty years come back day for day, are one change of thirty rows, and one undo takes them back", () => {
    withFarm((database) => {
      const days = daysFrom(day("1995-01-01"), 10_958);
      const changeId = changeOf(takeWeather(database, days));
      expect(weatherOf(database)).toEqual(days);
      const rows = database.$client
        .prepare<[number], { count: number; bytes: number }>(
          "SELECT count(*) AS count, sum(length(after_json)) AS bytes FROM change_row WHERE change_id = ?",
        )
        .get(changeId);
      expect(rows?.count).toBe(30);
      expect(rows?.bytes).toBeLessThan(200_000);
      expect(latestChanges(database, 1)[0].title).toBe("took 10958 days of weather, 1 Jan 1995 to 31 Dec 2024");
      expect(undoChange(database, changeId).ok).toBe(true);
      expect(kept(database).weather).toBeNull();
    });
  });

  test("a few more days touch their own year alone, replace days of the same date and are undone alone", () => {
    withFarm((database) => {
      const days = daysFrom(day("2020-01-01"), 731);
      done(takeWeather(database, days));
      const more = [
        { date: day("2021-12-31"), highC: 30, lowC: 20 },
        { date: day("2022-01-01"), highC: 31, lowC: 21 },
      ];
      const changeId = changeOf(takeWeather(database, more));
      expect(weatherOf(database)).toEqual([...days.slice(0, -1), ...more]);
      expect(undoChange(database, changeId).ok).toBe(true);
      expect(weatherOf(database)).toEqual(days);
    });
  });

  test("taking what stands already changes nothing, and removing all can be undone", () => {
    withFarm((database) => {
      const days = daysFrom(day("2021-03-01"), 40);
      done(takeWeather(database, days));
      expect(done(takeWeather(database, days)).changeId).toBeNull();
      const removed = changeOf(removeWeather(database));
      expect(kept(database).weather).toBeNull();
      undoChange(database, removed);
      expect(weatherOf(database)).toEqual(days);
    });
  });

  test("sheets bring days in as one change with the rest, counted in its title", () => {
    withFarm((database) => {
      const days = daysFrom(day("2021-03-01"), 3);
      expect(done(importRecords(database, { weather: days })).title).toBe("imported 3 days of weather");
      expect(weatherOf(database)).toEqual(days);
    });
  });

  test("read again after a write of something else, the days are the same object; after a day more, another", () => {
    withFarm((database) => {
      const memory = new RowMemory();
      const read = () => {
        const snapshot = loadSnapshot(database, memory);
        return snapshot.ok ? snapshot.parsed : null;
      };
      done(takeWeather(database, daysFrom(day("2021-03-01"), 40)));
      const first = read();
      recordChange(database, "measured a bed", () =>
        database.$client.exec("UPDATE bed SET length_metres = 9 WHERE id = 1"),
      );
      const second = read();
      expect(second).not.toBe(first);
      expect(second?.weather).toBe(first?.weather);
      done(takeWeather(database, daysFrom(day("2021-03-01"), 41)));
      expect(read()?.weather?.highC).toHaveLength(41);
    });
  });
});
