import fc from "fast-check";
import { expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { bed, booking, crop, day, planting, recipe, snapshot, variety } from "../small-farm";
import { anyFarm } from "./any-farm";

const FARM = snapshot({
  crops: [crop({ id: 1, name: "Dahlia" }), crop({ id: 2, name: "Foxglove" })],
  varieties: [variety({ id: 1, cropId: 1, name: "Maple Row", colour: "plum" })],
  recipes: [recipe({ id: 1, name: "Bridal bouquet" }), recipe({ id: 2, name: "Posy" })],
  beds: [bed({ id: 1, name: "D8" }), bed({ id: 2, name: "D9" })],
  plantings: [
    planting({ id: 1, bedId: 1, varietyId: 1, plantCount: 40 }),
    planting({ id: 2, bedId: 2, varietyId: 1, plantCount: 10 }),
    planting({ id: 3, bedId: 2, varietyId: 1, plantCount: 20 }),
  ],
  bookings: [
    booking({
      id: 1,
      client: "Ash & Wren",
      eventOn: day("2027-09-20"),
      pieces: [
        { recipeId: 1, pieceCount: 1, colours: [] },
        { recipeId: 2, pieceCount: 6, colours: ["white"] },
      ],
    }),
    booking({ id: 2, client: "Ivy", eventOn: day("2027-06-12") }),
  ],
  coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-08-01"), stemCount: 40 }],
});

const backOnto = (farm: Snapshot, sheets: readonly { name: string; text: string }[]) =>
  readFarmSheets(sheets, knownFarm(farm));
const textOf = (farm: Snapshot, name: string) => farmSheets(farm).find((sheet) => sheet.name === name)?.text ?? "";
const edited = (name: string, edit: (text: string) => string) =>
  backOnto(FARM, [{ name, text: edit(textOf(FARM, name)) }]);
const told = ({ perSheet }: ReturnType<typeof readFarmSheets>) =>
  perSheet.flatMap(({ sheet, changes }) =>
    changes.map(({ called, differences }) =>
      differences === null
        ? `${sheet}: new ${called}`
        : `${sheet}: ${called}: ${differences.map(({ column, before, after }) => `${column} ${before} > ${after}`).join(", ")}`,
    ),
  );

/** A farm's own sheets say nothing new about it. */
function expectNothingToChange(farm: Snapshot) {
  const reading = backOnto(farm, farmSheets(farm));
  expect(reading.problems).toEqual([]);
  expect(reading.records).toEqual({});
  expect(reading.perSheet.flatMap(({ changes }) => changes)).toEqual([]);
  expect(
    reading.perSheet.every(({ sameCount, rowCount, leftCount }) => sameCount === rowCount && leftCount === 0),
  ).toBe(true);
}

test("the demo farm's own sheets brought back change nothing", () => expectNothingToChange(demoSnapshot()));

test("the own sheets of seeded farms brought back change nothing", () => {
  for (const seed of [1, 2, 3]) expectNothingToChange(seededFarm(seed, { bedCount: 40, bookingCount: 30 }, 2027));
});

test("any farm's own sheets brought back change nothing, with their keys and without", () => {
  fc.assert(
    fc.property(anyFarm, (farm) => {
      expectNothingToChange(farm);
      const withoutKeys = farmSheets(farm).map(({ name, text }) => ({
        name,
        text: text.replace(/,key\r\n/, ",kee\r\n"),
      }));
      const reading = backOnto(farm, withoutKeys);
      expect(reading.problems.every(({ column }) => column === "kee" || column === "key")).toBe(true);
      expect(reading.records.beds).toBeUndefined();
      expect(reading.records.bookings).toBeUndefined();
    }),
    { seed: 20_270_612, numRuns: 100 },
  );
});

test("a changed cell changes that field of that record alone, under its id", () => {
  const reading = edited("plantings.csv", (text) => text.replace(",40,", ",45,"));
  expect(reading.problems).toEqual([]);
  expect(told(reading)).toEqual([
    expect.stringMatching(/^plantings: D8, Dahlia, Maple Row, \d{4}, .*: plants 40 > 45$/),
  ]);
  expect(reading.records).toMatchObject({ plantings: [{ id: 1, plantCount: 45 }] });
  expect(reading.perSheet).toMatchObject([{ newCount: 0, changedCount: 1, sameCount: 2, leftCount: 0 }]);
});

test("by its key a bed is renamed, and other sheets of the upload may call it by either name", () => {
  const reading = backOnto(FARM, [
    { name: "beds.csv", text: textOf(FARM, "beds.csv").replace("D8,", "North,") },
    { name: "plantings.csv", text: textOf(FARM, "plantings.csv") },
  ]);
  expect(reading.problems).toEqual([]);
  expect(told(reading)).toEqual(["beds: North: bed D8 > North"]);
  expect(reading.records).toMatchObject({ beds: [{ id: 1, name: "North" }] });
  expect(reading.records.plantings).toBeUndefined();
});

test("crops, varieties, recipes and bookings are renamed by their keys, and their lines and plantings follow", () => {
  const reading = backOnto(
    FARM,
    farmSheets(FARM).map(({ name, text }) => ({
      name,
      text:
        {
          "crops.csv": ["Dahlia,", "Dahlias of mine,"],
          "recipes.csv": ["Posy,", "Nosegay,"],
          "varieties.csv": ["Maple Row,plum", "Maple Two,red"],
          "bookings.csv": ["Ivy,2027-06-12", "Ivy & Sol,2027-06-19"],
        }[name]?.reduce((from, to) => text.replaceAll(from, to)) ?? text,
    })),
  );
  expect(reading.problems).toEqual([]);
  expect(told(reading)).toEqual([
    "crops: Dahlias of mine: crop Dahlia > Dahlias of mine",
    expect.stringMatching(/^recipes: Nosegay: recipe Posy > Nosegay/),
    "varieties: Dahlias of mine, Maple Two: variety Maple Row > Maple Two, colour plum > red",
    "bookings: Ivy & Sol, 2027-06-19: client Ivy > Ivy & Sol, event_on 2027-06-12 > 2027-06-19",
  ]);
});

test("without keys a row is found by its name, or its name and day, and rows that the file lacks stay", () => {
  const reading = backOnto(FARM, [
    { name: "beds.csv", text: "bed,length_m,width_m\nd9,77,1\nE1,10,1\n" },
    { name: "pieces.csv", text: "client,event_on,recipe,count\nAsh & Wren,2027-09-20,Posy,9\nIvy,2027-06-12,Posy,2\n" },
  ]);
  expect(reading.problems).toEqual([]);
  expect(told(reading)).toEqual([
    expect.stringMatching(/^beds: D9: length_m .* > 77/),
    "beds: new E1",
    "pieces: Ash & Wren, 2027-09-20, Posy: count 6 > 9",
    "pieces: new Ivy, 2027-06-12, Posy",
  ]);
  expect(reading.records.bookings).toMatchObject([
    { id: 1, pieces: [{ recipe: "Bridal bouquet" }, { recipe: "Posy", pieceCount: 9, colours: ["white"] }] },
    { id: 2, pieces: [{ recipe: "Posy", pieceCount: 2 }] },
  ]);
  expect(reading.perSheet.map(({ leftCount }) => leftCount)).toEqual([1, 1]);
});

test("columns that a sheet lacks keep what the farm has; an empty cell says what it always says", () => {
  const farm = { ...FARM, beds: [bed({ id: 1, name: "D8", note: "wet" }), bed({ id: 2, name: "D9", note: "dry" })] };
  const reading = backOnto(farm, [{ name: "beds.csv", text: "bed,length_m,width_m\nD8,3,1\n" }]);
  expect(reading.records.beds).toMatchObject([{ id: 1, lengthMetres: 3, note: "wet" }]);
  const emptied = backOnto(farm, [{ name: "beds.csv", text: "bed,length_m,width_m,note\nD8,3,1,\n" }]);
  expect(emptied.records.beds).toMatchObject([{ id: 1, note: "" }]);
});

test("which of several like rows is meant is asked for, never guessed", () => {
  const rows = textOf(FARM, "plantings.csv").split("\r\n");
  const [header, , ten] = rows.map((row) => row.replace(/,[^,]*$/, ""));
  const like = (count: number) => ten.replace(",10,", `,${count},`);
  const one = backOnto(FARM, [{ name: "plantings.csv", text: [header, like(20), like(11)].join("\n") }]);
  expect(one.problems).toEqual([]);
  expect(one.records.plantings).toMatchObject([{ id: 2, plantCount: 11 }]);
  const both = backOnto(FARM, [{ name: "plantings.csv", text: [header, like(21), like(11)].join("\n") }]);
  expect(both.problems.map(({ message }) => message)).toEqual([
    expect.stringMatching(/^the farm has 2 rows that this could be: put the key of one \(2-.*, 3-.*\) here/),
    expect.stringMatching(/^the farm has 2 rows that this could be/),
  ]);
});

test("a key that stands twice, one that is none, and one of another booking's line are problems", () => {
  const twice = edited("beds.csv", (text) => text.replace(/(D8,.*)\r\n/, "$1\r\n$1\r\n").replace("D8,", "D10,"));
  expect(twice.problems.map(({ line, column }) => `${line} ${column}`)).toEqual(["3 key"]);
  expect(edited("beds.csv", (text) => text.replace(/1-[a-z]+/, "mine")).problems[0].message).toMatch(/is no key/);
  const moved = edited("pieces.csv", (text) => text.replace("Ash & Wren,2027-09-20,Posy", "Ivy,2027-06-12,Posy"));
  expect(moved.problems.map(({ message }) => message)).toContainEqual(expect.stringMatching(/of another booking/));
});

test("keys of another farm never lead to a row that is called otherwise", () => {
  const other = { ...FARM, beds: [bed({ id: 1, name: "A" }), bed({ id: 2, name: "B" })], plantings: [] };
  const reading = backOnto(other, [{ name: "beds.csv", text: textOf(FARM, "beds.csv") }]);
  expect(told(reading)).toEqual(["beds: new D8", "beds: new D9"]);
});

test("a recipe is replaced whole, and a line that goes is told", () => {
  const farm = {
    ...FARM,
    recipes: [
      recipe({
        id: 1,
        name: "Bridal bouquet",
        lines: [
          { role: "focal", stemsPerPiece: 8, asks: [], colours: "palette" },
          { role: "filler", stemsPerPiece: 3, asks: [], colours: "any" },
        ],
      }),
      FARM.recipes[1],
    ],
  };
  const reading = backOnto(farm, [
    { name: "recipes.csv", text: "recipe,role,stems_per_piece\nbridal bouquet,focal,9\n" },
  ]);
  expect(told(reading)).toEqual([
    "recipes: Bridal bouquet: stems_per_piece 8 > 9",
    "recipes: Bridal bouquet: role filler 3 > ",
  ]);
  expect(reading.records.recipes).toMatchObject([{ id: 1, lines: [{ role: "focal", stemsPerPiece: 9 }] }]);
  expect(reading.perSheet).toMatchObject([{ leftCount: FARM.recipes[1].lines.length }]);
});
