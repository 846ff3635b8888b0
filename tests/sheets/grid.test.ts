import { expect, test } from "vitest";
import { plantsInBed } from "#lib/domain/plants-in-bed";
import { readMeasured } from "#lib/domain/read-measure";
import { MOST_GRID_ROWS, pastedInto, repeatedEvery } from "#lib/sheets/grid";
import { problemLines, read } from "./known-farm";

const HEADINGS = ["bed", "crop", "plants"];
const EMPTY = [["", "", ""]];

test("cells from a spreadsheet are laid into the grid from where they are pasted, and rows are added for them", () => {
  expect(pastedInto(EMPTY, { row: 0, column: 0 }, "D8\tDahlia\t40\nD9\tFoxglove\t12\n", HEADINGS)).toEqual({
    rows: [
      ["D8", "Dahlia", "40"],
      ["D9", "Foxglove", "12"],
    ],
    spilt: [],
  });
  expect(pastedInto([["D8", "", "1"]], { row: 0, column: 1 }, "Dahlia", HEADINGS).rows).toEqual([
    ["D8", "Dahlia", "1"],
  ]);
  expect(pastedInto(EMPTY, { row: 0, column: 2 }, "1\n2\n3", HEADINGS).rows.map((row) => row[2])).toEqual([
    "1",
    "2",
    "3",
  ]);
});

test("a row of column names is passed over, and what finds no place is given back", () => {
  expect(pastedInto(EMPTY, { row: 0, column: 0 }, "Bed\tCrop\nD8\tDahlia", HEADINGS).rows).toEqual([
    ["D8", "Dahlia", ""],
  ]);
  expect(pastedInto(EMPTY, { row: 0, column: 1 }, "Dahlia\t40\tplum", HEADINGS)).toEqual({
    rows: [["", "Dahlia", "40"]],
    spilt: ["plum"],
  });
  const { rows, spilt } = pastedInto(EMPTY, { row: 0, column: 0 }, "D8\n".repeat(MOST_GRID_ROWS + 2), HEADINGS);
  expect([rows.length, spilt]).toEqual([MOST_GRID_ROWS, ["D8", "D8"]]);
});

test("a row is repeated every so many days, whatever way its day is written, over the end of a month", () => {
  const row = ["D8", "20 May 2027", "40"];
  expect(repeatedEvery(row, { dayColumn: 1, everyDays: 14, times: 2 }, {})).toEqual([
    ["D8", "2027-06-03", "40"],
    ["D8", "2027-06-17", "40"],
  ]);
  expect(repeatedEvery(["D8", "6/5/2027", ""], { dayColumn: 1, everyDays: 7, times: 1 }, {})).toBeNull();
  expect(
    repeatedEvery(["D8", "6/5/2027", ""], { dayColumn: 1, everyDays: 7, times: 1 }, { dateOrder: "month first" }),
  ).toEqual([["D8", "2027-06-12", ""]]);
});

test("3 rows of a plant every 0.3 m in 15 m are 150 plants; what is left of a row stays empty", () => {
  expect(plantsInBed({ lengthMetres: 15, rowCount: 3, distanceMetres: 0.3 })).toBe(150);
  expect(plantsInBed({ lengthMetres: 15, rowCount: 4, distanceMetres: 0.4 })).toBe(4 * 37);
  expect(plantsInBed({ lengthMetres: 0.2, rowCount: 4, distanceMetres: 0.4 })).toBe(0);
  expect(() => plantsInBed({ lengthMetres: 15, rowCount: 0, distanceMetres: 0.3 })).toThrow(RangeError);
});

test("a number with its unit is read in that unit, in the measure of its column", () => {
  const stored = (text: string, measure: "length" | "percent" | "dollars") => readMeasured(text, measure);
  expect(stored("50 ft", "length")).toEqual({ ok: true, value: 15.24 });
  expect(stored("49' 6\"", "length")).toEqual({ ok: true, value: 15.0876 });
  expect(stored("120 cm", "length")).toEqual({ ok: true, value: 1.2 });
  expect(stored("12 %", "percent")).toEqual({ ok: true, value: 0.12 });
  expect(stored("$1.50", "dollars")).toEqual({ ok: true, value: 150 });
  for (const text of ["15", "12 stems", "ft", "$5 ft", "1 2 m", `${" ".repeat(60)}50 ft`])
    expect(stored(text, "length")).toBeNull();
  expect(readMeasured("1,5 m", "length")).toMatchObject({ ok: false });
  expect(readMeasured("1,5 m", "length", "comma")).toEqual({ ok: true, value: 1.5 });
});

test("sheets take measures with their unit, and refuse those that are of another kind", () => {
  expect(read({ "beds.csv": "bed,length_m,width_m\nN1,50 ft,4'\n" }).records.beds).toMatchObject([
    { lengthMetres: 15.24, widthMetres: 1.2192 },
  ]);
  expect(problemLines({ "beds.csv": "bed,length_m,width_m\nN1,50 kg,1\n" })).toEqual([
    expect.stringMatching(/"50 kg" is not a number/),
  ]);
});
