import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { openWorkbook } from "#lib/sheets/xlsx/open-workbook";
import { farm, snapshot } from "../small-farm";
import { WORKBOOK_OF_1900 } from "../truth/xlsx-by-another";

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** A workbook with one sheet of these rows, as XML. */
const workbook = (rows: string, more: Record<string, string> = {}) =>
  zipSync(
    Object.fromEntries(
      Object.entries({
        "_rels/.rels": `${HEAD}<Relationships><Relationship Id="a" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
        "xl/workbook.xml": `${HEAD}<workbook xmlns:r="${OFFICE}"><sheets><sheet name="Beds" sheetId="1" r:id="b"/></sheets></workbook>`,
        "xl/_rels/workbook.xml.rels": `${HEAD}<Relationships><Relationship Id="b" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="c" Type="${OFFICE}/styles" Target="/xl/styles.xml"/></Relationships>`,
        "xl/worksheets/sheet1.xml": `${HEAD}<worksheet><sheetData>${rows}</sheetData></worksheet>`,
        "xl/styles.xml": `${HEAD}<styleSheet/>`,
        ...more,
      }).map(([path, text]) => [path, strToU8(text)]),
    ),
  );
const text = (words: string) => `<c t="inlineStr"><is><t>${words}</t></is></c>`;
const number = (value: string, style = "") => `<c${style}><v>${value}</v></c>`;
const rowsIn = (bytes: Uint8Array) => openWorkbook(bytes, 10_000_000).worksheets[0]?.rows.map(({ cells }) => cells);

test("numbers, yes and no, texts and formulas come as our cells write them; gaps are empty cells", () => {
  const styles = `${HEAD}<styleSheet><numFmts><numFmt numFmtId="170" formatCode="[Red]0.0 &quot;days&quot;"/><numFmt numFmtId="171" formatCode="[$-409]d\\-mmm;@"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="170"/><xf numFmtId="171"/></cellXfs></styleSheet>`;
  const bytes = workbook(
    `<row r="1">${text("bed")}<c r="C1" t="str"><f>A1</f><v>note</v></c></row>` +
      `<row r="3">${number("0.1")}<c t="b"><v>1</v></c>${number("46550", ' s="1"')}${number("46550", ' s="2"')}${number("46550", ' s="3"')}${number("1.125")}</row>`,
    { "xl/styles.xml": styles },
  );
  expect(rowsIn(bytes)).toEqual([
    ["bed", "", "note"],
    ["0.1", "yes", "2027-06-12", "46550", "2027-06-12", "1.1250"],
  ]);
});

test("a number in a cell is the same number whatever decimal mark the farm writes", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 900, noNaN: true }), (length) => {
      const bytes = workbook(
        `<row>${["bed", "length_m", "width_m"].map(text).join("")}</row><row>${text("N1")}${number(String(length))}${number("1")}</row>`,
      );
      for (const decimalMark of ["point", "comma"] as const) {
        const { files } = unzipSheets(zipSync({ "beds.xlsx": bytes }));
        const known = knownFarm(snapshot({ farm: farm({ decimalMark }) }));
        expect(readFarmSheets(files, known).records.beds).toMatchObject([{ lengthMetres: length }]);
      }
    }),
    { seed: 376, numRuns: 60 },
  );
});

test("a cell that shows a percentage is that many hundredths, in a column of shares and in one of percent", () => {
  const styles = `${HEAD}<styleSheet><numFmts><numFmt numFmtId="170" formatCode="0.0\\ %"/><numFmt numFmtId="171" formatCode="0.00&quot;%&quot;"/></numFmts><cellXfs><xf/><xf numFmtId="9"/><xf numFmtId="170"/><xf numFmtId="171"/></cellXfs></styleSheet>`;
  const cells = `${number("0.07", ' s="1"')}${number("0.12345", ' s="2"')}${number("0.12", ' s="3"')}`;
  const bytes = workbook(`<row>${cells}</row>`, { "xl/styles.xml": styles });
  expect(rowsIn(bytes)).toEqual([["7%", "12.3450%", "0.12"]]);
  for (const heading of ["spare_share", "Spare %"]) {
    const header = ["client", "event_on", heading].map(text).join("");
    const row = `${text("Ivy")}${text("2027-06-12")}${number("0.07", ' s="1"')}`;
    const one = workbook(`<row>${header}</row><row>${row}</row>`, { "xl/styles.xml": styles });
    const { files } = unzipSheets(zipSync({ "bookings.xlsx": one }));
    expect(readFarmSheets(files, knownFarm(snapshot({}))).records.bookings).toMatchObject([{ spareShare: 0.07 }]);
  }
});

test("a formula without a value, an error, a text that is missing and a cell far to the right are problems of their row", () => {
  const bytes = workbook(
    `<row r="1">${text("bed")}</row><row r="2"><c><f>1+1</f></c></row><row r="3"><c t="e"><v>#REF!</v></c></row><row r="4"><c r="ZZ4"><v>1</v></c></row><row><c t="s"><v>3</v></c></row>`,
  );
  expect(openWorkbook(bytes, 1_000_000).worksheets[0]?.problems).toEqual([
    { line: 2, message: expect.stringMatching(/^a formula here has no value/) },
    { line: 3, message: "the cell says #REF!: mend its formula, or write the value" },
    { line: 4, message: expect.stringMatching(/^a cell stands beyond column 200/) },
    { line: 5, message: expect.stringMatching(/^the cell names a text that the workbook does not have/) },
  ]);
});

test("entities that would grow, a part that is cut off or missing, and what is no workbook are refused in words", () => {
  const laughs = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>`;
  const refused = [
    workbook("", {
      "xl/worksheets/sheet1.xml": `${HEAD}${laughs}<worksheet><sheetData><row>${text("&b;")}</row></sheetData></worksheet>`,
    }),
    workbook("<row><c><v>1</v>"),
    workbook(`<row>${text("&nbsp;")}</row>`),
    workbook("", { "xl/workbook.xml": "<workbook" }),
    zipSync({ "readme.txt": strToU8("hello") }),
    strToU8("PK not a zip"),
  ];
  for (const bytes of refused)
    expect(openWorkbook(bytes, 1_000_000)).toMatchObject({
      worksheets: [],
      message: expect.stringMatching(/save it as XLSX again/),
    });
  expect(openWorkbook(workbook(""), 1_000_000).message).toMatch(/no sheet of this workbook has anything in it/);
});

test("a workbook that would unpack to more than there is room for is refused before it is unpacked", () => {
  const bomb = workbook(`<row>${text("x".repeat(2_000_000))}</row>`);
  expect(bomb.length).toBeLessThan(10_000);
  expect(openWorkbook(bomb, 1_000_000)).toMatchObject({
    worksheets: [],
    message: expect.stringMatching(/more than a farm/),
    unpackedBytes: 0,
  });
  const many = zipSync(Object.fromEntries(Array.from({ length: 20 }, (_, index) => [`${index}.xlsx`, bomb])));
  const { files, problems } = unzipSheets(many);
  expect(files.length).toBe(12);
  expect(problems.length).toBe(8);
});

test("more rows than any farm has end the reading", () => {
  const rows = Array.from({ length: 120_001 }, (_, index) => `<row><c><v>${index}</v></c></row>`).join("");
  expect(openWorkbook(workbook(rows), 24_000_000).message).toMatch(/more than a farm/);
});

test("no byte that changes makes the reader throw, or gives other rows unseen", () => {
  const whole = Buffer.from(WORKBOOK_OF_1900, "base64");
  const rows = JSON.stringify(openWorkbook(whole, 1_000_000).worksheets);
  fc.assert(
    fc.property(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
      const changed = Uint8Array.from(whole);
      changed[at] ^= flip;
      const { worksheets, message } = openWorkbook(changed, 1_000_000);
      if (message === null) expect(JSON.stringify(worksheets)).toBe(rows);
      else expect(worksheets).toEqual([]);
    }),
    { seed: 376, numRuns: 1_000 },
  );
});

describe("a few bytes of a workbook that stand for many", () => {
  const TOO_MUCH = /^the workbook holds more than a farm/;
  const messageOf = (bytes: Uint8Array) => openWorkbook(bytes, 2_000_000).message;
  const relations = (more: string) =>
    `${HEAD}<Relationships><Relationship Id="b" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/>${more}</Relationships>`;
  const sheets = (count: number) =>
    `${HEAD}<workbook xmlns:r="${OFFICE}"><sheets>${'<sheet name="Beds" r:id="b"/>'.repeat(count)}</sheets></workbook>`;

  test("are too much when one long text stands in as many cells as come to more than twice what may be unpacked", () => {
    const named = (count: number) =>
      workbook(`<row>${'<c t="s"><v>0</v></c>'.repeat(150)}</row>`.repeat(count), {
        "xl/sharedStrings.xml": `${HEAD}<sst><si><t>${"long".repeat(2_500)}</t></si></sst>`,
        "xl/_rels/workbook.xml.rels": relations(
          `<Relationship Id="s" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/>`,
        ),
      });
    expect(messageOf(named(2))).toBe(null);
    expect(messageOf(named(3))).toMatch(TOO_MUCH);
  });

  test("are too much when many sheets are one and the same part", () => {
    const rows = `<row>${text("D1")}</row>`.repeat(2_000);
    expect(messageOf(workbook(rows, { "xl/workbook.xml": sheets(2) }))).toBe(null);
    expect(messageOf(workbook(rows, { "xl/workbook.xml": sheets(900) }))).toMatch(TOO_MUCH);
    expect(messageOf(workbook("", { "xl/workbook.xml": sheets(1_001) }))).toMatch(TOO_MUCH);
  });

  test("count for later workbooks of the same zip", () => {
    const bytes = workbook(`<row>${text("D1")}</row>`.repeat(2_000), { "xl/workbook.xml": sheets(20) });
    const { worksheets, unpackedBytes } = openWorkbook(bytes, 2_000_000);
    expect(worksheets).toHaveLength(20);
    expect(unpackedBytes).toBeGreaterThan((20 * 2_000 * `<row>${text("D1")}</row>`.length) / 2);
  });

  test("are too much when more cells than a farm has rows cannot be read", () => {
    const row = `<row>${'<c r="ZZ1"><v>1</v></c>'.repeat(40_001)}</row>`;
    expect(openWorkbook(workbook(row.repeat(3)), 10_000_000).message).toMatch(TOO_MUCH);
  });

  test("are looked at in part when they are the code of a format", () => {
    const styles = `${HEAD}<styleSheet><numFmts><numFmt numFmtId="170" formatCode="${"[".repeat(500_000)}"/></numFmts><cellXfs><xf numFmtId="170"/></cellXfs></styleSheet>`;
    expect(rowsIn(workbook(`<row>${number("46550", ' s="0"')}</row>`, { "xl/styles.xml": styles }))).toEqual([
      ["46550"],
    ]);
  });
});
