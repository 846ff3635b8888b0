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
