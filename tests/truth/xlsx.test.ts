import { expect, test } from "vitest";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { openWorkbook } from "#lib/sheets/xlsx/open-workbook";
import { serialDay } from "#lib/sheets/xlsx/serial-day";
import { snapshot } from "../small-farm";
import { WORKBOOK_OF_1900, WORKBOOK_OF_1904 } from "./xlsx-by-another";

/**
 * The examples of ECMA-376, "Office Open XML File Formats", Part 1: 18.17.4 (as its first edition has them in 3.17.6 and Part 3: DATEVALUE of
 * four days in each date system), and of combined dates and times, https://ooxml.info/docs/l/l.2/l.2.2/l.2.16.8/l.2.16.9.3; seconds are
 * rounded to the minute here, since no field of a farm has any.
 */
test("serial numbers of the 1900 date system are the days that the standard says", () => {
  expect(serialDay(1, 1900)).toBe("1900-01-01");
  expect(serialDay(3687, 1900)).toBe("1910-02-03");
  expect(serialDay(38749, 1900)).toBe("2006-02-01");
  expect(serialDay(2958465, 1900)).toBe("9999-12-31");
  expect(serialDay(3687.4207639, 1900)).toBe("1910-02-03 10:06");
  expect(serialDay(1.5, 1900)).toBe("1900-01-01 12:00");
});

test("59 is 28 February 1900, 61 is 1 March, and 60 the day between that no calendar has", () => {
  expect([59, 60, 61].map((serial) => serialDay(serial, 1900))).toEqual(["1900-02-28", "1900-02-29", "1900-03-01"]);
});

test("serial numbers of the 1904 date system are the days that the standard says", () => {
  expect(serialDay(0, 1904)).toBe("1904-01-01");
  expect(serialDay(2225, 1904)).toBe("1910-02-03");
  expect(serialDay(37287, 1904)).toBe("2006-02-01");
  expect(serialDay(2957003, 1904)).toBe("9999-12-31");
  expect(serialDay(2225.4207639, 1904)).toBe("1910-02-03 10:06");
  expect(serialDay(0.5, 1904)).toBe("1904-01-01 12:00");
});

test("what lies outside of a date system is no day", () => {
  for (const serial of [-1, 0, 0.5, 2958466]) expect(serialDay(serial, 1900)).toBeNull();
  for (const serial of [-1, 2957004]) expect(serialDay(serial, 1904)).toBeNull();
});

const opened = (base64: string) => openWorkbook(Buffer.from(base64, "base64"), 1_000_000);

test("workbooks of another program say the same rows, whichever day they count from", () => {
  for (const base64 of [WORKBOOK_OF_1900, WORKBOOK_OF_1904]) {
    const { worksheets, message } = opened(base64);
    expect(message).toBeNull();
    expect(worksheets.map(({ name, rows }) => [name, rows])).toEqual([
      [
        "Our beds",
        [
          { line: 1, cells: ["Bed", "Length M", "Width M", "No entry from", "No entry until", "Note"] },
          { line: 2, cells: ["D9", "15.1250", "1.2", "2027-06-12", "2027-06-19", "near the gate & path"] },
          { line: 4, cells: ["D10", "20.5", "1"] },
        ],
      ],
      [
        "Days",
        [
          { line: 1, cells: ["serial as a day", "serial"] },
          { line: 2, cells: ["1910-02-03"] },
          { line: 3, cells: ["2006-02-01"] },
          { line: 4, cells: ["9999-12-31"] },
          { line: 5, cells: ["2028-02-29"] },
          { line: 6, cells: ["2027-06-12 13:30"] },
        ],
      ],
    ]);
  }
});

test("its rows are beds of the farm, and a sheet that is none of the farm's is a problem at its place", () => {
  const files = opened(WORKBOOK_OF_1900).worksheets.map((worksheet) => ({ name: "season.xlsx", worksheet }));
  const { records, problems } = readFarmSheets(files, knownFarm(snapshot()));
  expect(records.beds).toMatchObject([
    {
      name: "D9",
      lengthMetres: 15.125,
      noEntryFrom: "2027-06-12",
      noEntryUntil: "2027-06-19",
      note: "near the gate & path",
    },
    { name: "D10", lengthMetres: 20.5 },
  ]);
  expect(problems.map(({ file, line }) => [file, line])).toEqual([["season.xlsx, sheet Days", 1]]);
});
