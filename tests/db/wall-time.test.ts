import { expect, test } from "vitest";
import { wallTime } from "#db/journal/wall-time";

test.each([
  ["2026-11-25 01:30:00", "America/New_York", "24 Nov 2026, 20:30"],
  ["2026-11-25T01:30:00Z", "Pacific/Auckland", "25 Nov 2026, 14:30"],
  ["2027-07-01 23:59:59", "UTC", "1 Jul 2027, 23:59"],
])("what was written at %s UTC stands in the history of a farm in %s as %s", (utc, zone, words) => {
  expect(wallTime(utc, zone)).toBe(words);
});
