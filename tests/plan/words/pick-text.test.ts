import { expect, test } from "vitest";
import { pickText } from "#lib/plan/words/pick-text";
import { crop, variety } from "../../small-farm";

const row = (place: string, name: string, stemsToCut: number, cautions: string[] = []) => ({
  place,
  crop: { ...crop({ id: 1 }), name, cautions },
  variety: variety({ id: 1, name: "Mint", colour: "green" }),
  stemsToCut,
});

test("a list that is handed on says what to cut where, line by line, with each caution once and no client", () => {
  const rows = [
    row("D4", "Spurge", 9, ["Sap burns"]),
    row("D5", "Basil", 12),
    row("D6", "Spurge", 1000, ["Sap burns"]),
  ];
  expect(pickText("Thursday 10 June 2027", rows).split("\n")).toEqual([
    "Thursday 10 June 2027: cut 1,021 stems",
    "D4: 9 Spurge Mint, green",
    "D5: 12 Basil Mint, green",
    "D6: 1,000 Spurge Mint, green",
    "Take care, Spurge: Sap burns.",
  ]);
});
