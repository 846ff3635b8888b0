import { expect, test } from "vitest";
import { breakEvenInWords, savingInWords, stemsInWords } from "#lib/plan/words/worth-words";

test("a bed says what its fate saves, or what the other would: kept or dug, in whole dollars", () => {
  expect(savingInWords({ isKept: true, worthCents: 13_100, breakEvenShare: 0.5 })).toBe("$131 kept");
  expect(savingInWords({ isKept: false, worthCents: 2_400, breakEvenShare: 0.8 })).toBe("$24 dug");
  expect(savingInWords({ isKept: false, worthCents: -47_149, breakEvenShare: 0.4 })).toBe("$471 if kept");
  expect(savingInWords({ isKept: true, worthCents: -1_300, breakEvenShare: 0.8 })).toBe("$13 if dug");
  expect(savingInWords({ isKept: true, worthCents: 49, breakEvenShare: 0.8 })).toBe("nothing");
});

test("the survival that pays is a share, or says that none does or every one", () => {
  expect(breakEvenInWords({ isKept: true, worthCents: 100, breakEvenShare: 0.38 })).toBe("from 38 %");
  expect(breakEvenInWords({ isKept: true, worthCents: 100, breakEvenShare: null })).toBe("whatever lives");
  expect(breakEvenInWords({ isKept: false, worthCents: 100, breakEvenShare: null })).toBe("never");
});

test("no stems are a middle dot, fewer a minus", () => {
  expect([45, 0, -3].map(stemsInWords)).toEqual(["45", "·", "−3"]);
});
