import { strToU8, zipSync } from "fflate";
import { FIRST_ZIP_TIME } from "../zip-sheets";
import { heldLetters } from "./held-letters";

/** What stands in a cell: a text, a number, or the serial number of a day. An empty text leaves it empty. */
export type WrittenCell = string | number | { readonly serial: number };

/** A sheet to be written: its name, the names of its columns, and its rows. */
export type WrittenSheet = {
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly WrittenCell[])[];
};

/**
 * A workbook in the open format of spreadsheets: a sheet for each, its column names in bold and always in sight, days as days and numbers as numbers.
 * Nothing in it is a formula. The same sheets give the same bytes.
 *
 * Source: ECMA-376 Part 1, 18.2 (workbook), 18.3 (worksheet), 18.8 (styles); Part 2, 9 (content types and relationships)
 */
export function workbookOf(sheets: readonly WrittenSheet[]): Uint8Array<ArrayBuffer> {
  const parts: Record<string, string> = {
    "[Content_Types].xml": contentTypes(sheets.length),
    "_rels/.rels": relations([{ type: "officeDocument", target: "xl/workbook.xml" }]),
    "xl/workbook.xml": book(sheets),
    "xl/_rels/workbook.xml.rels": relations([
      ...sheets.map((_, index) => ({ type: "worksheet", target: `worksheets/sheet${index + 1}.xml` })),
      { type: "styles", target: "styles.xml" },
    ]),
    "xl/styles.xml": STYLES,
  };
  for (const [index, sheet] of sheets.entries()) parts[`xl/worksheets/sheet${index + 1}.xml`] = worksheet(sheet);
  const bytes = Object.entries(parts).map(([path, xml]) => [path, strToU8(HEAD + xml)]);
  return zipSync(Object.fromEntries(bytes), { level: 6, mtime: FIRST_ZIP_TIME });
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Styles by their place: as it stands, a column's name, a day (number format 14, which each program shows in its reader's own way). */
const [HEADING, DAY] = [1, 2];
const STYLES = `<styleSheet xmlns="${MAIN}">\
<fonts count="2"><font><sz val="11"/><name val="Arial"/></font><font><b/><sz val="11"/><name val="Arial"/></font></fonts>\
<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>\
<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>\
<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>\
<cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>\
<xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/>\
<xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs>\
<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

const contentTypes = (sheetCount: number): string =>
  `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
  `<Default Extension="xml" ContentType="application/xml"/>` +
  `<Override PartName="/xl/workbook.xml" ContentType="${SHEET_TYPE}.sheet.main+xml"/>` +
  `<Override PartName="/xl/styles.xml" ContentType="${SHEET_TYPE}.styles+xml"/>` +
  Array.from(
    { length: sheetCount },
    (_, index) =>
      `<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ContentType="${SHEET_TYPE}.worksheet+xml"/>`,
  ).join("") +
  "</Types>";

const relations = (targets: readonly { type: string; target: string }[]): string =>
  `<Relationships xmlns="${PACKAGE}/relationships">${targets
    .map(({ type, target }, index) => `<Relationship Id="r${index + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`)
    .join("")}</Relationships>`;

const book = (sheets: readonly WrittenSheet[]): string =>
  `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets
    .map(({ name }, index) => `<sheet name="${escaped(name)}" sheetId="${index + 1}" r:id="r${index + 1}"/>`)
    .join("")}</sheets></workbook>`;

function worksheet({ headings, rows }: WrittenSheet): string {
  const head = headings.map((heading, column) => cell(heading, 1, column, HEADING)).join("");
  const lines = rows.map(
    (row, index) => `<row r="${index + 2}">${row.map((one, column) => cell(one, index + 2, column)).join("")}</row>`,
  );
  return (
    `<worksheet xmlns="${MAIN}"><sheetViews><sheetView workbookViewId="0">` +
    `<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>` +
    `<cols>${widths(headings, rows)}</cols><sheetData><row r="1">${head}</row>${lines.join("")}</sheetData></worksheet>`
  );
}

function cell(one: WrittenCell, line: number, column: number, style = 0): string {
  if (one === "") return "";
  const place = `r="${letters(column)}${line}"${style > 0 ? ` s="${style}"` : ""}`;
  if (typeof one === "number") return `<c ${place}><v>${one}</v></c>`;
  if (typeof one === "object") return `<c ${place} s="${DAY}"><v>${one.serial}</v></c>`;
  return `<c ${place} t="inlineStr"><is><t xml:space="preserve">${escaped(heldLetters(one))}</t></is></c>`;
}

/** Columns as wide as what stands in them, in letters; a long note has no more than a line's width. */
const [LEAST_LETTERS, MOST_LETTERS] = [8, 48];

function widths(headings: readonly string[], rows: WrittenSheet["rows"]): string {
  return headings
    .map((heading, column) => {
      const longest = rows.reduce((most, row) => Math.max(most, lengthOf(row[column])), heading.length);
      const width = Math.min(MOST_LETTERS, Math.max(LEAST_LETTERS, longest)) + 2;
      return `<col min="${column + 1}" max="${column + 1}" width="${width}" customWidth="1"/>`;
    })
    .join("");
}

const lengthOf = (one: WrittenCell | undefined): number =>
  typeof one === "string" ? one.length : typeof one === "number" ? String(one).length : 10;

/** The name of a column by its place, from 0: "A", "Z", "AA". */
function letters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);
