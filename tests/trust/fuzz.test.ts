import { expect, test } from "vitest";
import { fuzzReaders } from "./fuzz";

test("no odd input makes a reader throw: it is read, or refused in words", () => {
  expect(fuzzReaders(2_100, 1).faults).toEqual([]);
});
