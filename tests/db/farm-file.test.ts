import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inspect } from "node:util";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { closeFarm, openFarm, openKeptFarm } from "#db/client";
import { lookUpEveryColumn } from "#db/file/every-column";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { FARM_APPLICATION_ID } from "#db/file/file-header";
import { addBed } from "#db/write/beds";
import { bed } from "../small-farm";
import { bedsIn, makeFile, stateOf, withFolder } from "./farm-in-file";
import { done } from "./kept-farm";

/** What a file can be, and what is done with it. References: https://www.sqlite.org/howtocorrupt.html, https://www.sqlite.org/atomiccommit.html. */

describe("a farm's file", () => {
  test("is whole as one file while it is open: a plain copy of it has the last edit", () =>
    withFolder((file, folder) => {
      makeFile(file);
      const database = openFarm(file);
      done(addBed(database, bed({ id: 0, name: "D9" })));
      copyFileSync(file, join(folder, "copy.sqlite"));
      closeFarm(database);
      expect(bedsIn(join(folder, "copy.sqlite"))).toContain("D9");
    }));

  test("is read and written by its owner alone, and marked as a farm", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      expect(statSync(file).mode & 0o777).toBe(0o600);
      expect(readFileSync(file).readUInt32BE(68)).toBe(FARM_APPLICATION_ID);
    }));

  test("that is refused is logged in one line, since the file is at fault and not the program", () => {
    const refused = new FarmFileRefused("missing", "farm.sqlite");
    expect(refused).toBeInstanceOf(FarmFileRefused);
    expect(new Error("other")).not.toBeInstanceOf(FarmFileRefused);
    expect(inspect(refused)).toBe(refused.message);
    expect(refused.stack).not.toContain("\n");
  });

  test("that is missing, empty, a folder, a text or another program's is refused, and left to the byte", () =>
    withFolder((file, folder) => {
      expect(stateOf(() => openKeptFarm(file))).toBe("missing");
      expect(existsSync(file)).toBe(false);
      writeFileSync(file, "");
      expect(stateOf(() => openFarm(file))).toBe("empty");
      expect(stateOf(() => openFarm(folder))).toBe("other-program");
      writeFileSync(file, "client,day\n".repeat(400));
      expect(stateOf(() => openFarm(file))).toBe("other-program");
      rmSync(file);
      for (const mark of ["CREATE TABLE farm (id INTEGER PRIMARY KEY)", "PRAGMA application_id = 77"]) {
        const stranger = new Database(file);
        stranger.exec(`CREATE TABLE IF NOT EXISTS hens (eggs); ${mark}`);
        stranger.close();
        const before = readFileSync(file);
        expect(stateOf(() => openFarm(file))).toBe("other-program");
        expect(readFileSync(file).equals(before)).toBe(true);
      }
      expect(readdirSync(folder)).toEqual(["farm.sqlite"]);
    }));

  test("of a newer version is refused and left to the byte", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const newer = new Database(file);
      newer.exec("INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('next year', 9999999999999)");
      newer.close();
      const before = readFileSync(file);
      expect(stateOf(() => openFarm(file))).toBe("newer");
      expect(readFileSync(file).equals(before)).toBe(true);
    }));

  test("that another program has locked is refused as locked, once its patience is over", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const other = new Database(file);
      other.exec("BEGIN EXCLUSIVE");
      expect(stateOf(() => openFarm(file))).toBe("locked");
      other.close();
      expect(bedsIn(file)).toEqual(["D1", "D2"]);
    }));

  test("whose column has a bad byte in its name is refused as damaged, and left as it was", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const raw = new Database(file);
      raw.exec("ALTER TABLE bloom_curve RENAME COLUMN heat_place TO heat_plac3");
      raw.close();
      const before = readFileSync(file);
      expect(stateOf(() => openFarm(file))).toBe("damaged");
      expect(readFileSync(file).equals(before)).toBe(true);
    }));

  test("is looked up in every table of ours, whichever has the bad name", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const raw = new Database(file);
      const ours = "type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '\\_\\_%' ESCAPE '\\'";
      const tables = raw.prepare<[], string>(`SELECT name FROM sqlite_master WHERE ${ours}`).pluck().all();
      expect(tables).toContain("tally");
      const missed = tables.filter((table) => {
        raw.exec("BEGIN");
        const column = raw.prepare<[string], string>("SELECT name FROM pragma_table_info(?)").pluck().all(table).at(-1);
        raw.exec(`ALTER TABLE "${table}" RENAME COLUMN "${column}" TO "gone bad"`);
        try {
          lookUpEveryColumn(raw);
          return true;
        } catch {
          return false;
        } finally {
          raw.exec("ROLLBACK");
        }
      });
      lookUpEveryColumn(raw);
      raw.close();
      expect(missed).toEqual([]);
    }));

  test("with a flipped byte opens or is refused as damaged, and never ends the tool", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const whole = readFileSync(file);
      const states = new Map<string, number>();
      for (let seed = 1; seed <= 60; seed++) {
        const bytes = Buffer.from(whole);
        bytes[100 + ((seed * 2_654_435_761) % (bytes.length - 100))] ^= 0xff;
        writeFileSync(file, bytes);
        const state = stateOf(() => closeFarm(openFarm(file)));
        states.set(state, (states.get(state) ?? 0) + 1);
        rmSync(`${file}-journal`, { force: true });
      }
      expect([...states.keys()].filter((state) => !["opened", "damaged", "other-program"].includes(state))).toEqual([]);
      expect(states.get("damaged")).toBeGreaterThan(0);
    }));
});
