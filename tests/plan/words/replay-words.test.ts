import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { type Grown, grown } from "#lib/plan/road/grown";
import type { Replay } from "#lib/plan/road/replay";
import { replayInWords, sampledInWords } from "#lib/plan/words/replay-words";
import { day, snapshot } from "../../small-farm";

const row: Grown = { ...grown(snapshot(), 2027)[0], firstCut: toDayNumber(day("2027-06-05")) };
const replayed = (daysLate: readonly number[] | null): Replay => ({
  years: [],
  daysLateOf: () => daysLate && Int32Array.from(daysLate),
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
  expect(sampledInWords({ ...replayed(null), years: [2020, 2021] })).toContain("one of your 2 recorded years");
});
