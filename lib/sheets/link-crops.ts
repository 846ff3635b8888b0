import type { CropRecord, CurveRecord, RecipeRecord, VarietyRecord } from "#lib/domain/farm-records";
import { nameKey } from "#lib/domain/nearest-name";
import { KEY_HEADING, type KeptRow } from "./known-farm";
import type { NameBook } from "./name-book";
import { lettersOfKey } from "./row-key";
import { placeInWords } from "./sheet-problem";
import { linkRows, type SheetRow, type SheetRows } from "./sheet-rows";
import type { VarietyBook } from "./variety-book";

/** What a thing of the farm is called there, from the row that a row of its sheet stands for. */
const keptName = (kept: KeptRow | null): string | null => {
  const row = kept?.row;
  return typeof row === "object" && row !== null && "name" in row ? String(row.name) : null;
};

/** What the farm calls the thing that a row renames by its key; null where it renames nothing. */
function renamedFrom({ record, kept, textIn }: SheetRow<{ readonly name: string }>): string | null {
  const before = keptName(kept);
  return before !== record?.name && textIn(KEY_HEADING).trim() !== "" ? before : null;
}

/** What is wrong when a row gives a thing of the farm the name of another there; asked before any row of the sheet has renamed one. */
function anothersName(name: string, kept: KeptRow | null, book: NameBook): string | null {
  const before = keptName(kept);
  return before !== null && nameKey(before) !== nameKey(name) && book.isOnFarm(name)
    ? `another is called "${name}" on the farm already: name this one otherwise`
    : null;
}

/**
 * Enters the name of every row into the book, also of the rows that are wrong, and refuses a second row of one name. A row with the key of
 * a thing of the farm renames it, unless another has that name.
 */
export function enterNames<T extends { readonly name: string }>(
  sheet: SheetRows<T>,
  column: string,
  book: NameBook,
): SheetRows<T> {
  for (const { record, textIn, place } of sheet.rows) if (record === null) book.enter(textIn(column), place, false);
  const taken = new Map(
    sheet.rows.map(({ record, kept, place }) => [place, record && anothersName(record.name, kept, book)]),
  );
  noteOldNames(sheet, book);
  return linkRows(sheet, (record, say, row) => {
    const before = renamedFrom(row);
    const anothers = taken.get(row.place);
    const twice = book.enter(record.name, row.place, true);
    if (anothers) say(column, anothers);
    else if (twice) say(column, twice);
    else if (before !== null) book.rename(before, record.name, row.place);
    return inBookSpelling(record, book);
  });
}

/** Rows that are called otherwise than when they went out: after a first import the farm knows the new name alone, and the file's other sheets say the old one. */
function noteOldNames({ rows }: SheetRows<{ readonly name: string }>, book: NameBook): void {
  for (const { record, textIn } of rows) {
    const letters = lettersOfKey(textIn(KEY_HEADING));
    if (record && letters !== null) book.goneOutAs(letters, record.name);
  }
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
  const firstOfKept = new Map<number, SheetRow<RecipeRecord>>();
  for (const row of sheet.rows)
    if (row.record && row.kept && !firstOfKept.has(row.kept.id)) firstOfKept.set(row.kept.id, row);
  noteOldNames(sheet, recipes);
  const agreed = linkRows(sheet, (record, say, row) => {
    const first = firstOf.get(keyOf(row));
    const anothers = anothersName(record.name, row.kept, recipes);
    if (anothers) say("recipe", anothers);
    const other = row.kept && firstOfKept.get(row.kept.id);
    if (other?.record && keyOf(other) !== keyOf(row))
      say(
        "recipe",
        `${placeInWords(other.place)} calls the same recipe "${other.record.name}": write one name on all its lines, or empty the key for a new recipe`,
      );
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
  for (const row of agreed.rows) {
    const before = renamedFrom(row);
    const isWrong = wrongRows.has(keyOf(row));
    if (row.record && !isWrong && before !== null) recipes.rename(before, row.record.name, row.place);
    else recipes.enter(row.record?.name ?? row.textIn("recipe"), row.place, !isWrong);
  }
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

/** Varieties of known crops, each with one colour, which a row of its own may change. Writing the same variety twice does no harm: the last row says what it is like. */
export function linkVarieties(
  sheet: SheetRows<VarietyRecord>,
  crops: NameBook,
  varieties: VarietyBook,
): SheetRows<VarietyRecord> {
  const linked = linkRows(sheet, (record, say, { place, kept, textIn }) => {
    const crop = crops.find(record.crop);
    if (!crop.ok) {
      say("crop", crop.message);
      return null;
    }
    const letters = lettersOfKey(textIn(KEY_HEADING));
    if (letters !== null) varieties.goneOutAs(letters, crop.name, record.variety);
    const before = kept && (kept.row as VarietyRecord);
    if (before && varieties.change({ ...record, crop: crop.name }, before, place))
      return { ...record, crop: crop.name };
    if (before && nameKey(before.variety) !== nameKey(record.variety) && varieties.has(crop.name, record.variety)) {
      say("variety", `another of ${crop.name} is called "${record.variety}" already: name this one otherwise`);
      return null;
    }
    const met = varieties.meet(crop.name, record.variety, record.colour);
    if (met.ok) varieties.enter(met.variety, place);
    else say(met.column, met.message);
    return met.ok ? { ...record, ...met.variety } : null;
  });
  for (const { record, textIn, place } of linked.rows)
    if (record === null) varieties.enterWrong(textIn("crop"), textIn("variety"), place);
  return linked;
}

/** Curves of known crops and varieties: one for each crop, variety, planting and treatment. */
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
    const key = JSON.stringify([crop.name, variety, record.planting, record.treatment]);
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
