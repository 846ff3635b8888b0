import fc from "fast-check";
import { strFromU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { newFarm } from "#lib/domain/new-farm";
import { SHEETS } from "#lib/domain/records/sheets";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { farmWorkbook } from "#lib/sheets/farm-workbook";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { heldLetters, meantLetters } from "#lib/sheets/xlsx/held-letters";
import { openWorkbook } from "#lib/sheets/xlsx/open-workbook";
import { serialDay, serialOf } from "#lib/sheets/xlsx/serial-day";
import { workbookOf } from "#lib/sheets/xlsx/write-workbook";
import { bed, booking, day, farm, focal, snapshot } from "../small-farm";
import { anyFarm } from "./any-farm";

const SEED = 20_270_613;
const MOST_BYTES = 24_000_000;
const EMPTY = knownFarm(
  snapshot({ farm: newFarm("Empty"), crops: [], recipes: [], curves: [], varieties: [], beds: [], plantings: [] }),
);
const filled = (records: object) =>
  Object.fromEntries(Object.entries(records).filter(([, list]) => !Array.isArray(list) || list.length > 0));
const partsOf = (bytes: Uint8Array) =>
  new Map(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));
const sheetPart = (bytes: Uint8Array, name: string) =>
  partsOf(bytes).get(`xl/worksheets/sheet${Object.keys(SHEETS).indexOf(name) + 1}.xml`) ?? "";

describe("the farm as a workbook", () => {
  test("any farm written as a workbook is read back to the same records, with no problem", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { files, problems } = unzipSheets(zipSync({ "farm.xlsx": farmWorkbook(given) }));
        expect(problems).toEqual([]);
        const reading = readFarmSheets(files, EMPTY);
        expect(reading.problems).toEqual([]);
        expect(reading.records).toEqual(filled(farmRecordsOf(given)));
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  test("it has a sheet for each of ours, by its name; a bed's length is a number, its note a text, an event's day a day", () => {
    const given = snapshot({
      farm: farm({ decimalMark: "comma" }),
      beds: [bed({ id: 1, name: "007", lengthMetres: 30.5, note: "<wet> & “low”" })],
      bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(25) })],
    });
    const bytes = farmWorkbook(given);
    const names = [...(partsOf(bytes).get("xl/workbook.xml") ?? "").matchAll(/<sheet name="([a-z]+)"/g)].map(
      ([, name]) => name,
    );
    expect(names).toEqual(Object.keys(SHEETS));
    expect(sheetPart(bytes, "beds")).toContain('<t xml:space="preserve">007</t>');
    expect(sheetPart(bytes, "beds")).toContain('<c r="B2"><v>30.5</v></c>');
    expect(sheetPart(bytes, "beds")).toContain("&lt;wet&gt; &amp; “low”");
    // 46550 is 12 June 2027 in the 1900 system, as the reader's own test has it.
    expect(sheetPart(bytes, "bookings")).toContain('<c r="B2" s="2"><v>46550</v></c>');
  });

  test("a text that a spreadsheet could run is held, and no cell is a formula", () => {
    const bytes = farmWorkbook(snapshot({ beds: [bed({ id: 1, note: "=1+1" })] }));
    expect(sheetPart(bytes, "beds")).toContain(">'=1+1</t>");
    for (const part of partsOf(bytes).values()) expect(part).not.toMatch(/<f[ >]/);
  });

  test("every part is named with its kind, every relation leads to a part, and the same farm gives the same bytes", () => {
    const bytes = farmWorkbook(snapshot());
    const parts = partsOf(bytes);
    const kinds = [...(parts.get("[Content_Types].xml") ?? "").matchAll(/PartName="\/([^"]+)"/g)].map(
      ([, path]) => path,
    );
    const xml = [...parts.keys()].filter((path) => path.startsWith("xl/") && path.endsWith(".xml"));
    expect(kinds.toSorted()).toEqual(xml.toSorted());
    const targets = [...(parts.get("xl/_rels/workbook.xml.rels") ?? "").matchAll(/Target="([^"]+)"/g)];
    for (const [, target] of targets) expect(parts.has(`xl/${target}`)).toBe(true);
    expect(targets.length).toBe(Object.keys(SHEETS).length + 1);
    expect(farmWorkbook(snapshot())).toEqual(bytes);
  });
});

describe("what a cell holds", () => {
  test("any text stands in a cell as it is, line ends, control characters and what looks like their numbers too", () => {
    const anyText = fc.oneof(
      fc.string({ unit: "binary", maxLength: 30 }),
      fc.constantFrom("a\r\nb", "_x000D_", "_x005F_x0041_", "\u0001", " kept ", "]]>", "\uFFFE"),
    );
    fc.assert(
      fc.property(anyText, (text) => {
        expect(meantLetters(heldLetters(text))).toBe(text);
        const { worksheets } = openWorkbook(
          workbookOf([{ name: "One", headings: [`h${text}`], rows: [] }]),
          MOST_BYTES,
        );
        expect(worksheets[0]?.rows[0]?.cells).toEqual([`h${text}`]);
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  test("a day's serial number says the day again; before March 1900 there is none", () => {
    fc.assert(
      fc.property(fc.integer({ min: 61, max: 2_958_465 }), (serial) => {
        const written = serialDay(serial, 1900);
        expect(written === null ? null : serialOf(written)).toBe(serial);
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(serialOf("1900-02-28")).toBeNull();
  });

  test("columns go on behind Z: AA, ZZ, AAA", () => {
    const headings = Array.from({ length: 703 }, (_, column) => `c${column}`);
    const part = partsOf(workbookOf([{ name: "Wide", headings, rows: [] }])).get("xl/worksheets/sheet1.xml") ?? "";
    for (const [place, heading] of [
      ["Z1", "c25"],
      ["AA1", "c26"],
      ["ZZ1", "c701"],
      ["AAA1", "c702"],
    ])
      expect(part).toContain(`<c r="${place}" s="1" t="inlineStr"><is><t xml:space="preserve">${heading}</t>`);
  });
});
