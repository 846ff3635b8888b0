import { describe, expect, test } from "vitest";
import { infeasibleInWords, limitInWords } from "#lib/plan/words/limit-words";

const leaves = { resource: "leaves", atHand: 22.94, takes: 30.58 } as const;

describe("a limit of the winter in words", () => {
  test("[K3] passed, it says what the choice takes and what is at hand, in the farm's units", () => {
    expect(limitInWords(leaves, "us")).toBe("40 cubic yards of leaves, and 30 are at hand");
    expect(limitInWords(leaves, "metric")).toBe("30.6 cubic metres of leaves, and 22.9 are at hand");
    expect(limitInWords({ resource: "hours", atHand: 1, takes: 2.25 }, "us")).toBe(
      "2.3 hours of keeping and digging, and 1 is at hand",
    );
    expect(limitInWords({ resource: "beds", atHand: 3, takes: 4 }, "us")).toBe(
      "4 beds kept, and at most 3 may be kept",
    );
  });

  test("[K3] passed by less than a tenth, it shows the digits that tell them apart", () => {
    expect(limitInWords({ resource: "tarp", atHand: 56.81, takes: 56.8101 }, "metric")).toBe(
      "56.8101 square metres of tarp, and 56.81 are at hand",
    );
  });

  test("[K3] kept to, it says what is at hand alone", () => {
    expect(limitInWords({ ...leaves, takes: 0 }, "us")).toBe("30 cubic yards of leaves at hand");
    expect(limitInWords({ resource: "beds", atHand: 3, takes: 0 }, "us")).toBe("at most 3 may be kept");
  });

  test("[K3] limits that clash only together are told so", () => {
    const hours = { resource: "hours", atHand: 20, takes: 8 } as const;
    expect(infeasibleInWords([leaves], "us")).toBe(
      "Any choice takes at least 40 cubic yards of leaves, and 30 are at hand.",
    );
    expect(infeasibleInWords([{ ...leaves, takes: 0 }, hours], "us")).toBe(
      "Each of these can be kept to alone, but not all together: 30 cubic yards of leaves at hand; 20 hours of keeping and digging at hand.",
    );
  });
});
