import { expect, test } from "vitest";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { bed, crop, recipe, snapshot, variety } from "../small-farm";

const FARM = snapshot({
  crops: [crop({ id: 1, name: "Dahlia" }), crop({ id: 2, name: "Foxglove" })],
  varieties: [
    variety({ id: 1, cropId: 1, name: "Maple Row", colour: "plum" }),
    variety({ id: 2, cropId: 1, name: "Maple Two", colour: "plum" }),
  ],
  recipes: [recipe({ id: 1, name: "Bridal bouquet" }), recipe({ id: 2, name: "Posy" })],
  beds: [bed({ id: 1, name: "D8" }), bed({ id: 2, name: "D9" })],
});

const textOf = (name: string) => farmSheets(FARM).find((sheet) => sheet.name === name)?.text ?? "";
const read = (name: string, text: string) => readFarmSheets([{ name, text }], knownFarm(FARM));

test("a bed, crop, recipe or variety is not given the name that another on the farm has", () => {
  for (const [name, from, to] of [
    ["beds.csv", "D8,", "D9,"],
    ["crops.csv", "Dahlia,", "foxglove,"],
    ["recipes.csv", "Bridal bouquet,", "Posy,"],
    ["varieties.csv", "Maple Row,", "maple two,"],
  ]) {
    const [header, first] = textOf(name).split("\r\n");
    const reading = read(name, [header, first.replace(from, to)].join("\n"));
    expect(reading.records).toEqual({});
    expect(reading.problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^another (of Dahlia )?is called ".*" (on the farm )?already: name this one otherwise$/),
    ]);
  }
  const merged = read("recipes.csv", textOf("recipes.csv").replace("Bridal bouquet,", "Posy,"));
  expect(merged.records).toEqual({});
  expect(merged.problems.map(({ line }) => line)).toEqual([2, 3]);
});
