import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { asMeant, asText, csvText } from "#lib/sheets/csv-text";
import { readTable } from "#lib/sheets/table";

/*
 * OWASP ASVS 5.3.10 and the CSV Injection page of OWASP (https://owasp.org/www-community/attacks/CSV_Injection), both from memory: a cell that
 * starts with = + - @, a tab, CR or LF, or a wide form of those signs, may be run by a spreadsheet.
 */
const STARTS = ["=", "+", "-", "@", "\t", "\r", "\n", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"];

describe("a cell that a spreadsheet would run", () => {
  test.each(STARTS)("is written as text when it starts with %j, and reads back to what it was", (start) => {
    for (const text of [`${start}cmd|'/C calc'!A1`, `'${start}x`, `''${start}x`, start]) {
      expect(asText(text)).toBe(`'${text}`);
      expect(asMeant(asText(text))).toBe(text);
    }
    expect(asText("  =1+1")).toBe("'  =1+1");
  });

  test("is none when it is a number, a name in apostrophes, or has such a sign further on", () => {
    for (const text of ["-3", "+1.5", "1e-7", "'Karma'", "'", "", "rose-pink", "a=b", "2027-06-12", "grower@home"])
      expect([asText(text), asMeant(text)]).toEqual([text, text]);
  });
});

const cell = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.stringMatching(/^[ '=+@\t\r\n;,"-]{0,6}$/),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
);

test("whatever stands in the cells, the table reads back exactly, and no cell in the file could be run", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 6 }), (rows) => {
      const full = rows.map(([one, two]) => [`x${one}`, two]);
      const text = csvText([["first", "second"], ...full]);
      const { rows: read, problems } = readTable(text);
      expect(problems).toEqual([]);
      expect(read.map(({ cells }) => cells)).toEqual(
        full.map(([one, two]) => (read[0]?.cells.length === 1 ? [one] : [one, two])),
      );
      for (const [, two] of full) expect(asText(two)).not.toMatch(/^[=@\t\r\n]|^[+-](?![\d.])/);
    }),
    { seed: 710, numRuns: 2000 },
  );
});
