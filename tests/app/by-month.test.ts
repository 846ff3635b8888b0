import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { byMonth } from "../../app/ui/by-month";
import { day } from "../small-farm";

test("days stand under their month and year in the order they came, and a June of another year is another month", () => {
  const days = ["2027-06-30", "2027-07-01", "2027-06-02", "2028-06-01"].map((text) => day(text));
  expect(byMonth(days, toDayNumber)).toEqual([
    { month: "June 2027", rows: [days[0], days[2]] },
    { month: "July 2027", rows: [days[1]] },
    { month: "June 2028", rows: [days[3]] },
  ]);
});
