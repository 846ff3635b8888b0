import { parse } from "csv-parse/sync";
import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { asMeant } from "#lib/sheets/csv-text";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { readTable } from "#lib/sheets/table";
import { anyFarm } from "../sheets/any-farm";

/**
 * The rules and examples of RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files", section 2,
 * https://www.rfc-editor.org/rfc/rfc4180, and csv-parse as a second reader that shares no code with ours.
 */
const SEED = 4180;

const cellsOf = (text: string) => {
  const { header, rows, problems } = readTable(text);
  expect(problems).toEqual([]);
  return [header, ...rows.map((row) => row.cells)];
};

const PLAIN = [
  ["aaa", "bbb", "ccc"],
  ["zzz", "yyy", "xxx"],
];

test("section 2, rule 1: each record stands on a line of its own, ended by CRLF", () => {
  expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).toEqual(PLAIN);
});

test("section 2, rule 2: the last record may or may not have an ending line break", () => {
  expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx")).toEqual(PLAIN);
});

test("section 2, rule 3: there may be a header line, with as many fields as the records", () => {
  const text = "field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n";
  expect(cellsOf(text)).toEqual([["field_name", "field_name", "field_name"], ...PLAIN]);
});

test("section 2, rule 4: spaces are part of a field, and each line has the same number of fields", () => {
  expect(cellsOf("aaa, bbb ,ccc\r\n")).toEqual([["aaa", " bbb ", "ccc"]]);
  const ragged = readTable("aaa,bbb,ccc\r\nzzz,yyy\r\n1,2,3\r\n1,2,3,4\r\n");
  expect(ragged.rows.map(({ line }) => line)).toEqual([3]);
  expect(ragged.problems.map(({ line }) => line)).toEqual([2, 4]);
});

test("section 2, rule 5: fields may be quoted or not; an unquoted field holds no quote in the files we write", () => {
  expect(cellsOf('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(PLAIN);
});

test("section 2, rule 6: line breaks, quotes and commas stand in quoted fields", () => {
  const text = '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx';
  expect(cellsOf(text)).toEqual([
    ["aaa", "b\r\nbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(readTable(text).rows.map(({ line }) => line)).toEqual([3]);
});

test("section 2, rule 7: a quote inside a quoted field is doubled", () => {
  expect(cellsOf('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
});

const cell = fc.oneof(
  { weight: 3, arbitrary: fc.string({ unit: fc.constantFrom('"', ",", ";", "\t", "\r", "\n", " ", "a", "é", "=") }) },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme" }) },
  { weight: 1, arbitrary: fc.constantFrom("\uFEFF", '"', '""', "\r\n", "x\r", "=1+1", "") },
);
const letters = fc.stringMatching(/^[a-z]{1,6}$/);
const table = fc.integer({ min: 1, max: 5 }).chain((width) =>
  fc.record({
    header: fc.array(letters, { minLength: width, maxLength: width }),
    rows: fc
      .array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 8 })
      .map((rows) => rows.filter((cells) => cells.some((text) => text.trim() !== ""))),
  }),
);
const writing = fc.record({
  delimiter: fc.constantFrom(",", ";", "\t"),
  newline: fc.constantFrom("\r\n", "\n"),
  isQuoted: fc.boolean(),
  mark: fc.constantFrom("", "\uFEFF"),
  end: fc.boolean(),
});

test("what we read is what csv-parse reads, for hundreds of tables of quotes, delimiters, line breaks and marks", () => {
  fc.assert(
    fc.property(table, writing, ({ header, rows }, { newline, isQuoted, mark, end, ...given }) => {
      // A header of one column shows no delimiter; the reader then takes the comma.
      const delimiter = header.length === 1 ? "," : given.delimiter;
      const body = Papa.unparse([header, ...rows], { delimiter, newline, quotes: isQuoted });
      const text = mark + body + (end ? newline : "");
      const theirs: string[][] = parse(text, { delimiter, bom: true, record_delimiter: ["\r\n", "\n"] });
      const filled = theirs.filter((cells) => cells.some((word) => word.trim() !== ""));
      const ours = readTable(text);
      expect(ours.problems).toEqual([]);
      expect([ours.header, ...ours.rows.map(({ cells }) => cells)]).toEqual(filled);
      expect(filled).toEqual([header, ...rows]);
    }),
    { seed: SEED, numRuns: 600 },
  );
});

test("line numbers count the line breaks of csv-parse's own records, also inside quotes", () => {
  fc.assert(
    fc.property(table, ({ header, rows }) => {
      const text = Papa.unparse([header, ...rows], { newline: "\n" });
      const breaks = (cells: readonly string[]) => cells.join("").match(/\r\n|\n|\r/g)?.length ?? 0;
      const records: string[][] = parse(text, { bom: true, record_delimiter: "\n" });
      let line = 1;
      const expected = records.map((cells) => {
        const start = line;
        line += 1 + cells.reduce((sum, word) => sum + breaks([word]), 0);
        return start;
      });
      expect(readTable(text).rows.map((row) => row.line)).toEqual(expected.slice(1));
    }),
    { seed: SEED, numRuns: 300 },
  );
});

test("csv-parse, at its strictest, reads every sheet we write: the columns and as many cells in every row", () => {
  fc.assert(
    fc.property(anyFarm, (farm) => {
      for (const { text } of farmSheets(farm)) {
        expect(text.endsWith("\r\n")).toBe(true);
        const records: string[][] = parse(text, { record_delimiter: "\r\n", relax_quotes: false });
        const ours = readTable(text);
        // The apostrophe that holds a cell which a spreadsheet would run is ours, not the standard's.
        const meant = records.map((cells) => cells.map(asMeant));
        expect([ours.header, ...ours.rows.map(({ cells }) => cells)]).toEqual(meant);
      }
    }),
    { seed: SEED, numRuns: 100 },
  );
});
