import { expect, test } from "vitest";
import {
  costInWords,
  cutSourceInWords,
  hadInWords,
  recipeAdviceInWords,
  reviewLead,
  spareAdviceInWords,
  toReviewInWords,
  usedInWords,
} from "#lib/plan/words/review-words";
import { recipe } from "../../small-farm";

const role = (thrownAwayStems: number) => ({ cutStems: 240, boughtStems: 22, thrownAwayStems });

test("an event’s stems are told as sums: had, used, thrown away", () => {
  expect(hadInWords([role(0), role(0)])).toBe("480 stems cut and 44 bought");
  expect(usedInWords([role(0)])).toBe("all 262 stems used");
  expect(usedInWords([role(10), role(12)])).toBe("502 of 524 stems used, 22 thrown away");
});

test("what stems cost stands beside the price where there is one, and alone where there is none or it is nothing", () => {
  expect(costInWords(41_200, 148_000)).toBe("Stems worth $412 to buy, 28 % of the price of $1,480.");
  expect(costInWords(41_200, null)).toBe("Stems worth $412 to buy.");
  expect(costInWords(41_200, 0)).toBe("Stems worth $412 to buy.");
});

test("events to review are counted in a sentence, one as one", () => {
  expect([toReviewInWords(1), toReviewInWords(2)]).toEqual(["Review the event", "Review two events"]);
  expect(reviewLead(1, 0)).toBe("One event is over and not reviewed: how many stems were thrown away?");
  expect(reviewLead(0, 3)).toBe("All 3 events that are over are reviewed.");
  expect(reviewLead(0, 0)).toMatch(/^No event of this season is over yet\./);
});

test("a suggestion says what would be and what is", () => {
  const focal = { recipe: recipe({ id: 1, name: "Bridal bouquet" }), role: "focal" as const };
  expect(recipeAdviceInWords({ ...focal, was: 14, suggested: 12.5, eventCount: 3 })).toBe(
    "12.5 focal stems in one Bridal bouquet, now 14",
  );
  expect(spareAdviceInWords({ was: 0.1, suggested: 0.04, eventCount: 3 })).toBe(
    "a spare of 4 % for new bookings, now 10 %",
  );
  expect(cutSourceInWords({ isCutRecorded: false })).toBe("Nobody recorded the cut: it counts as planned.");
});
