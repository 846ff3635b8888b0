import { expect, test } from "vitest";
import { cutSumInWords, rowCutInWords, soonInWords } from "#lib/plan/words/cut-words";

test("what is to be cut and what was cut are said with their numbers", () => {
  expect(cutSumInWords([], [], true)).toBe("Nothing to cut today.");
  expect(cutSumInWords([{ stemsToCut: 9 }, { stemsToCut: 3 }], [], true)).toBe("Cut 12 stems in 2 rows.");
  expect(cutSumInWords([{ stemsToCut: 9 }], [{ stemsCut: 4 }], true)).toBe(
    "Cut 9 stems in 1 row; 4 stems recorded as cut.",
  );
  expect(cutSumInWords([{ stemsToCut: 9 }], [], false)).toBe("9 stems in 1 row not recorded.");
  expect(cutSumInWords([], [{ stemsCut: 4 }], true)).toBe("All done: 4 stems recorded as cut.");
  const words = (stemsCut: number, stemsAsked: number | null) =>
    rowCutInWords({ stemsCut, stemsAsked, restStands: false });
  expect([words(9, 9), words(7, 9), words(12, 9), words(0, 9), words(5, null)]).toEqual([
    "9 cut, as asked",
    "7 of 9 cut",
    "12 cut, 3 more than asked",
    "none left of 9",
    "5 cut",
  ]);
  const left = (stemsCut: number, stemsAsked: number | null) =>
    rowCutInWords({ stemsCut, stemsAsked, restStands: true });
  expect([left(0, 9), left(7, 9), left(9, 9), left(5, null)]).toEqual([
    "none of 9 cut, the rest waits",
    "7 of 9 cut, the rest waits",
    "9 cut, as asked",
    "5 cut, the rest waits",
  ]);
  expect([soonInWords(120, 0), soonInWords(120, 12)]).toEqual([
    "all 120 stems cut or still to come",
    "12 of 120 stems short",
  ]);
});
