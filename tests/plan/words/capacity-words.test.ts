import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { strainInWords } from "#lib/plan/words/capacity-words";
import { day } from "../../small-farm";

test("a day or a week that takes too much says how much, and how much there is", () => {
  const friday = { day: toDayNumber(day("2027-06-11")), has: 6 };
  expect(strainInWords({ kind: "cutting", takes: 9, ...friday })).toBe(
    "Fri 11 Jun needs 9 hours of cutting; you have 6.",
  );
  expect(strainInWords({ kind: "cutting", takes: 6.001, ...friday })).toBe(
    "Fri 11 Jun needs 6.1 hours of cutting; you have 6.",
  );
  expect(strainInWords({ kind: "cooler", takes: 22, ...friday })).toBe(
    "The night of Fri 11 Jun needs 22 bucket places in the cooler; you have 6.",
  );
  const monday = toDayNumber(day("2027-06-07"));
  expect(strainInWords({ kind: "bench", day: monday, takes: 31.25, has: 24.5 })).toBe(
    "The week of Mon 7 Jun needs 31.3 hours at the bench; you have 24.5.",
  );
});
