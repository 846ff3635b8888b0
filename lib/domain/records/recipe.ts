import { z } from "zod";
import { allOf } from "../listed";
import { ROLE_WORDS } from "../trade-words";
import { LINE_COLOURS, LINE_COLOURS_WORDS, NEUTRALS, ROLES } from "../words";
import { field, number, recordSchema, rowId } from "./field";
import { choice, prose, word, yesNo } from "./kinds";
import { ASKS } from "./stem-traits";

/**
 * One line of a recipe: stems of a role in one piece; fractions are meant (one foliage stem serves several small pieces).
 * `colours` are those of the booking's palette, of the palette and the neutral ones, or any.
 */
export const RECIPE_LINE = {
  role: field(choice(ROLES, ROLE_WORDS), z.enum(ROLES), { label: "Role" }),
  stemsPerPiece: number({ above: 0, most: 10_000, of: "stems", label: "Stems in one" }),
  colours: field(choice(LINE_COLOURS), z.enum(LINE_COLOURS), {
    absent: "palette",
    label: "Colours",
    meanings: LINE_COLOURS_WORDS,
  }),
  asks: ASKS,
};

/** A line's colours are kept in two columns: whether the palette alone or any, and this. */
export const OR_NEUTRAL = field(yesNo, z.boolean(), { label: `Colours, ${allOf(NEUTRALS)} too` });

/** What a recipe's form asks for beside its lines. */
export const RECIPE = {
  name: field(word, z.string().trim().min(1, "a recipe needs a name").max(80, "a name has at most 80 letters"), {
    label: "Name",
    heading: "recipe",
  }),
  unit: field(word, z.string().trim().min(1, "say what one of it is: a piece, a foot"), {
    absent: "piece",
    label: "One of it is a",
    hint: "A piece, or a foot of garland.",
  }),
};

const origin = field(prose, z.string(), { absent: "own", label: "Origin" });

/**
 * A line of a recipe a row; the rows of one recipe agree in `unit` and `origin`. Absent or empty: `unit` is "piece", `colours`
 * "palette", and nothing is asked of the stem. Without a column `origin` it is "own".
 */
export const RECIPE_SHEET = { ...RECIPE, ...RECIPE_LINE, origin };

const recipeLineSchema = recordSchema(RECIPE_LINE);
export type RecipeLine = z.infer<typeof recipeLineSchema>;

/** A piece of event work and the stems that one of it takes. `unit` says what one is: a piece, or a foot of garland. */
export const recipeSchema = recordSchema({ id: rowId("Id"), ...RECIPE, origin }).extend({
  lines: z.array(recipeLineSchema).min(1, "a recipe needs at least one line of stems"),
});
export type Recipe = z.infer<typeof recipeSchema>;
