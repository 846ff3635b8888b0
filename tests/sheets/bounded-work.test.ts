import { describe, expect, test } from "vitest";
import { z } from "zod";
import { MOST_PROBLEMS, problemsOf } from "#lib/domain/problem";
import { field } from "#lib/domain/records/field";
import { colour, decimal, listOf, word } from "#lib/domain/records/kinds";
import { MOST_CELL_LETTERS, readCell } from "#lib/sheets/columns";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readPastedRows } from "#lib/sheets/pasted-rows";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { MOST_LINES } from "#lib/sheets/split-rows";
import { MOST_COLUMNS, readTable } from "#lib/sheets/table";
import { farm, recipe, snapshot } from "../small-farm";
import { KNOWN } from "./known-farm";

/*
 * What comes from outside costs work in proportion to its size and no more, and its answer stays readable. Counted, not timed: letters
 * of an answer, calls of a reader, problems of a list. (OWASP ASVS 5.1.4, 12.1.1, from memory.)
 */

const lettersOf = (answer: unknown) => JSON.stringify(answer).length;

describe("a cell", () => {
  test("longer than any of a farm is refused before it is looked into, and repeated only in part", () => {
    let readCount = 0;
    const counting = {
      ...word,
      read: (text: string) => {
        readCount += 1;
        return { ok: true, value: text } as const;
      },
    };
    const column = field(counting, z.string(), { label: "Counted" });
    const reading = readCell(column, "1".repeat(MOST_CELL_LETTERS + 1));
    expect(readCount).toBe(0);
    expect(reading.ok ? "" : reading.message).toMatch(/^"1{80}…" has 20001 letters: write at most 20000$/);
    readCell(column, "1".repeat(MOST_CELL_LETTERS));
    expect(readCount).toBe(1);
  });

  test("that lists ten thousand bad parts gives one short problem", () => {
    for (const text of ["/".repeat(10_000), "x/".repeat(5_000)]) {
      const reading = listOf(decimal).read(text);
      expect(reading.ok ? "" : reading.message).toMatch(/; and \d+ more like these$/);
      expect(lettersOf(reading)).toBeLessThan(2_000);
    }
  });

  test("with a colour looks through the farm's own names once, however many cells have one", () => {
    let askedCount = 0;
    const antiqueRose = {
      get name() {
        askedCount += 1;
        return "antique rose";
      },
      colour: "pink" as const,
    };
    const ownColours = [antiqueRose];
    const cells = ["Antique roses", "blush", "Antique-Rose"].map((text) => colour.read(text, { ownColours }));
    expect(cells).toEqual(["pink", "blush", "pink"].map((value) => ({ ok: true, value })));
    expect(askedCount).toBe(1);
  });
});

describe("a sheet", () => {
  test("of recipes looks at each row of the farm a few times, not once for every other recipe", () => {
    const timesAsked = (recipeCount: number) => {
      let askedCount = 0;
      const many = snapshot({
        recipes: Array.from({ length: recipeCount }, (_, index) => recipe({ id: index + 1, name: `Piece ${index}` })),
      });
      const { farm: settings, rows } = knownFarm(many);
      const counted = rows.recipes.map((row) => ({
        ...row,
        get id() {
          askedCount += 1;
          return row.id;
        },
      }));
      const reading = readFarmSheets(farmSheets(many), { farm: settings, rows: { ...rows, recipes: counted } });
      expect([reading.problems, reading.records]).toEqual([[], {}]);
      return askedCount;
    };
    expect(timesAsked(60)).toBeLessThanOrEqual(3 * timesAsked(20));
  });

  test("with more columns than any of a farm is refused whole, in one problem", () => {
    const { rows, problems } = readTable(
      `${Array.from({ length: MOST_COLUMNS + 1 }, (_, index) => `c${index}`).join(",")}\n`,
    );
    expect([rows.length, problems.length]).toEqual([0, 1]);
    expect(problems[0]?.message).toContain("201 columns");
  });

  test("with a hundred thousand empty columns left behind by a spreadsheet is read as if they were not there", () => {
    const commas = ",".repeat(100_000);
    const { header, rows, problems } = readTable(`bed,length_m${commas}\nA,1${commas}\n`);
    expect([header, rows.map(({ cells }) => cells), problems]).toEqual([["bed", "length_m"], [["A", "1"]], []]);
  });

  test("of 150,000 rows is read no further than 120,000 lines, says so, and nothing after it is read", () => {
    const text = `bed,length_m,width_m\n${Array.from({ length: 150_000 }, (_, index) => `b${index},1,1\n`).join("")}`;
    const { rows, problems } = readTable(text);
    expect(rows).toHaveLength(MOST_LINES - 1);
    expect(problems).toEqual([
      { line: MOST_LINES + 1, message: "more than 120000 lines: bring the rows in parts, and take empty ones out" },
    ]);
    const second = { name: "cooler.csv", text: "crop\n" };
    const third = { name: "farm.csv", text: "setting,value\n" };
    const read = readFarmSheets([{ name: "beds.csv", text }, second, third], KNOWN);
    const late = "not read, since the sheets before it have 120000 rows or more: bring it in by itself";
    expect(read.problems.map(({ message }) => message)).toEqual([problems[0]?.message, late, late]);
    expect(read.perSheet.map(({ sheet }) => sheet)).toEqual(["beds"]);
  });

  test("of a million empty lines is read no further either", () => {
    expect(readTable(`bed\n${"\n".repeat(1_000_000)}A\n`)).toMatchObject({
      rows: [],
      problems: [{ line: MOST_LINES + 1 }],
    });
  });

  test("with fifty thousand bad rows tells the first thousand problems, says that there are more, and counts every row", () => {
    const text = `bed,length_m,width_m\n${Array.from({ length: 50_000 }, (_, index) => `bed ${index},x,1\n`).join("")}`;
    const { problems, rowCount, cleanRowCount } = readFarmSheets([{ name: "beds.csv", text }], KNOWN);
    expect([rowCount, cleanRowCount]).toEqual([50_000, 0]);
    expect(problems.length).toBeLessThanOrEqual(MOST_PROBLEMS + 1);
    expect(lettersOf(problems)).toBeLessThan(400_000);
  });
});

test("pasted rows tell a thousand problems at most, and keep every row that could not be read", () => {
  const { problems, unread } = readPastedRows("zzzzzzzz\t4\n".repeat(3_000), {
    farm: farm(),
    recipes: ["Bridal bouquet"],
    crops: [],
  });
  expect(problems).toHaveLength(MOST_PROBLEMS);
  expect(unread.split("\n")).toHaveLength(3_000);
});

test("problems of a schema stop at a thousand, with one that says how many are left", () => {
  const read = z.array(z.int()).safeParse(Array(5_000).fill("x"));
  const problems = read.error ? problemsOf(read.error, "ids") : [];
  expect(problems).toHaveLength(MOST_PROBLEMS + 1);
  expect(problems.at(-1)).toEqual({ place: "ids", message: "and 4000 more problems: mend these first" });
});
