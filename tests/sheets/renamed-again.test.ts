import { expect, test } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { lettersOfKey, lettersOfNames } from "#lib/sheets/row-key";
import { bed, booking, crop, day, planting, recipe, snapshot, variety } from "../small-farm";

const EVENT = day("2027-06-12");

const farmCalled = (name: { bed: string; recipe: string; variety: string; client: string }): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, name: "Dahlia" })],
    varieties: [variety({ id: 1, cropId: 1, name: name.variety, colour: "plum" })],
    recipes: [recipe({ id: 2, name: name.recipe })],
    beds: [bed({ id: 1, name: name.bed }), bed({ id: 2, name: "D9" })],
    plantings: [planting({ id: 1, bedId: 1, varietyId: 1, plantCount: 40 })],
    bookings: [
      booking({
        id: 1,
        client: name.client,
        eventOn: EVENT,
        stemLines: [],
        pieces: [{ recipeId: 2, pieceCount: 6, colours: ["white"] }],
      }),
    ],
  });

const WAS = { bed: "D8", recipe: "Posy", variety: "Maple Row", client: "Ivy" };
const IS = { bed: "North", recipe: "Nosegay", variety: "Maple Two", client: "Ivy & Sol" };

/** What went out under the old names, with the new ones in the sheets whose rows they are; the other sheets still say the old ones. */
const RENAMED = farmSheets(farmCalled(WAS)).map(({ name, text }) => ({
  name,
  text:
    {
      "beds.csv": ["D8,", "North,"],
      "recipes.csv": ["Posy,", "Nosegay,"],
      "varieties.csv": ["Maple Row,", "Maple Two,"],
      "bookings.csv": ["Ivy,", "Ivy & Sol,"],
    }[name]?.reduce((from, to) => text.replaceAll(from, to)) ?? text,
}));

test("sheets that rename things are taken, and the same sheets once more change nothing, though some of them say the old names", () => {
  const first = readFarmSheets(RENAMED, knownFarm(farmCalled(WAS)));
  expect(first.problems).toEqual([]);
  expect(first.records).toMatchObject({ beds: [{ name: "North" }], varieties: [{ variety: "Maple Two" }] });
  const again = readFarmSheets(RENAMED, knownFarm(farmCalled(IS)));
  expect(again.problems).toEqual([]);
  expect(again.records).toEqual({});
});

test("an old name that no row of the upload went out under is still unknown", () => {
  const plantings = RENAMED.filter(({ name }) => name === "plantings.csv");
  const said = readFarmSheets(plantings, knownFarm(farmCalled(IS))).problems.map(({ message }) => message);
  expect(said).toContainEqual(expect.stringMatching(/^no bed called "D8"/));
});

test("a key has the letters of the names that its row went out under, whatever their case", () => {
  const beds = farmSheets(farmCalled(WAS)).find(({ name }) => name === "beds.csv")?.text ?? "";
  const [, key = ""] = /^D8,.*,(.+)$/m.exec(beds) ?? [];
  expect(lettersOfKey(key)).toBe(lettersOfNames("d8"));
  expect(lettersOfKey("mine")).toBeNull();
});
