import { expect, test } from "vitest";
import { readFirstCuts } from "#lib/sheets/first-cuts-sheet";

const READ = [
  { year: 2021, firstCut: "2021-06-05" },
  { year: 2022, firstCut: "2022-05-29" },
];

test("a sheet of year and first_cut, days typed one a line, and year and day typed side by side read alike", () => {
  expect(readFirstCuts("year,first_cut\n2021,2021-06-05\n2022,2022-05-29\n").rows).toEqual(READ);
  expect(readFirstCuts("2021-06-05\n2022-05-29").rows).toEqual(READ);
  expect(readFirstCuts("2021 2021-06-05\r\n2022;2022-05-29\r\n").rows).toEqual(READ);
  expect(readFirstCuts("2021-06-05;\n\n2022-05-29,")).toEqual({ rows: READ, problems: [] });
});

test("what is wrong is named by its line, in a sheet and as typed, and the rest is read", () => {
  const sheet = readFirstCuts(
    "year,first_cut\n2021,2021-06-05\n2021,2021-06-07\n2022,2022-02-30\nlast,2022-05-29\n2023,\n",
  );
  expect(sheet.rows).toEqual(READ.slice(0, 1));
  expect(sheet.problems.map(({ line }) => line)).toEqual([3, 4, 5]);
  const typed = readFirstCuts("2021-06-05\n2021-06-09\n2022 June\n");
  expect(typed.rows).toEqual(READ.slice(0, 1));
  expect(typed.problems.map(({ line }) => line)).toEqual([2, 3]);
});

test("a year in which nobody had a thermometer is named by its line, and the rest is read", () => {
  const sheet = readFirstCuts("year,first_cut\n-5,2021-06-05\n9999,2021-06-05\n2021,2021-06-05\n");
  expect(sheet.rows).toEqual(READ.slice(0, 1));
  expect(sheet.problems).toEqual([
    { line: 2, message: '"-5" is not a year from 1700 to 2200' },
    { line: 3, message: '"9999" is not a year from 1700 to 2200' },
  ]);
});

test("other columns are refused with the names that are needed", () => {
  expect(readFirstCuts("a,b\n1,2\n").problems).toEqual([{ line: 1, message: "the columns are year and first_cut" }]);
});

test("planting days stand before the first cut, in a column or typed; each planting of a year is a row of its own", () => {
  const read = [
    { year: 2021, plantedOn: "2021-04-20", firstCut: "2021-07-01" },
    { year: 2021, plantedOn: "2021-05-25", firstCut: "2021-07-20" },
    { year: 2022, firstCut: "2022-07-05" },
  ];
  const column =
    "year,first_cut,planted_on\n2021,2021-07-01,2021-04-20\n2021,2021-07-20,2021-05-25\n2022,2022-07-05,\n";
  expect(readFirstCuts(column)).toEqual({ rows: read, problems: [] });
  expect(readFirstCuts("2021-04-20 2021-07-01\n2021 2021-05-25, 2021-07-20\n2022-07-05")).toEqual({
    rows: read,
    problems: [],
  });
  const wrong = readFirstCuts(
    "2021-07-01 2021-04-20\n2021-04-20 2021-07-01\n2021-04-20 2021-07-09\n2021-07-02\n2021-07-03",
  );
  expect(wrong.rows.length).toBe(3);
  expect(wrong.problems).toEqual([
    { line: 1, message: "the planting day is not before the first cut: write the planting day first" },
    { line: 5, message: "2021 stands a second time: keep one of the two lines" },
  ]);
});
