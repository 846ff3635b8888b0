import { expect, test } from "vitest";
import { SHEETS } from "#lib/domain/records/sheets";
import { headingsMeant } from "#lib/sheets/headings";
import { sheetOfFile } from "#lib/sheets/sheet-of-file";
import { problemLines, read } from "./known-farm";

const meant = (sheet: keyof typeof SHEETS, ...header: string[]) =>
  headingsMeant(SHEETS[sheet], header).map(({ heading, unit }) => (unit ? `${heading} in ${unit}` : heading));

test("columns are found as a grower's own spreadsheets call them, our own names first", () => {
  expect(meant("pieces", "Couple", "Wedding Date", "Piece", "Qty", "Colors")).toEqual([
    "client",
    "event_on",
    "recipe",
    "count",
    "colours",
  ]);
  expect(meant("pieces", "qty", "count")).toEqual([null, "count"]);
  expect(meant("bookings", "customer", "date", "palette", "colours")).toEqual(["client", "event_on", "palette", null]);
});

test("a heading may name another unit, and one that lacks its unit is asked about", () => {
  expect(meant("beds", "Bed", "Length (ft)", "width feet")).toEqual(["bed", "length_m in ft", "width_m in feet"]);
  expect(read({ "beds.csv": "Bed,Length (ft),Width_in\nN1,50,48\nN2,15 m,4 ft\n" }).records.beds).toMatchObject([
    { lengthMetres: 15.24, widthMetres: 1.2192 },
    { lengthMetres: 15, widthMetres: 1.2192 },
  ]);
  expect(problemLines({ "beds.csv": "bed,length,width_m\nN1,50,1\n" })).toContain(
    'beds.csv:1 length: "length" may be in metres or in feet: name it length_m or length_ft',
  );
  const bookings = read({ "bookings.csv": "client,date,spare %\nIvy,12 Jun 2027,15\n" });
  expect([bookings.problems, bookings.records.bookings]).toMatchObject([[], [{ spareShare: 0.15 }]]);
});

test("a file is known for its sheet by others' words too", () => {
  expect(sheetOfFile("list.csv", ["couple", "wedding date", "piece", "qty"])).toBe("pieces");
  expect(sheetOfFile("list.csv", ["plot", "length ft", "width ft"])).toBe("beds");
  expect(sheetOfFile("list.csv", ["plot", "crop", "cultivar", "year", "treatment", "planted", "qty"])).toBe(
    "plantings",
  );
});
