import type { CropRecord, CurveRecord, RecipeRecord, VarietyRecord } from "#lib/domain/farm-records";
import { nameKey } from "#lib/domain/nearest-name";
import type { NameBook } from "./name-book";
import { placeInWords } from "./sheet-problem";
import { linkRows, type SheetRow, type SheetRows } from "./sheet-rows";
import type { VarietyBook } from "./variety-book";

/**
 * Enters the name of every row into the book, also of the rows that are wrong, and refuses a second row of one name.
 */
export function enterNames<T extends { readonly name: string }>(
  sheet: SheetRows<T>,
  column: string,
  book: NameBook,
): SheetRows<T> {
  for (const { record, textIn, place } of sheet.rows) if (record === null) book.enter(textIn(column), place, false);
  return linkRows(sheet, (record, say, { place }) => {
    const twice = book.enter(record.name, place, true);
    if (twice) say(column, twice);
    return inBookSpelling(record, book);
  });
}

/** What replaces a thing of the farm takes the farm's spelling of its name. */
function inBookSpelling<T extends { readonly name: string }>(record: T, book: NameBook): T {
  const found = book.find(record.name);
  return found.ok ? { ...record, name: found.name } : record;
}

/** Crops, each name once. A crop that is on the farm already is replaced. */
export const linkCrops = (sheet: SheetRows<CropRecord>, crops: NameBook): SheetRows<CropRecord> =>
  enterNames(sheet, "crop", crops);

/**
 * Recipes: the rows of one name become one recipe, its lines in the order of the rows. A recipe with a wrong row is left out whole,
 * since half a recipe would ask for too few stems; its other rows say so.
 */
export function linkRecipes(sheet: SheetRows<RecipeRecord>, recipes: NameBook): SheetRows<RecipeRecord> {
  const keyOf = (row: SheetRow<RecipeRecord>) => nameKey(row.textIn("recipe"));
  const firstOf = new Map<string, SheetRow<RecipeRecord>>();
  for (const row of sheet.rows) if (row.record !== null && !firstOf.has(keyOf(row))) firstOf.set(keyOf(row), row);
  const agreed = linkRows(sheet, (record, say, row) => {
    const first = firstOf.get(keyOf(row));
    if (!first?.record) return record;
    const differs = (column: "unit" | "origin") => {
      if (first.record && record[column] !== first.record[column])
        say(
          column,
          `${column} is "${record[column]}" here and "${first.record[column]}" on ${placeInWords(first.place)}: write the same for every line of "${record.name}"`,
        );
    };
    differs("unit");
    differs("origin");
    return { ...record, name: first.record.name };
  });
  const wrongRows = new Map<string, SheetRow<RecipeRecord>>();
  for (const row of agreed.rows) if (row.record === null && !wrongRows.has(keyOf(row))) wrongRows.set(keyOf(row), row);
  for (const row of agreed.rows)
    recipes.enter(row.record?.name ?? row.textIn("recipe"), row.place, !wrongRows.has(keyOf(row)));
  return linkRows(agreed, (record, say, row) => {
    const wrong = wrongRows.get(keyOf(row));
    if (wrong)
      say(
        null,
        `left out, since another line of "${record.name}" has a problem: mend ${placeInWords(wrong.place)} first`,
      );
    return inBookSpelling(record, recipes);
  });
}

/** One recipe for each name, with the lines of all its rows. */
export function gatherRecipes(lines: readonly RecipeRecord[]): RecipeRecord[] {
  const recipes = new Map<string, RecipeRecord & { lines: RecipeRecord["lines"][number][] }>();
  for (const line of lines) {
    const recipe = recipes.get(line.name);
    if (recipe) recipe.lines.push(...line.lines);
    else recipes.set(line.name, { ...line, lines: [...line.lines] });
  }
  return [...recipes.values()];
}

/** Varieties of known crops, each with one colour. Writing the same variety twice does no harm. */
export function linkVarieties(
  sheet: SheetRows<VarietyRecord>,
  crops: NameBook,
  varieties: VarietyBook,
): SheetRows<VarietyRecord> {
  const linked = linkRows(sheet, (record, say, { place }) => {
    const crop = crops.find(record.crop);
    if (!crop.ok) {
      say("crop", crop.message);
      return null;
    }
    const met = varieties.meet(crop.name, record.variety, record.colour);
    if (met.ok) varieties.enter(met.variety, place);
    else say(met.column, met.message);
    return met.ok ? met.variety : null;
  });
  for (const { record, textIn, place } of linked.rows)
    if (record === null) varieties.enterWrong(textIn("crop"), textIn("variety"), place);
  return linked;
}

/** Curves of known crops and varieties: one for each crop, variety and treatment. */
export function linkCurves(
  sheet: SheetRows<CurveRecord>,
  crops: NameBook,
  varieties: VarietyBook,
): SheetRows<CurveRecord> {
  const seen = new Map<string, string>();
  return linkRows(sheet, (record, say, { place }) => {
    const crop = crops.find(record.crop);
    if (!crop.ok) {
      say("crop", crop.message);
      return null;
    }
    const met = record.variety === null ? null : varieties.meet(crop.name, record.variety, null);
    if (met && !met.ok) {
      say(met.column, met.message);
      return null;
    }
    const variety = met ? met.variety.variety : null;
    const key = JSON.stringify([crop.name, variety, record.treatment]);
    const earlier = seen.get(key);
    if (earlier)
      say(
        "treatment",
        `${crop.name} ${variety ?? ""} has a curve for ${record.treatment} on ${earlier} already: keep one of the two rows`,
      );
    else seen.set(key, placeInWords(place));
    return { ...record, crop: crop.name, variety };
  });
}
