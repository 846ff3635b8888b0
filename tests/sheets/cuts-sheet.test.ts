import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "cut_on,bed,crop,variety,client,event_on,stems_cut,stems_asked,good_stems\n";

test("cuts are read by the names of bed, variety and booking; without a booking they are for nobody yet", () => {
  const { problems, records } = read({
    "cuts.csv": `${HEAD}2027-09-16,D8,Dahlia,Maple Row,Ash & Wren,2027-09-20,9,10,8\n2027-09-16,D8,Dahlia,Maple Row,,,3,,\n`,
  });
  expect(problems).toEqual([]);
  const same = { cutOn: "2027-09-16", bed: "D8", crop: "Dahlia", variety: "Maple Row", colour: "plum" };
  expect(records.cuts).toEqual([
    {
      ...same,
      client: "Ash & Wren",
      eventOn: "2027-09-20",
      stemsCut: 9,
      stemsAsked: 10,
      goodStems: 8,
      restStands: false,
    },
    { ...same, client: null, eventOn: null, stemsCut: 3, stemsAsked: null, goodStems: null, restStands: false },
  ]);
});

test("a cut of an unknown bed, variety or booking, half a booking, too many good stems or a second row of a cut says so", () => {
  expect(
    problemLines({
      "cuts.csv": [
        HEAD.trim(),
        "2027-09-16,D7,Dahlia,Maple Row,,,9,,",
        "2027-09-16,D8,Dahlia,Maple Rue,,,9,,",
        "2027-09-16,D8,Dahlia,Maple Row,Ash & Wren,2027-09-21,9,,",
        "2027-09-16,D8,Dahlia,Maple Row,Ash & Wren,,9,,",
        "2027-09-16,D8,Dahlia,Maple Row,,,9,,10",
        "2027-09-17,D8,Dahlia,Maple Row,,,9,,",
        "2027-09-17,D8,Dahlia,Maple Row,,,8,,",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual([
    "cuts.csv:2 bed",
    "cuts.csv:3 variety",
    "cuts.csv:4 client",
    "cuts.csv:5 client",
    "cuts.csv:6 good_stems",
    "cuts.csv:8 row",
  ]);
});

test("a cut may be of a booking that comes with the same upload", () => {
  const { problems, records } = read({
    "bookings.csv": "client,event_on\nIvy & Sol,2027-06-12\n",
    "cuts.csv":
      "cut_on,bed,crop,variety,client,event_on,stems_cut\n2027-06-10,D8,Dahlia,Maple Row,Ivy & Sol,2027-06-12,4\n",
  });
  expect(problems).toEqual([]);
  expect(records.cuts).toMatchObject([{ client: "Ivy & Sol", stemsCut: 4 }]);
});

test("a cut names its booking in any letter case, and becomes one of the booking as the farm has it", () => {
  const { problems, records } = read({
    "cuts.csv":
      "cut_on,bed,crop,variety,client,event_on,stems_cut\n2027-09-16,D8,Dahlia,Maple Row,ash & WREN,2027-09-20,4\n",
  });
  expect(problems).toEqual([]);
  expect(records.cuts).toMatchObject([{ client: "Ash & Wren", eventOn: "2027-09-20", stemsCut: 4 }]);
});
