import { expect, test } from "vitest";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDayNumber } from "#lib/domain/day";
import { type Grown, grown } from "#lib/plan/road/grown";
import type { Replay } from "#lib/plan/road/replay";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { notSampledInWords, replayInWords, sampledInWords, tooFewYearsInWords } from "#lib/plan/words/replay-words";
import { day, farm, snapshot } from "../../small-farm";

const row: Grown = { ...grown(snapshot(), 2027)[0], firstCut: toDayNumber(day("2027-06-05")) };
const replayed = (daysLate: readonly number[] | null): Replay => ({
  years: [],
  daysLateOf: () => daysLate && Int32Array.from(daysLate),
  frostDaysLate: [],
});

test("[Y2] eleven years from five days early to five late: one in ten lies before 1 June, one after 9 June", () => {
  expect(replayInWords(row, replayed([-5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5]))).toBe(
    "Replayed through 11 recorded years, the first cut falls between 1 Jun and 9 Jun in eight of ten, by the weather alone.",
  );
});

test("a season that is recorded leaves one day, and a planting by the calendar says nothing", () => {
  expect(replayInWords(row, replayed(new Array(10).fill(0)))).toContain(
    "10 recorded years agree on 5 Jun; how far the clock itself is off",
  );
  expect(replayInWords(row, replayed(null))).toBeNull();
  expect(replayInWords(row, null)).toBeNull();
});

test("[Y3] sampled seasons say whether they are recorded years", () => {
  expect(sampledInWords(null)).toContain("are sampled from their spreads.");
  const two = { ...replayed(null), years: [2020, 2021] };
  expect(sampledInWords({ ...two, frostDaysLate: [null, null] })).toContain(
    "one of your 2 recorded years, the same for every crop that follows warmth; yields, winters and frost vary",
  );
  expect(sampledInWords({ ...two, frostDaysLate: [3, null] })).toContain(
    "warmth, and its first frost; yields and winters vary",
  );
});

test("[Y1] fewer than ten whole years say that the spread is assumed; a farm without weather or climate, or with enough of it, says nothing", () => {
  const climate = CLIMATE_STATIONS[0];
  const years = (count: number) => inventedWeather(climate, 2027 - count, firstDayOf(2027), 3);
  const words = (count: number) => tooFewYearsInWords({ farm: farm({ climate }), weather: years(count) });
  expect(words(6)).toBe(
    "That is assumed: 6 years of your weather are whole, and from 10 on they say how early or late it comes.",
  );
  expect(words(1)).toContain("1 year of your weather is whole");
  expect(words(10)).toBeNull();
  expect(tooFewYearsInWords({ farm: farm(), weather: years(6) })).toBeNull();
  expect(tooFewYearsInWords({ farm: farm({ climate }), weather: null })).toBeNull();
  expect(sampledInWords(null, words(6))).toContain("from their spreads. That is assumed: 6 years");
});

test("that nothing cut so far is in a sampled season is said once something of it is recorded", () => {
  const look = { id: 1, bedId: 1, varietyId: 1, lookedOn: day("2027-06-02"), sign: "late" as const, daysToCut: null };
  expect(notSampledInWords({ cuts: [], budLooks: [] }, 2027)).toBe("");
  expect(notSampledInWords({ cuts: [], budLooks: [look] }, 2028)).toBe("");
  expect(notSampledInWords({ cuts: [], budLooks: [look] }, 2027)).toContain("what was cut so far is in none of them");
});
