import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "seen_on,bed,crop,variety,cause,plants_before,plants_left\n";

test("what is left of plants is read by the names of bed and variety", () => {
  const { problems, records } = read({ "losses.csv": `${HEAD}2027-07-16,D8,Dahlia,Maple Row,Voles,40,12\n` });
  expect(problems).toEqual([]);
  expect(records.losses).toEqual([
    {
      ...{ seenOn: "2027-07-16", bed: "D8", crop: "Dahlia", variety: "Maple Row", colour: "plum" },
      ...{ cause: "voles", plantsBefore: 40, plantsLeft: 12 },
    },
  ]);
});

test("an unknown bed or cause, more left than there were, none before, or a second of the same day and cause says so", () => {
  expect(
    problemLines({
      "losses.csv": [
        HEAD.trim(),
        "2027-07-16,D7,Dahlia,Maple Row,voles,40,12",
        "2027-07-16,D8,Dahlia,Maple Row,dragons,40,12",
        "2027-07-16,D8,Dahlia,Maple Row,voles,40,41",
        "2027-07-17,D8,Dahlia,Maple Row,voles,0,0",
        "2027-07-18,D8,Dahlia,Maple Row,voles,40,20",
        "2027-07-18,D8,Dahlia,Maple Row,voles,40,10",
        "2027-07-18,D8,Dahlia,Maple Row,hail or wind,40,10",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual([
    "losses.csv:2 bed",
    "losses.csv:3 cause",
    "losses.csv:4 plants_left",
    "losses.csv:5 plants_before",
    "losses.csv:7 row",
  ]);
});
