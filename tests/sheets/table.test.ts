import fc from "fast-check";
import { expect, test } from "vitest";
import { delimiterOf, readTable } from "#lib/sheets/table";

const SEED = 71;
const linesOf = (rows: readonly { line: number }[]) => rows.map(({ line }) => line);

test("rows carry the line they start on, past blank lines and line breaks in quotes", () => {
  const table = readTable('\n\nbed,note\n\nD1,"wet\nat the\nend"\n,,\n  \nD2,dry\n');
  expect(table.headerLine).toBe(3);
  expect(table.rows).toEqual([
    { line: 5, cells: ["D1", "wet\nat the\nend"] },
    { line: 10, cells: ["D2", "dry"] },
  ]);
  expect(table.problems).toEqual([]);
});

test("comma, semicolon and tab are told apart by the header, outside quotes", () => {
  expect(delimiterOf("a,b,c\n1;2;3;4;5\n")).toBe(",");
  expect(delimiterOf("a;b;c\n1,5;2,5;3,5\n")).toBe(";");
  expect(delimiterOf("a\tb\n")).toBe("\t");
  expect(delimiterOf('"a,b,c,d";e;f\n')).toBe(";");
  expect(delimiterOf("alone\n")).toBe(",");
});

test("CRLF and LF may be mixed, and CR alone ends lines where there is no other", () => {
  expect(readTable('a,b\r\n1,"x\r"\n3,4\r\n').rows).toEqual([
    { line: 2, cells: ["1", "x\r"] },
    { line: 4, cells: ["3", "4"] },
  ]);
  expect(readTable("a,b\r1,2\r3,4").rows.map(({ cells }) => cells)).toEqual([
    ["1", "2"],
    ["3", "4"],
  ]);
});

test("a quote that never closes is a problem of its line, and the lines after it are still read", () => {
  const table = readTable('bed,note\nD1,ok\nD2,"open\nD3,ok\nD4,"open too\nD5,ok\n');
  expect(table.problems.map(({ line, message }) => [line, message.slice(0, 23)])).toEqual([
    [3, "text stands behind a cl"],
    [5, "a quote is opened here "],
  ]);
  expect(linesOf(table.rows)).toEqual([2, 4, 6]);
});

test("text behind a closing quote is a problem of its line alone", () => {
  const table = readTable('bed,note\n"D1"x,ok\nD2,"a "quoted" word"\nD3,6" pots\n');
  expect(linesOf(table.problems)).toEqual([2, 3]);
  expect(table.rows).toEqual([{ line: 4, cells: ["D3", '6" pots'] }]);
});

test("the problem of a quote stands where the cell opens, not where its row does", () => {
  const table = readTable('a,b,c\n"one\ntwo","three\nfour"five,six\n7,8,9\n');
  expect(table.problems[0]?.line).toBe(3);
  expect(table.rows.at(-1)).toEqual({ line: 5, cells: ["7", "8", "9"] });
});

test("a file mangled throughout is given up after 25 bad quotes, and says so", () => {
  const table = readTable(`a,b\n${'x,"y"z\n'.repeat(5000)}`);
  expect(table.problems).toHaveLength(26);
  expect(table.problems.at(-1)?.message).toMatch(/mend those first/);
});

test("short and long rows are problems that name both counts", () => {
  const table = readTable("a,b,c\n1,2\n1,2,3,4\n1,2,3\n");
  expect(table.problems.map(({ line, message }) => [line, message])).toEqual([
    [
      2,
      "this row has 2 cells and the header 3: fill the row up with empty cells, and check that no delimiter was lost",
    ],
    [
      3,
      "this row has 4 cells and the header 3: put cells that contain the delimiter in quotes, or take the extra cells out",
    ],
  ]);
  expect(linesOf(table.rows)).toEqual([4]);
});

test("columns without a name or a value, as spreadsheets leave behind, are dropped", () => {
  expect(readTable("a,b,,\n1,2,,\n")).toMatchObject({ header: ["a", "b"], rows: [{ line: 2, cells: ["1", "2"] }] });
  expect(readTable("a,b,\n1,2,3\n").header).toEqual(["a", "b", ""]);
});

test("an empty file and a header with a bad quote are one problem each, and no rows", () => {
  expect(readTable("\n \n")).toMatchObject({ header: [], rows: [], problems: [{ line: 1 }] });
  expect(readTable('\uFEFF"bed"x,note\nD1,ok\n')).toMatchObject({ header: [], rows: [], problems: [{ line: 1 }] });
});

test("no text makes the reader throw, and each line of rows and problems lies in the file", () => {
  const letter = fc.constantFrom('"', ",", ";", "\t", "\n", "\r", "a", " ", "\uFEFF");
  fc.assert(
    fc.property(fc.string({ unit: letter, maxLength: 60 }), (text) => {
      const table = readTable(text);
      const lineCount = text.split(/\r\n|\n|\r/).length;
      const lines = [...linesOf(table.rows), ...linesOf(table.problems)];
      expect(lines.every((line) => line >= 1 && line <= lineCount)).toBe(true);
      expect(table.rows.every(({ cells }) => cells.length === table.header.length)).toBe(true);
      expect(new Set(linesOf(table.rows)).size).toBe(table.rows.length);
    }),
    { seed: SEED, numRuns: 2000 },
  );
});
