import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "looked_on,bed,crop,variety,sign,days_to_cut\n";

test("looks at buds are read by the names of bed and variety", () => {
  const { problems, records } = read({ "buds.csv": `${HEAD}2027-07-16,D8,Dahlia,Maple Row,buds showing,12\n` });
  expect(problems).toEqual([]);
  expect(records.budLooks).toEqual([
    {
      lookedOn: "2027-07-16",
      bed: "D8",
      crop: "Dahlia",
      variety: "Maple Row",
      colour: "plum",
      sign: "buds showing",
      daysToCut: 12,
    },
  ]);
});

test("a look at an unknown bed or variety, with an unknown sign or half a day, or a second of the same day says so", () => {
  expect(
    problemLines({
      "buds.csv": [
        HEAD.trim(),
        "2027-07-16,D7,Dahlia,Maple Row,late,",
        "2027-07-16,D8,Dahlia,Maple Rue,late,",
        "2027-07-16,D8,Dahlia,Maple Row,tired,",
        "2027-07-17,D8,Dahlia,Maple Row,late,1.5",
        "2027-07-18,D8,Dahlia,Maple Row,late,",
        "2027-07-18,D8,Dahlia,Maple Row,early,",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual(["buds.csv:2 bed", "buds.csv:3 variety", "buds.csv:4 sign", "buds.csv:5 days_to_cut", "buds.csv:7 row"]);
});
