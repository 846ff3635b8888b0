import { MOST_LINES, type SplitRow } from "../split-rows";
import { MOST_COLUMNS } from "../table";
import type { Shown } from "./cell-styles";
import { meantLetters } from "./held-letters";
import { type Room, TooMuch } from "./room";
import { type DateSystem, serialDay } from "./serial-day";
import { walkXml } from "./walk-xml";

/** A cell that cannot be read, or a sheet with too much in it. */
export type WorksheetProblem = { readonly line: number; readonly message: string };

type About = {
  readonly texts: readonly string[];
  readonly shownAs: (style: number) => Shown;
  readonly system: DateSystem;
  readonly room: Room;
};

type Cell = { column: number; type: string; style: number; value: string | null; inline: string; hasFormula: boolean };

/** More letters than any column of a farm's sheet is found behind. */
const CELL_PLACE = /^([A-Z]{1,3})(\d{1,7})$/;

/**
 * The rows of a worksheet, as many cells each as reach its last one, with the line that the program numbers it with. Throws TooMuch where it has more
 * rows, cells, letters or cells that cannot be read than any farm.
 */
export function readWorksheet(xml: string, about: About) {
  const rows: SplitRow[] = [];
  const problems: WorksheetProblem[] = [];
  let line = 0;
  let cellCount = 0;
  let cells: string[] = [];
  let cell: Cell | null = null;
  let lastColumn = -1;
  let into: "value" | "inline" | null = null;
  let spokenDepth = 0;
  const put = (one: Cell) => {
    lastColumn = one.column;
    if (one.column >= MOST_COLUMNS) {
      if (one.value || one.inline)
        problems.push({
          line,
          message: `a cell stands beyond column ${MOST_COLUMNS}: take it out, or move it further left`,
        });
      return;
    }
    const { text, problem } = textOf(one, about);
    about.room.take(text.length);
    if (problem) problems.push({ line, message: problem });
    while (cells.length < one.column) cells.push("");
    cells[one.column] = text;
  };
  walkXml(xml, {
    open: (name, attributes) => {
      if (name === "row") {
        line = Number(attributes.r) || line + 1;
        cells = [];
        lastColumn = -1;
      } else if (name === "c")
        cell = {
          column: columnIn(attributes.r) ?? lastColumn + 1,
          type: attributes.t ?? "n",
          style: Number(attributes.s ?? 0),
          value: null,
          inline: "",
          hasFormula: false,
        };
      else if (name === "f" && cell) cell.hasFormula = true;
      else if (name === "v") into = "value";
      else if (name === "rPh") spokenDepth += 1;
      else if (name === "t" && spokenDepth === 0) into = "inline";
    },
    text: (text) => {
      if (cell && into === "value") cell.value = (cell.value ?? "") + text;
      if (cell && into === "inline") cell.inline += text;
    },
    close: (name) => {
      into = null;
      if (name === "rPh") spokenDepth -= 1;
      if (name === "c" && cell) {
        put(cell);
        cell = null;
      }
      if (name === "row") cellCount += cells.length;
      if (name === "row" && cells.some((text) => text.trim() !== "")) rows.push({ line, cells });
      if (rows.length > MOST_LINES || problems.length > MOST_LINES || cellCount > MOST_CELLS) throw new TooMuch();
    },
  });
  return { rows, problems };
}

/** Cells of a sheet, the empty ones before the last of a row too. */
const MOST_CELLS = 2_000_000;

function columnIn(place: string | undefined): number | null {
  const [, letters] = CELL_PLACE.exec(place ?? "") ?? [];
  if (!letters) return null;
  return [...letters].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function textOf(
  { type, style, value, inline, hasFormula }: Cell,
  { texts, shownAs, system }: About,
): { readonly text: string; readonly problem?: string } {
  if (type === "inlineStr") return { text: meantLetters(inline) };
  if (value === null)
    return hasFormula
      ? {
          text: "",
          problem: "a formula here has no value kept with it: open the workbook, save it, and bring it again",
        }
      : { text: "" };
  if (type === "s") return textNumbered(texts[Number(value)]);
  if (type === "b") return { text: value === "1" ? "yes" : "no" };
  if (type === "e") return { text: "", problem: `the cell says ${value}: mend its formula, or write the value` };
  if (type === "d") return { text: value.replace(/T00:00(:00(\.0+)?)?Z?$/, "") };
  const number = Number(value);
  if (type !== "n" || value.trim() === "" || !Number.isFinite(number)) return { text: value };
  const shown = shownAs(style);
  if (shown === "percent") return { text: `${numberText(Number((number * 100).toPrecision(TRUE_DIGITS)))}%` };
  return { text: (shown === "day" ? serialDay(number, system) : null) ?? numberText(number) };
}

const textNumbered = (text: string | undefined) =>
  text === undefined
    ? { text: "", problem: "the cell names a text that the workbook does not have: write it again" }
    : { text };

/** 0.07 must become 7 % and not 7.000000000000001 %. */
const TRUE_DIGITS = 12;

/** A number as our reader takes it whatever decimal mark the farm writes: three decimals alone could be thousands, so a nought is put behind. */
const numberText = (number: number): string => {
  const text = String(number);
  return /^-?\d{1,3}\.\d{3}$/.test(text) ? `${text}0` : text;
};
