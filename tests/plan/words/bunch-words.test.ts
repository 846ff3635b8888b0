import { expect, test } from "vitest";
import { bunchesInWords } from "#lib/plan/words/bunch-words";

test.each([
  [23, 10, "2 × 10 + 3"],
  [30, 10, "3 × 10"],
  [1, 10, "1 loose"],
  [4, 5, "4 loose"],
  [5, 5, "1 × 5"],
])("%i stems at %i a bunch are %s", (stems, bunchStems, words) => {
  expect(bunchesInWords(stems, bunchStems)).toBe(words);
});
