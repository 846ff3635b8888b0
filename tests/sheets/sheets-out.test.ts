import fc from "fast-check";
import { expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import type { FarmRecords } from "#lib/domain/farm-records";
import { newFarm } from "#lib/domain/new-farm";
import { headingsOf, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { farmSheets, sheetsOfRecords } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { zipSheets } from "#lib/sheets/zip-sheets";
import { bed, farm, snapshot } from "../small-farm";
import { anyFarm } from "./any-farm";

const SEED = 20_270_612;

/** A farm with settings and nothing else. */
const EMPTY = knownFarm(
  snapshot({ farm: newFarm("Empty"), crops: [], recipes: [], curves: [], varieties: [], beds: [], plantings: [] }),
);

/** Records without the lists that are empty: a sheet with a header alone brings none. */
const filled = (records: FarmRecords) =>
  Object.fromEntries(Object.entries(records).filter(([, list]) => !Array.isArray(list) || list.length > 0));

test("any farm written as sheets is read back to the same records, with no problem", () => {
  fc.assert(
    fc.property(anyFarm, (farm) => {
      const reading = readFarmSheets(farmSheets(farm), EMPTY);
      expect(reading.problems).toEqual([]);
      expect(reading.records).toEqual(filled(farmRecordsOf(farm)));
      expect(reading.cleanRowCount).toBe(reading.rowCount);
    }),
    { seed: SEED, numRuns: 300 },
  );
});

test("a farm that writes a decimal comma gets 30,5 in its sheets, and any other farm reads them back by the mark they name", () => {
  const given = snapshot({
    farm: farm({ decimalMark: "comma", spareShare: 0.125 }),
    beds: [bed({ id: 1, lengthMetres: 1.125 })],
  });
  const sheets = farmSheets(given);
  expect(sheets.find(({ name }) => name === "beds.csv")?.text).toContain('"1,125"');
  expect(sheets.find(({ name }) => name === "farm.csv")?.text).toContain('spare_share,"0,125"');
  const reading = readFarmSheets(sheets, EMPTY);
  expect(reading.problems).toEqual([]);
  expect(reading.records).toEqual(filled(farmRecordsOf(given)));
  const bedsAlone = readFarmSheets(
    sheets.filter(({ name }) => name === "beds.csv"),
    EMPTY,
  );
  expect(bedsAlone.problems[0].message).toContain("1,125");
  expect(bedsAlone.records.beds).toBeUndefined();
});

test("the sheets of a farm do not depend on the order in which they are read", () => {
  fc.assert(
    fc.property(anyFarm, fc.infiniteStream(fc.nat()), (farm, order) => {
      const sheets = farmSheets(farm).map((sheet) => ({ sheet, place: order.next().value }));
      const shuffled = sheets.sort((a, b) => a.place - b.place).map(({ sheet }) => sheet);
      expect(readFarmSheets(shuffled, EMPTY).records).toEqual(filled(farmRecordsOf(farm)));
    }),
    { seed: SEED, numRuns: 50 },
  );
});

test("the built-in crops, curves and recipes pass through their sheets unchanged", () => {
  const records = {
    crops: CATALOGUE.map(({ curves: _curves, ...crop }) => crop),
    curves: CATALOGUE.flatMap(({ name, curves }) => curves.map((curve) => ({ ...curve, crop: name, variety: null }))),
    recipes: [...DEFAULT_RECIPES],
  };
  const reading = readFarmSheets(sheetsOfRecords(records), EMPTY);
  expect(reading.problems).toEqual([]);
  expect(reading.records).toEqual(records);
});

test("one file for each sheet, in the order of the columns' list, the header its columns and the key of the row", () => {
  const sheets = farmSheets(snapshot());
  expect(sheets.map(({ name }) => name)).toEqual(Object.keys(SHEETS).map((name) => `${name}.csv`));
  expect(sheets.map(({ text }) => text.split("\r\n")[0])).toEqual(
    Object.keys(SHEETS).map((name) =>
      [...headingsOf(name as SheetName), ...(name === "farm" || name === "weather" ? [] : ["key"])].join(","),
    ),
  );
});

test("a small farm's plantings sheet is this text", () => {
  const plantings = farmSheets(snapshot()).find(({ name }) => name === "plantings.csv");
  expect(plantings?.text).toBe(
    "bed,crop,variety,colour,season,treatment,planted_on,sown,plants,age_seasons,alive_share,grade_out_share,winter_survival_share,days_late,yield_factor,flags,key\r\n" +
      "B1,Crop 1,Variety 1,cream,2027,field,2027-05-20,no,70,,1,0,,,,,1-ccdjyd\r\n",
  );
});

test("a text that a spreadsheet would run is held by an apostrophe", () => {
  const farm = snapshot();
  const [bed] = farm.beds;
  const named = { ...farm, beds: bed ? [{ ...bed, note: "=1+1" }] : [] };
  const beds = farmSheets(named).find(({ name }) => name === "beds.csv");
  expect(beds?.text.split("\r\n")[1]).toMatch(/^B1,15,1.2,,,,'=1\+1,1-[a-z]{6}$/);
});

test("a zip of the sheets opens to the same sheets, and the same farm gives the same bytes", () => {
  const sheets = farmSheets(snapshot());
  const { files, problems } = unzipSheets(zipSheets(sheets));
  expect(problems).toEqual([]);
  const plain = files.map((file) => ({ ...file, text: "text" in file && file.text.replace(/^\uFEFF/, "") }));
  expect(plain).toEqual([...sheets].sort((a, b) => (a.name < b.name ? -1 : 1)));
  expect(zipSheets(sheets)).toEqual(zipSheets(farmSheets(snapshot())));
  expect(readFarmSheets(files, EMPTY).records).toEqual(filled(farmRecordsOf(snapshot())));
});
