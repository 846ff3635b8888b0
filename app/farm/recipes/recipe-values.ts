import { type Recipe, recipeSchema } from "#lib/domain/booking";
import type { Parsed } from "#lib/domain/problem";
import type { FormValues } from "../../ui/form-values";

const recipeDraftSchema = recipeSchema.omit({ id: true });

/** A recipe as its form says, its lines in "lines[0].role" and so on. Lines that differ from `before` are the farm's own. */
export function readRecipe(values: FormValues, before: Recipe | undefined): Parsed<Omit<Recipe, "id">> {
  const lines: { role: string; stemsPerPiece: number; colours: string }[] = [];
  for (let at = "lines[0]"; values.text(`${at}.role`) !== ""; at = `lines[${lines.length}]`)
    lines.push({
      role: values.text(`${at}.role`),
      stemsPerPiece: values.number(`${at}.stemsPerPiece`),
      colours: values.text(`${at}.colours`),
    });
  const isAsBefore = before !== undefined && JSON.stringify(lines) === JSON.stringify(before.lines);
  return values.parse(recipeDraftSchema, {
    name: values.text("name"),
    unit: values.text("unit"),
    lines,
    origin: isAsBefore ? before.origin : "own",
  });
}
