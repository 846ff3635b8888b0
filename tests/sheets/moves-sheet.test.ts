import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "crop,variety,client,event_on,moved_on,cut_on,kind,stems\n";

test("what left the cooler is read by the names of variety and booking; two like rows are two moves", () => {
  const row = "Dahlia,Maple Row,,,2027-06-10,2027-06-08,thrown away,5\n";
  const { problems, records } = read({ "moves.csv": HEAD + row + row });
  expect(problems).toEqual([]);
  const move = {
    ...{ crop: "Dahlia", variety: "Maple Row", colour: "plum", client: null, eventOn: null },
    ...{ movedOn: "2027-06-10", cutOn: "2027-06-08", kind: "thrown away", stemCount: 5 },
  };
  expect(records.coolerMoves).toEqual([move, move]);
});

test("a move of an unknown variety or booking, of half a booking, of no stems, or of a kind that is none says so", () => {
  expect(
    problemLines({
      "moves.csv": [
        HEAD.trim(),
        "Dahlia,Maple Rue,,,2027-06-10,2027-06-08,taken out,5",
        "Dahlia,Maple Row,Nobody,2027-06-12,2027-06-10,2027-06-08,taken out,5",
        "Dahlia,Maple Row,Nobody,,2027-06-10,2027-06-08,taken out,5",
        "Dahlia,Maple Row,,,2027-06-10,2027-06-08,taken out,0",
        "Dahlia,Maple Row,,,2027-06-10,2027-06-08,eaten,5",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual([
    "moves.csv:2 variety",
    "moves.csv:3 client",
    "moves.csv:4 client",
    "moves.csv:5 stems",
    "moves.csv:6 kind",
  ]);
});
