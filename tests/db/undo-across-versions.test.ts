import { copyFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { recordChange, undoChange } from "#db/journal/journal";
import { addBed, removeBed, updateBed } from "#db/write/beds";
import { BY_WEEKS } from "#lib/domain/records/bloom-end";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import { OWN } from "#lib/domain/sourced";
import { bed } from "../small-farm";
import { makeFile, withFolder } from "./farm-in-file";
import { changeOf, kept } from "./kept-farm";
import { makeOlderFile, OLDER_VERSIONS, openOlder } from "./older-file";

/** As a newer version's migration would: every bed gets a shade, and those that stand already are told apart from the default. */
const ADDS_A_COLUMN =
  "ALTER TABLE bed ADD COLUMN shade TEXT NOT NULL DEFAULT 'unknown'; UPDATE bed SET shade = 'none as far as told'";

/** Makes a change with one version of the tables, brings them to the next, and goes on with the file there. */
const acrossVersions = (
  migration: string,
  change: (database: FarmDatabase) => number,
  then: (database: FarmDatabase, changeId: number) => void,
  olderTables = "",
): Promise<void> =>
  withFolder((file) => {
    const inSql = (sql: string) => {
      const tables = new Database(file);
      tables.exec(sql);
      tables.close();
    };
    makeFile(file);
    inSql(olderTables);
    const older = openFarm(file);
    const changeId = change(older);
    closeFarm(older);
    inSql(migration);
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
    "ALTER TABLE shed RENAME COLUMN name TO title",
    (database) =>
      recordChange(database, "built a shed", () =>
        database.$client.exec("INSERT INTO shed (name) VALUES ('By the gate')"),
      ).changeId ?? 0,
    (database, changeId) => {
      expect(undoChange(database, changeId)).toEqual({
        ok: false,
        message:
          "Cannot undo this: an older version of the tool wrote a shed in a way that this one no longer keeps. A copy from before it still has it.",
      });
      expect(database.$client.prepare("SELECT title FROM shed").pluck().all()).toEqual(["By the gate"]);
    },
    "CREATE TABLE shed (id INTEGER PRIMARY KEY, name TEXT NOT NULL)",
  ));

/** What older versions wrote, in their own words of SQL: their code is gone, their tables and their journal are not. */
const OLDER_CHANGES = [
  "UPDATE farm SET name = 'West Hollow'",
  "INSERT INTO bed (name, length_metres, width_metres, flags, note) VALUES ('East', 12, 1.2, '[]', '')",
  "UPDATE bed SET note = 'wet in March' WHERE id = 2",
  "DELETE FROM planting WHERE id = 1",
  "UPDATE booking SET status = 'cancelled' WHERE id = 1",
];

test.each(OLDER_VERSIONS)(
  "what was changed under the tables of %s is undone under those of today, one by one, and so is the undoing",
  (version) =>
    withFolder((file, folder) => {
      makeOlderFile(file, version);
      copyFileSync(file, join(folder, "untouched.sqlite"));
      const older = openOlder(file);
      const changeIds = OLDER_CHANGES.map((sql) => changed(recordChange(older, sql, () => older.$client.exec(sql))));
      closeFarm(older);
      const untouched = openFarm(join(folder, "untouched.sqlite"));
      const database = openFarm(file);
      try {
        const after = kept(database);
        expect(after.farm.name).toBe("West Hollow");
        const undoIds = changeIds.toReversed().map((id) => undone(database, id));
        expect(kept(database)).toEqual(kept(untouched));
        for (const id of undoIds.toReversed()) undone(database, id);
        expect(kept(database)).toEqual(after);
      } finally {
        closeFarm(database);
        closeFarm(untouched);
      }
    }),
);

const changed = ({ changeId }: { changeId: number | null }): number => {
  if (changeId === null) throw new Error("nothing was changed");
  return changeId;
};

const undone = (database: FarmDatabase, changeId: number): number => {
  const undo = undoChange(database, changeId);
  if (!undo.ok) throw new Error(undo.message);
  return changed(undo);
};

test("a file of before the climate, the clocks and how the farm writes opens with none and with our way of writing, all else as it was", () =>
  withFolder((file, folder) => {
    makeFile(join(folder, "today.sqlite"));
    const today = openFarm(join(folder, "today.sqlite"));
    const { farm: settings, curves } = kept(today);
    closeFarm(today);
    makeOlderFile(file, "0002_save_keys");
    const database = openFarm(file);
    try {
      expect(kept(database).farm).toEqual({
        ...settings,
        decimalMark: "point",
        dateOrder: "ask",
        ownColours: [],
        climate: null,
        winter: { ...settings.winter, figuresEdition: 1 },
      });
      expect(kept(database).curves).toEqual(
        curves.map((curve) => ({
          ...curve,
          ...BY_CALENDAR,
          ...BY_WEEKS,
          shareByAge: [],
          lateLossShare: null,
          saleableBySeason: [],
          laterDays: 0,
          learned: [],
          sowingDays: null,
          heatOrigin: OWN,
        })),
      );
      expect(() => database.$client.exec("UPDATE farm SET decimal_mark = 'dash'")).toThrow(/farm_decimal_mark/);
      expect(() => database.$client.exec("UPDATE farm SET climate_station = 'Hill'")).toThrow(/farm_climate_whole/);
      expect(() => database.$client.exec("UPDATE farm SET date_order = 'either'")).toThrow(/farm_date_order/);
    } finally {
      closeFarm(database);
    }
  }));
