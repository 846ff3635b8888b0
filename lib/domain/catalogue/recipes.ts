import type { CatalogueRecipe } from "#lib/domain/catalogue-types";
import type { RecipeLine } from "#lib/domain/records/recipe";
import { ROLES } from "#lib/domain/words";

/** Stems of one piece, in the order of {@link ROLES}: focal, secondary, line, filler, foliage, accent. */
type StemsByRole = readonly [number, number, number, number, number, number];

/** Filler and foliage may be neutral too, white, cream, green or silver; the rest are asked for in the booking's colours. Common practice. */
const coloursOf = (role: RecipeLine["role"]): RecipeLine["colours"] =>
  role === "filler" || role === "foliage" ? "palette-or-neutral" : "palette";

/** What is worn stays without water for hours, and no large head sits on a lapel or a wrist; filler and foliage are cut to size. Common practice. */
const wornAsks = (role: RecipeLine["role"]): RecipeLine["asks"] =>
  role === "filler" || role === "foliage" ? ["out of water"] : ["small head", "medium head", "out of water"];

const recipeOf = (
  name: string,
  stems: StemsByRole,
  asksOf: (role: RecipeLine["role"]) => RecipeLine["asks"],
  unit: string,
): CatalogueRecipe => ({
  name,
  unit,
  lines: ROLES.map((role, index) => ({
    role,
    stemsPerPiece: stems[index],
    colours: coloursOf(role),
    asks: asksOf(role),
  })).filter(({ stemsPerPiece }) => stemsPerPiece > 0),
  origin: "common practice",
});

const recipe = (name: string, stems: StemsByRole, unit = "piece") => recipeOf(name, stems, () => [], unit);

/** A piece that somebody wears. */
const worn = (name: string, stems: StemsByRole) => recipeOf(name, stems, wornAsks, "piece");

/**
 * The built-in recipes, stems per piece (garlands: per foot). All are common practice: no published table of stems per
 * wedding piece by role was found. Checked as a whole against a surveyed wedding in tests/truth/recipe-table.test.ts.
 */
export const DEFAULT_RECIPES: readonly CatalogueRecipe[] = [
  recipe("Bridal bouquet", [8, 10, 4, 6, 8, 4]),
  recipe("Attendant bouquet", [3, 6, 2, 3, 4, 2]),
  worn("Boutonniere", [0, 1, 0, 1, 1, 0]),
  worn("Corsage", [0, 3, 0, 1, 2, 0]),
  recipe("Low centrepiece", [4, 6, 2, 4, 4, 2]),
  recipe("Tall centrepiece", [8, 10, 8, 6, 10, 3]),
  recipe("Compote", [5, 7, 3, 4, 6, 3]),
  recipe("Bud vase", [1, 1, 0, 0, 1, 0]),
  recipe("Arch, one-side spray", [20, 25, 20, 15, 35, 5]),
  recipe("Arch, full", [50, 70, 50, 45, 120, 15]),
  recipe("Aisle marker", [1, 1, 0, 1, 2, 0]),
  worn("Flower crown", [0, 6, 0, 5, 5, 0]),
  recipe("Cake flowers", [2, 3, 0, 1, 2, 0]),
  recipe("Garland, greens only", [0, 0, 0, 0, 6, 0], "foot"),
  recipe("Garland, flowered", [1, 1, 0, 1, 6, 0], "foot"),
];
