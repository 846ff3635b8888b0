import { describe, expect, test } from "vitest";
import { keptFigures, takenFigures, withFigures } from "#lib/domain/built-in-figures";
import { changedRecipes } from "#lib/domain/built-in-recipes";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import type { Recipe } from "#lib/domain/records/recipe";
import type { Snapshot } from "#lib/domain/snapshot";
import { linesInWords } from "#lib/plan/words/recipe-words";
import { demoSnapshot } from "../../../demo/demo-snapshot";
import { provenPlan } from "../../proven-plan";
import { booking, crop, recipe, snapshot, variety } from "../../small-farm";
import { figuresTaken } from "./figures-at-once";

/** A built-in recipe as a farm has it that was started before fillers and foliage kept to the palette. */
const asBefore = (row: Recipe): Recipe => ({
  ...row,
  lines: row.lines.map((line) => (line.colours === "palette-or-neutral" ? { ...line, colours: "any" } : line)),
});

const bridal = {
  name: "Bridal bouquet",
  lines: [{ role: "filler" as const, stemsPerPiece: 6, asks: [], colours: "any" as const }],
};
const now = [
  {
    ...bridal,
    unit: "piece",
    origin: "common practice",
    lines: [{ ...bridal.lines[0], colours: "palette-or-neutral" as const }],
  },
];
const filler = { roles: ["filler" as const], usualRole: "filler" as const };

/** Seventy blue stems of the week, and a coral wedding of ten bouquets with six fillers each. */
const coral = (given: Partial<Snapshot> = {}): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, ...filler, name: "Statice" })],
    varieties: [variety({ id: 1, colour: "blue" })],
    recipes: [recipe({ id: 1, ...bridal })],
    bookings: [booking({ id: 1, palette: ["coral"], pieces: [{ recipeId: 1, pieceCount: 10, colours: [] }] })],
    ...given,
  });

describe("built-in recipes that changed", () => {
  test("[W9] thirty blue statice go into a coral wedding of an old farm; with the recipe taken none does, and 60 are short where 30 were", () => {
    const plan = provenPlan(coral(), 2027);
    const changed = changedRecipes(plan.snapshot.recipes, now);
    expect(changed).toHaveLength(1);
    const { recipes, shortAfterAll } = figuresTaken(plan, [], changed);
    expect([recipes?.shortBefore, recipes?.shortAfter, shortAfterAll]).toEqual([30, 60, 60]);
    const taken = withFigures(coral(), takenFigures([], changed));
    expect(taken.recipes).toEqual([{ ...now[0], id: 1 }]);
    expect(provenPlan(taken, 2027).match.servings).toEqual([]);
  });

  test("[W9] white statice serves the coral wedding all the same, and not the one that wants no white", () => {
    const white = { varieties: [variety({ id: 1, colour: "white" })], recipes: [{ ...now[0], id: 1 }] };
    const [plain] = coral().bookings;
    const shortOf = (given: Snapshot) => provenPlan(given, 2027).gaps.map(({ shortStems }) => shortStems);
    expect(shortOf(coral(white))).toEqual([30]);
    expect(shortOf(coral({ ...white, bookings: [{ ...plain, unacceptableColours: ["white"] }] }))).toEqual([60]);
  });

  test("[W9] a recipe that she changed, one of her own, and one that stands as it is built in are never offered", () => {
    expect(changedRecipes([recipe({ id: 1, ...bridal, origin: "own" })], now)).toEqual([]);
    expect(changedRecipes([recipe({ id: 1, ...bridal, name: "Sunday posy" })], now)).toEqual([]);
    expect(changedRecipes([{ ...now[0], id: 1 }], now)).toEqual([]);
  });

  test("[W9] taken or kept, no recipe is left to ask about; kept, the farm's lines stand and are hers", () => {
    const changed = changedRecipes(coral().recipes, now);
    const kept = withFigures(coral(), keptFigures([], changed)).recipes;
    expect(kept).toEqual([recipe({ id: 1, ...bridal, origin: "own" })]);
    expect(changedRecipes(kept, now)).toEqual([]);
    expect(changedRecipes(withFigures(coral(), takenFigures([], changed)).recipes, now)).toEqual([]);
  });

  test("a farm started today is offered none, one of before every recipe with filler or foliage", () => {
    const started = DEFAULT_RECIPES.map((row, index) => ({ ...row, id: index + 1 }));
    expect(changedRecipes(started, DEFAULT_RECIPES)).toEqual([]);
    expect(changedRecipes(started.map(asBefore), DEFAULT_RECIPES)).toHaveLength(DEFAULT_RECIPES.length);
  });

  test("lines are said with what they may take", () => {
    expect(linesInWords(now[0].lines)).toBe("6 filler in the palette, or white, cream, green, silver");
    expect(linesInWords(bridal.lines)).toBe("6 filler in any colour");
  });
});

describe("the demo's coral weddings", () => {
  const fillerColours = (given: Snapshot) => {
    const { match } = provenPlan(given, 2027);
    const served = match.servings.filter(({ needIndex }) => {
      const { role, booking: of } = match.needs[needIndex];
      return role === "filler" && of.palette[0] === "coral";
    });
    return new Set(served.map(({ supplyIndex }) => match.supplies[supplyIndex].variety.colour));
  };

  test("no blue or purple statice goes into them, which it did while fillers took any colour", () => {
    const today = demoSnapshot(2027);
    const before = fillerColours({ ...today, recipes: today.recipes.map(asBefore) });
    const after = fillerColours(today);
    expect(["blue", "purple"].some((colour) => before.has(colour as "blue"))).toBe(true);
    expect(after.size).toBeGreaterThan(0);
    for (const colour of ["blue", "purple", "lavender"] as const) expect(after.has(colour)).toBe(false);
  });
});
