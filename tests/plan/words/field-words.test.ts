import { expect, test } from "vitest";
import { countersInWords, overfullInWords, saidInWords, unsentInWords } from "#lib/plan/words/field-words";

test("who counted is named once each, with the stems of all their counts; who is not named is the owner", () => {
  const by = (countedBy: string | null, stemsCut: number) => ({ countedBy, stemsCut });
  expect(countersInWords([by("Wren", 9)])).toBe("9 stems by Wren");
  expect(countersInWords([by("Wren", 5), by(null, 7), by("Wren", 4), by("owner", 1)])).toBe(
    "9 stems by Wren and 8 by the owner",
  );
});

test("two that counted more than stood there are asked whether it was the same; one alone, or no more, is not", () => {
  expect(overfullInWords(2, 16, 9)).toBe(
    "16 stems counted where 9 were expected to stand: did two count the same stems?",
  );
  expect([overfullInWords(1, 16, 9), overfullInWords(2, 9, 9)]).toEqual([null, null]);
});

test("what is not sent yet is counted", () => {
  expect(unsentInWords(["counted"])).toBe("1 count is not sent yet: it is kept on this phone.");
  expect(unsentInWords(["counted", "counted", "counted"])).toBe(
    "3 counts are not sent yet: they are kept on this phone.",
  );
  expect(unsentInWords(["counted", "taken back"])).toBe("2 changes are not sent yet: they are kept on this phone.");
  expect([saidInWords("counted", 9), saidInWords("corrected", 7), saidInWords("taken back", 0)]).toEqual([
    "9 stems",
    "really 7 stems in all",
    "taken back",
  ]);
});
