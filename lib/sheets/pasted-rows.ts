import Papa from "papaparse";
import type { PieceRecord, StemLineRecord } from "#lib/domain/farm-records";
import { nameKey } from "#lib/domain/nearest-name";
import { MOST_PROBLEMS } from "#lib/domain/problem";
import type { DecimalMark } from "#lib/domain/read-number";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Fields } from "#lib/domain/records/field";
import { nameOf } from "#lib/domain/records/names";
import { PIECE_SHEET } from "#lib/domain/records/piece";
import { columnsOf } from "#lib/domain/records/sheets";
import { STEM_SHEET } from "#lib/domain/records/stem-line";
import { ROLES, type Role } from "#lib/domain/words";
import type { Writing } from "#lib/domain/writing";
import { type ColumnProblem, readCell, readRow } from "./columns";
import { asMeant } from "./csv-text";
import { cropBook, type NameBook, recipeBook } from "./name-book";
import type { SheetProblem } from "./sheet-problem";
import { type Delimiter, type SplitRow, splitRows } from "./split-rows";
import { delimiterOf } from "./table";

/** The file that the problems of pasted rows name. */
const PASTED = "pasted rows";

/**
 * Rows pasted into a booking, by name. `problems` name the line of the pasted text; `unread` holds the rows that have one, as text to
 * be mended and pasted again.
 */
export type PastedRows = {
  readonly pieces: readonly PieceRecord[];
  readonly stemLines: readonly StemLineRecord[];
  readonly problems: readonly SheetProblem[];
  readonly unread: string;
};

/** The farm whose booking the rows are pasted into: how it writes, and its recipes and crops by name. */
type PastedOnto = { readonly farm: Farm; readonly recipes: readonly string[]; readonly crops: readonly string[] };

/** What a row may say, cell by cell; what stands last may be left out. */
const PIECE = { piece: nameOf("Piece"), pieceCount: PIECE_SHEET.pieceCount, colours: PIECE_SHEET.colours };
const STEMS = {
  role: STEM_SHEET.role,
  stemCount: STEM_SHEET.stemCount,
  colours: STEM_SHEET.colours,
  crop: STEM_SHEET.crop,
};

const HEADER_WORDS = ["piece", "pieces", "recipe", "role", "item"];

/**
 * Reads rows pasted from a spreadsheet (cells parted by tabs, or commas or semicolons as typed): "piece, count, colours" or "role,
 * stems, colours, crop"; colours and crop may be left out, and a header row is passed over. A row that starts with a role asks for
 * stems, any other for pieces of the recipe it names. Colours are parted by "/" or ",".
 *
 * @param known  the recipes and crops of the farm, by name, and its decimal mark
 */
export function readPastedRows(text: string, known: PastedOnto): PastedRows {
  const delimiter = pastedDelimiter(text, known.farm.decimalMark);
  const split = splitRows(text, delimiter);
  const recipes = recipeBook(known.recipes, "the farm's recipes");
  const crops = cropBook(known.crops, "the farm's crops");
  const pieces: PieceRecord[] = [];
  const stemLines: StemLineRecord[] = [];
  const problems: SheetProblem[] = [];
  const unread: SplitRow[] = [];
  const textLines = text.split(/\r\n|\n|\r/);
  for (const { line, message } of split.problems) {
    problems.push({ file: PASTED, line, column: null, message });
    unread.push({ line, cells: (textLines[line - 1] ?? "").split(delimiter) });
  }
  split.rows.forEach(({ line, cells }, index) => {
    const written = { line, cells: cells.map(asMeant) };
    const row = { line, cells: nameFirst(written.cells) };
    const first = nameKey(row.cells[0] ?? "");
    if (index === 0 && HEADER_WORDS.includes(first)) return;
    const role = recipes.isOnFarm(first) ? null : readCell(STEM_SHEET.role, first);
    const found = role?.ok ? readStems(role.value, row, crops, known.farm) : readPiece(row, recipes, known.farm);
    if ("recipe" in found) pieces.push(found);
    else if ("role" in found) stemLines.push(found);
    else {
      for (const problem of found.problems) problems.push({ file: PASTED, line: row.line, ...problem });
      unread.push(written);
    }
  });
  unread.sort((a, b) => a.line - b.line);
  problems.sort((a, b) => a.line - b.line);
  return {
    pieces,
    stemLines,
    problems: problems.slice(0, MOST_PROBLEMS),
    unread: Papa.unparse(
      unread.map(({ cells }) => [...cells]),
      { delimiter, newline: "\n" },
    ),
  };
}

/** Cells of a spreadsheet are parted by tabs; where the comma is the decimal mark, a semicolon comes before it. */
function pastedDelimiter(text: string, mark: DecimalMark): Delimiter {
  if (text.includes("\t")) return "\t";
  return mark === "comma" && text.includes(";") ? ";" : delimiterOf(text);
}

const IS_COUNT = /^[x×]?\s*\d[\d.,]*\s*[x×]?$/i;

/** A count may stand before the name it counts, as on a list of what to make: "12 | Low centrepiece". */
const nameFirst = ([first = "", second = "", ...rest]: readonly string[]): string[] =>
  IS_COUNT.test(first.trim()) && second.trim() !== "" && !IS_COUNT.test(second.trim())
    ? [second, first.replace(/[x×\s]/gi, ""), ...rest]
    : [first, second.replace(/^\s*[x×]\s*|\s*[x×]\s*$/gi, ""), ...rest];

type Refused = { readonly problems: readonly ColumnProblem[] };

function readPiece(row: SplitRow, recipes: NameBook, writing: Writing): PieceRecord | Refused {
  const { row: read, problems } = readCells(PIECE, row, writing);
  const recipe = recipes.find(row.cells[0] ?? "");
  const all = recipe.ok
    ? problems
    : [{ column: "piece", message: `${recipe.message} (or start with a role: ${ROLES.join(", ")})` }, ...problems];
  if (!read || !recipe.ok || all.length) return { problems: all };
  return { recipe: recipe.name, pieceCount: read.pieceCount, colours: read.colours };
}

function readStems(role: Role, row: SplitRow, crops: NameBook, writing: Writing): StemLineRecord | Refused {
  const { row: read, problems } = readCells(STEMS, row, writing);
  const cropText = row.cells[3]?.trim() ?? "";
  const crop = cropText === "" ? null : crops.find(cropText);
  const all = crop && !crop.ok ? [...problems, { column: "crop", message: crop.message }] : problems;
  if (!read || all.length) return { problems: all };
  const { colours, stemCount } = read;
  return { role, crop: crop?.ok ? crop.name : null, cropOnly: false, asks: [], colours, stemCount };
}

/** Reads the cells of a row in the order of `fields`; cells left out at the end are empty. */
function readCells<F extends Fields>(fields: F, { cells }: SplitRow, writing: Writing) {
  const names = columnsOf(fields).map(({ heading }) => heading);
  const reading = readRow(fields, (column) => cells[names.indexOf(column)] ?? "", writing);
  const extra = cells.slice(names.length).filter((cell) => cell.trim() !== "");
  if (extra.length === 0) return reading;
  const message = `"${extra.join('", "')}" is more than a row takes: write ${names.join(", ")}, with several colours in one cell, parted by "/"`;
  return { row: null, problems: [...reading.problems, { column: null, message }] };
}
