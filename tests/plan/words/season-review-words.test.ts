import { expect, test } from "vitest";
import {
  orderMoneyInWords,
  seasonMoneyInWords,
  seasonReviewLead,
  soldShareInWords,
} from "#lib/plan/words/season-review-words";

const NONE = { cutStems: 0, usedStems: 0, thrownAwayStems: 0, orderStems: 0, leftStems: 0, orderCents: 0 };
const TOTAL = {
  cutStems: 12_340,
  usedStems: 8_200,
  orderStems: 2_100,
  thrownAwayStems: 310,
  leftStems: 1_730,
  orderCents: 273_000,
};

test("the season’s stems are told as one sentence whose parts sum, and money only where it is known", () => {
  expect(seasonReviewLead({ total: TOTAL }, false)).toBe(
    "Of 12,340 stems cut so far 8,200 were used at events and 2,100 went to standing orders; 310 were thrown away, and 1,730 were left.",
  );
  expect(seasonReviewLead({ total: NONE }, false)).toBe("Nothing of this season has been cut yet.");
  expect(seasonReviewLead({ total: NONE }, true)).toBe("Nothing of this season was cut.");
  expect(seasonMoneyInWords({ bookingCents: 984_000, total: TOTAL })).toBe(
    "Events that are over bring $9,840, standing orders $2,730.",
  );
  expect(seasonMoneyInWords({ bookingCents: 0, total: TOTAL })).toBe(
    "Standing orders bring $2,730; the events that are over have no price written down.",
  );
  expect(seasonMoneyInWords({ bookingCents: 0, total: NONE })).toBe("");
  const noOrders = { ...TOTAL, cutStems: 10_240, orderStems: 0, orderCents: 0 };
  expect(seasonReviewLead({ total: noOrders }, true)).toBe(
    "Of 10,240 stems cut 8,200 were used at events; 310 were thrown away, and 1,730 were left.",
  );
  expect(seasonMoneyInWords({ bookingCents: 984_000, total: noOrders })).toBe("Events that are over bring $9,840.");
  expect([soldShareInWords(TOTAL), soldShareInWords(NONE)]).toEqual(["83 %", ""]);
  expect([orderMoneyInWords(TOTAL), orderMoneyInWords(NONE)]).toEqual(["$2,730.00", ""]);
});
