import { expect, test } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { booking, day, recipe, snapshot } from "../small-farm";

const [bouquet, posy] = [recipe({ id: 1, name: "Bridal bouquet" }), recipe({ id: 2, name: "Posy" })];
const FARM = snapshot({
  recipes: [bouquet, posy],
  bookings: [booking({ id: 2, client: "Ivy", eventOn: day("2027-06-12") })],
});
const backOnto = (farm: Snapshot, sheets: readonly { name: string; text: string }[]) =>
  readFarmSheets(sheets, knownFarm(farm));

test("half a piece is refused with a word; feet may be a part of one, and what the farm has had all along may stay", () => {
  const rows = "client,event_on,recipe,count\nIvy,2027-06-12,Posy,2.5\n";
  expect(backOnto(FARM, [{ name: "pieces.csv", text: rows }]).problems).toMatchObject([
    { line: 2, column: "count", message: "2.5 of posy: pieces are whole, write 3" },
  ]);
  const byTheFoot = { ...FARM, recipes: [bouquet, { ...posy, unit: "foot" }] };
  expect(backOnto(byTheFoot, [{ name: "pieces.csv", text: rows }]).problems).toEqual([]);
  const made = [
    { name: "recipes.csv", text: "recipe,unit,role,stems_per_piece\nPosy,foot,focal,2\n" },
    { name: "pieces.csv", text: rows },
  ];
  expect(backOnto(FARM, made).problems).toEqual([]);
  const [ivy] = FARM.bookings;
  const hadHalf = { ...FARM, bookings: [{ ...ivy, pieces: [{ recipeId: 2, pieceCount: 2.5, colours: [] }] }] };
  expect(backOnto(hadHalf, [{ name: "pieces.csv", text: rows }]).problems).toEqual([]);
});
