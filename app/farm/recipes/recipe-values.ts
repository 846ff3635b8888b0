import type { Parsed } from "#lib/domain/problem";
import type { Manner } from "#lib/domain/records/form";
import { RECIPE, RECIPE_LINE, type Recipe, type RecipeLine, recipeSchema } from "#lib/domain/records/recipe";
import type { FormValues } from "../../ui/form-values";

/** A recipe as its form says, its lines in "lines[0].role" and so on. Lines that differ from `before` are the farm's own. */
export function readRecipe(values: FormValues, manner: Manner, before: Recipe | undefined): Parsed<Omit<Recipe, "id">> {
  const head = values.record(RECIPE, manner);
  const lines: RecipeLine[] = [];
  for (let index = 0; values.text(`lines[${index}].role`) !== ""; index++) {
    const line = values.record(RECIPE_LINE, manner, { root: `lines[${index}].` });
    if (line.ok) lines.push(line.parsed);
  }
  if (!head.ok) return values.refusal();
  const isAsBefore = before !== undefined && JSON.stringify(lines) === JSON.stringify(before.lines);
  const origin = isAsBefore ? before.origin : "own";
  return values.parse(recipeSchema.omit({ id: true }), { ...head.parsed, lines, origin });
}
