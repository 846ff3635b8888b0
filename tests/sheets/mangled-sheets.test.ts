import fc from "fast-check";
import { expect, test } from "vitest";
import { farmSheets, sheetsOfRecords } from "#lib/sheets/farm-sheets";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { anyFarm } from "./any-farm";
import { KNOWN } from "./known-farm";

/** Sheets of any farm with cells and lines spoilt at random: what a hurried afternoon in a spreadsheet does to them. */
const SEED = 73;

const spoiling = fc.record({
  sheet: fc.nat(),
  line: fc.nat(),
  cell: fc.nat(),
  with: fc.constantFrom("", "x", "-1", "1e9", '"', "D8", "Dahlia", "2027-02-30", "a / / b", "1,5", "yes", "focal"),
  how: fc.constantFrom("cell", "cell", "cell", "cell", "drop", "twice", "short"),
});
type Spoiling = typeof spoiling extends fc.Arbitrary<infer T> ? T : never;

function spoil(sheets: { name: string; text: string }[], { sheet, line, cell, how, with: word }: Spoiling) {
  const target = sheets[sheet % sheets.length];
  if (!target) return sheets;
  const lines = target.text.split("\r\n");
  const at = line % lines.length;
  const cells = (lines[at] ?? "").split(",");
  cells[cell % cells.length] = word;
  const spoilt = { cell: [cells.join(",")], drop: [], twice: [lines[at], lines[at]], short: ["x"] }[how];
  const text = [...lines.slice(0, at), ...spoilt, ...lines.slice(at + 1)].join("\r\n");
  return sheets.map((other) => (other === target ? { ...target, text } : other));
}

const mangled = fc
  .tuple(anyFarm, fc.array(spoiling, { minLength: 1, maxLength: 6 }))
  .map(([farm, spoilings]) => spoilings.reduce(spoil, farmSheets(farm)));

const MENDS = /\b(write|mend|take|keep|add|name|fill|put|save|close|double|change|choose)\b/;

const NOT_OURS = /Invalid (input|option)|undefined|NaN|\[object/;

test("every problem has a file, a line of it, what is wrong and how to mend it, in our own words", () => {
  let problemCount = 0;
  fc.assert(
    fc.property(mangled, (files) => {
      const lineCounts = new Map(files.map(({ name, text }) => [name, text.split(/\r\n|\n|\r/).length]));
      const { problems } = readFarmSheets(files, KNOWN);
      const isHelpful = ({ file, line, message }: (typeof problems)[number]) =>
        line >= 1 && line <= (lineCounts.get(file ?? "") ?? 0) && MENDS.test(message) && !NOT_OURS.test(message);
      expect(problems.filter((problem) => !isHelpful(problem))).toEqual([]);
      problemCount += problems.length;
    }),
    { seed: SEED, numRuns: 150 },
  );
  expect(problemCount).toBeGreaterThan(250);
});

test("each row is clean or has a problem of its own, unless its header lacks a column", () => {
  fc.assert(
    fc.property(mangled, (files) => {
      const { problems, rowCount, cleanRowCount } = readFarmSheets(files, KNOWN);
      if (problems.some(({ message }) => /needs a column|no sheet has|is opened here|stands behind/.test(message)))
        return;
      const headers = /has no column|stands twice: only|has no name|sheet is empty/;
      const rows = problems.filter(({ message }) => !headers.test(message));
      const badRows = new Set(rows.map(({ file, line }) => `${file}:${line}`));
      expect(badRows.size + cleanRowCount).toBe(rowCount);
    }),
    { seed: SEED, numRuns: 150 },
  );
});

test("what comes through stands on its own: written as sheets, it is read again without a problem", () => {
  fc.assert(
    fc.property(mangled, (files) => {
      const { records } = readFarmSheets(files, KNOWN);
      const again = readFarmSheets(sheetsOfRecords(records), KNOWN);
      expect(again.problems).toEqual([]);
      expect(again.records).toEqual(records);
    }),
    { seed: SEED, numRuns: 150 },
  );
});
