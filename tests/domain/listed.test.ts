import { expect, test } from "vitest";
import { allOf, anyOf } from "#lib/domain/listed";

test.each([
  [[], ""],
  [["D1"], "D1"],
  [["D1", "D4"], "D1 and D4"],
  [["D1", "D4", "D7"], "D1, D4 and D7"],
])("all of %j is said “%s”", (words, said) => {
  expect(allOf(words)).toBe(said);
});

test("any of several is said with “or”, without a comma before it", () => {
  expect(anyOf(["blush", "cream", "white"])).toBe("blush, cream or white");
  expect(anyOf(["blush"])).toBe("blush");
});
