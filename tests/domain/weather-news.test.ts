import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { recordedDays, weatherOfDays } from "#lib/domain/records/weather-day";
import { weatherNews } from "#lib/domain/weather-news";
import { day } from "../small-farm";

const first = toDayNumber(day("2026-05-01"));
const kept = weatherOfDays([
  { day: first, highC: 20, lowC: 9.1 },
  { day: first + 1, highC: 21, lowC: 9 },
]);

test("a file read again brings nothing: a day in whole °F says what its tenths of a °C say", () => {
  const read = [
    // 68 °F is 20 °C; 48.4 °F is 9.1111 °C, kept as 9.1.
    { date: day("2026-05-01"), highC: 20, lowC: 9.111 },
    { date: day("2026-05-02"), highC: 21, lowC: 9 },
  ];
  expect(weatherNews(kept, read)).toEqual({ newDays: [], changedDays: [], sameDayCount: 2 });
});

test("new days and changed days are told apart, each changed one with what stands and what the file says", () => {
  const read = [
    { date: day("2026-05-02"), highC: 23, lowC: 9 },
    { date: day("2026-05-04"), highC: 18, lowC: 7 },
  ];
  expect(weatherNews(kept, read)).toEqual({
    newDays: [read[1]],
    changedDays: [{ kept: { date: "2026-05-02", highC: 21, lowC: 9 }, read: read[0] }],
    sameDayCount: 0,
  });
});

test("where nothing is kept, every day is new", () => {
  const read = kept ? recordedDays(kept) : [];
  expect(weatherNews(null, read).newDays).toEqual(read);
});
