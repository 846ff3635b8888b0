import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "supplier,ordered_on,arrives_on,crop,variety,bunches,stems_a_bunch,arrived_on,arrived_stems\n";

test("what was ordered is read by the names of variety and booking; columns left out mean no price, open at once, for anybody, not come", () => {
  const { problems, records } = read({
    "purchases.csv": `${HEAD}Marl Street,2027-05-22,2027-06-10,Dahlia,Maple Row,3,10,,\n`,
  });
  expect(problems).toEqual([]);
  expect(records.purchases).toEqual([
    {
      ...{ supplier: "Marl Street", orderedOn: "2027-05-22", arrivesOn: "2027-06-10" },
      ...{ crop: "Dahlia", variety: "Maple Row", colour: "plum", client: null, eventOn: null },
      ...{ bunchCount: 3, bunchStems: 10, bunchCents: null, daysToOpen: 0, stemsForBooking: 0 },
      ...{ arrivedOn: null, arrivedStems: null },
    },
  ]);
});

test("an order that arrives before it was ordered, of no bunches, or that arrived without a day says so", () => {
  expect(
    problemLines({
      "purchases.csv": [
        HEAD.trim(),
        "Marl Street,2027-06-22,2027-06-10,Dahlia,Maple Row,3,10,,",
        "Marl Street,2027-05-22,2027-06-10,Dahlia,Maple Row,0,10,,",
        "Marl Street,2027-05-22,2027-06-10,Dahlia,Maple Row,3,10,,30",
        ",2027-05-22,2027-06-10,Dahlia,Maple Row,3,10,,",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual([
    "purchases.csv:2 arrives_on",
    "purchases.csv:3 bunches",
    "purchases.csv:4 arrived_stems",
    "purchases.csv:5 supplier",
  ]);
});
