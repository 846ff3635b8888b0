import { expect, test } from "vitest";
import { orderInWords, ordersLead } from "#lib/plan/words/order-words";
import { day } from "../../small-farm";

const LIST = {
  ...{ id: 1, buyer: "Invented florist", kind: "florist" as const, weekday: 5 },
  ...{ firstOn: day("2027-07-02"), lastOn: day("2027-09-24"), role: "focal" as const, cropId: 3, recipeId: null },
  ...{ colours: ["blush" as const, "cream" as const], askedCount: 40, stemCents: 120 },
};
const names = { crop: () => "Dahlia", recipe: () => "Market bunch" };

test("an order is told by what it takes, when and at what price", () => {
  expect(orderInWords(LIST, names)).toBe(
    "40 focal stems (Dahlia) in blush or cream, each Fri from 2 Jul to 24 Sep, at $1.20 a stem",
  );
  expect(orderInWords({ ...LIST, role: null, cropId: null, recipeId: 1, colours: [], askedCount: 12 }, names)).toBe(
    "12 × Market bunch, each Fri from 2 Jul to 24 Sep, at $1.20 a stem",
  );
});

const NONE_GONE = { needStems: 0, gotStems: 0, earnedCents: 0 };

test("a season's orders are told by the stems that are there and what they bring", () => {
  expect(ordersLead({ needStems: 480, gotStems: 300, earnedCents: 36_000 }, NONE_GONE)).toMatch(
    /^300 of 480 stems asked for are there: they bring \$360\. Bookings come first/,
  );
  expect(ordersLead({ needStems: 480, gotStems: 480, earnedCents: 57_600 }, NONE_GONE)).toMatch(
    /^All 480 stems asked for are there/,
  );
});

test("deliveries that have gone by are told apart from those still to go out", () => {
  const gone = { needStems: 120, gotStems: 100, earnedCents: 12_000 };
  const lead = ordersLead({ needStems: 480, gotStems: 300, earnedCents: 36_000 }, gone);
  expect(lead).toMatch(/^300 of 480 stems still to go out are there: they bring \$360\./);
  expect(lead).toMatch(/Gone by: 100 of 120 stems\.$/);
  expect(ordersLead(NONE_GONE, gone)).toBe("No delivery is still to come. Gone by: 100 of 120 stems.");
});
