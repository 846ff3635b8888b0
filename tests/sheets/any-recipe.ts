import fc from "fast-check";
import type { Recipe } from "#lib/domain/records/recipe";
import { LINE_COLOURS, ROLES } from "#lib/domain/words";
import { anyAsks } from "../any-traits";

/** Recipes of every kind that the types allow, with names and texts as they are given. */
export const anyRecipe = (name: fc.Arbitrary<string>, text: fc.Arbitrary<string>): fc.Arbitrary<Omit<Recipe, "id">> =>
  fc.record({
    name: name.filter((words) => words.length <= 80),
    unit: name,
    lines: fc.array(
      fc.record({
        role: fc.constantFrom(...ROLES),
        stemsPerPiece: fc.double({ min: 0.01, max: 10_000, noNaN: true }),
        asks: anyAsks,
        colours: fc.constantFrom(...LINE_COLOURS),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    origin: text,
  });
