import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { recordChange, undoChange } from "#db/journal/journal";
import { addBed, removeBed, updateBed } from "#db/write/beds";
import { BY_WEEKS } from "#lib/domain/records/bloom-end";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import { OWN } from "#lib/domain/sourced";
import migrations from "../../db/migrations/meta/_journal.json";
import { bed } from "../small-farm";
import { makeFile, withFolder } from "./farm-in-file";
import { changeOf, kept } from "./kept-farm";

/** As a newer version's migration would: every bed gets a shade, and those that stand already are told apart from the default. */
const ADDS_A_COLUMN =
  "ALTER TABLE bed ADD COLUMN shade TEXT NOT NULL DEFAULT 'unknown'; UPDATE bed SET shade = 'none as far as told'";

/** Makes a change with one version of the tables, brings them to the next, and goes on with the file there. */
const acrossVersions = (
  migration: string,
  change: (database: FarmDatabase) => number,
  then: (database: FarmDatabase, changeId: number) => void,
): Promise<void> =>
  withFolder((file) => {
    makeFile(file);
    const older = openFarm(file);
    const changeId = change(older);
    closeFarm(older);
    const tables = new Database(file);
    tables.exec(migration);
    tables.close();
    const newer = openFarm(file);
    try {
      then(newer, changeId);
    } finally {
      closeFarm(newer);
    }
  });

const shades = (database: FarmDatabase): string[] =>
  database.$client.prepare<[], string>("SELECT name || ': ' || shade FROM bed ORDER BY id").pluck().all();

const setShade = (database: FarmDatabase, shade: string): number | null =>
  recordChange(database, "told the shade", () =>
    database.$client.prepare("UPDATE bed SET shade = ? WHERE name = 'East'").run(shade),
  ).changeId;

const renamed = (database: FarmDatabase) => changeOf(updateBed(database, 1, bed({ id: 1, name: "East" })));

describe("a change made before its table had a column", () => {
  test("is taken back, and the row keeps what the newer version put there; and that can be undone too", () =>
    acrossVersions(ADDS_A_COLUMN, renamed, (database, changeId) => {
      const undone = undoChange(database, changeId);
      expect(undone.ok).toBe(true);
      expect(shades(database)).toEqual(["D1: none as far as told", "D2: none as far as told"]);
      expect(undone.ok && undone.changeId && undoChange(database, undone.changeId).ok).toBe(true);
      expect(shades(database)).toEqual(["East: none as far as told", "D2: none as far as told"]);
    }));

  test("that took a bed out brings it back whole, with the column's default", () =>
    acrossVersions(
      ADDS_A_COLUMN,
      (database) => changeOf(removeBed(database, 1)),
      (database, changeId) => {
        expect(undoChange(database, changeId).ok).toBe(true);
        expect(shades(database)).toEqual(["D1: unknown", "D2: none as far as told"]);
        expect(kept(database).plantings.map(({ bedId }) => bedId)).toEqual([1, 2]);
      },
    ));

  test("that added a bed takes it out again", () =>
    acrossVersions(
      ADDS_A_COLUMN,
      (database) => changeOf(addBed(database, bed({ id: 0, name: "East" }))),
      (database, changeId) => {
        expect(undoChange(database, changeId).ok).toBe(true);
        expect(shades(database)).toEqual(["D1: none as far as told", "D2: none as far as told"]);
      },
    ));

  test("is not taken back over what was written into the new column since, until that is undone", () =>
    acrossVersions(
      ADDS_A_COLUMN,
      (database) => changeOf(addBed(database, bed({ id: 0, name: "East" }))),
      (database, changeId) => {
        const told = setShade(database, "half a day");
        const refusal = { ok: false, message: expect.stringContaining("has been changed since. Undo that first.") };
        expect(undoChange(database, changeId)).toEqual(refusal);
        expect(shades(database)).toContain("East: half a day");
        expect(told && undoChange(database, told).ok).toBe(true);
        expect(undoChange(database, changeId).ok).toBe(true);
        expect(shades(database)).toHaveLength(2);
      },
    ));
});

test("a change to a column that is no longer there is refused in words, and nothing is touched", () =>
  acrossVersions(
    // What a column was called is part of what was written: under another name nobody can say whose it is.
    "ALTER TABLE what_if RENAME COLUMN name TO title",
    (database) =>
      recordChange(database, "kept a what-if", () =>
        database.$client.exec("INSERT INTO what_if (name, season_year, changes) VALUES ('Keep D1', 2027, '[]')"),
      ).changeId ?? 0,
    (database, changeId) => {
      expect(undoChange(database, changeId)).toEqual({
        ok: false,
        message:
          "Cannot undo this: an older version of the tool wrote a what if in a way that this one no longer keeps. A copy from before it still has it.",
      });
      expect(database.$client.prepare("SELECT title FROM what_if").pluck().all()).toEqual(["Keep D1"]);
    },
  ));

/** When a migration was made, which is how a file remembers it. */
const migrationTime = (name: string): number => migrations.entries.find(({ tag }) => tag === name)?.when ?? Number.NaN;

/** Columns that later versions added, the newest first: a column's own check may name those before it. */
const ADDED_SINCE = {
  bloom_curve: [
    "end_high_c",
    "ends",
    "heat_source",
    "heat_mark",
    "heat_place",
    "heat_from",
    "heat_ceiling_c",
    "heat_base_c",
  ],
  farm: [
    "own_colours",
    "date_order",
    ...["climate_monthly_lows_c", "climate_monthly_highs_c", "climate_latitude_degrees", "climate_station"],
    "decimal_mark",
  ],
};

test("a file of before the climate, the clocks and how the farm writes opens with none and with our way of writing, all else as it was", () =>
  withFolder((file) => {
    makeFile(file);
    const before = openFarm(file);
    const { farm: settings, curves } = kept(before);
    closeFarm(before);
    const tables = new Database(file);
    tables.exec("DROP TABLE weather_year");
    for (const [table, columns] of Object.entries(ADDED_SINCE))
      for (const column of columns) tables.exec(`ALTER TABLE ${table} DROP COLUMN ${column}`);
    tables.exec(`DELETE FROM __drizzle_migrations WHERE created_at >= ${migrationTime("0003_decimal_mark")}`);
    tables.close();
    const database = openFarm(file);
    try {
      expect(kept(database).farm).toEqual({
        ...settings,
        decimalMark: "point",
        dateOrder: "ask",
        ownColours: [],
        climate: null,
      });
      expect(kept(database).curves).toEqual(
        curves.map((curve) => ({ ...curve, ...BY_CALENDAR, ...BY_WEEKS, heatOrigin: OWN })),
      );
      expect(() => database.$client.exec("UPDATE farm SET decimal_mark = 'dash'")).toThrow(/farm_decimal_mark/);
      expect(() => database.$client.exec("UPDATE farm SET climate_station = 'Hill'")).toThrow(/farm_climate_whole/);
      expect(() => database.$client.exec("UPDATE farm SET date_order = 'either'")).toThrow(/farm_date_order/);
    } finally {
      closeFarm(database);
    }
  }));
