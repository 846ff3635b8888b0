import { expect, test } from "vitest";
import { promiseInWords, promiseTitle } from "#lib/plan/words/promise-words";

test("a change of a promise is told by its stems: made, raised, lowered, set out anew", () => {
  expect(promiseTitle("Ivy", 0, 120)).toBe("promised Ivy 120 stems");
  expect(promiseTitle("Ivy", 80, 120)).toBe("raised what Ivy was promised from 80 stems to 120");
  expect(promiseTitle("Ivy", 120, 108)).toBe("lowered what Ivy was promised from 120 stems to 108");
  expect(promiseTitle("Ivy", 1, 1)).toBe("set out anew the 1 stem that Ivy was promised");
});

test.each([
  [{ promisedStems: 0, coveredStems: 0 }, "Nothing is promised, and the plan covers nothing yet."],
  [{ promisedStems: 0, coveredStems: 120 }, "Nothing is promised yet. The plan covers 120 of 140 stems."],
  [{ promisedStems: 120, coveredStems: 120 }, "120 of 140 stems are promised: all that the plan covers."],
  [{ promisedStems: 100, coveredStems: 120, moreStems: 20 }, "100 of 140 stems are promised; the plan covers 20 more."],
  [
    { promisedStems: 120, coveredStems: 108, brokenStems: 12 },
    "120 of 140 stems are promised, and the plan has 12 of them no longer.",
  ],
  [
    { promisedStems: 120, coveredStems: 112, brokenStems: 12, moreStems: 4 },
    "120 of 140 stems are promised, and the plan has 12 of them no longer; of other stems it has 4 more.",
  ],
])("a promise %o is told in a sentence", (given, words) => {
  expect(promiseInWords({ needs: [], needStems: 140, brokenStems: 0, moreStems: 0, ...given })).toBe(words);
});
