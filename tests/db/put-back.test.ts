import {
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { FARM_APPLICATION_ID } from "#db/file/file-header";
import { KeptOpen } from "#db/file/kept-open";
import { addBed } from "#db/write/beds";
import { bed } from "../small-farm";
import { addBedTo, bedsIn, makeFile, runAndKill, stateOf, withFolder } from "./farm-in-file";
import { done, kept } from "./kept-farm";

/** Files put back, taken away and left behind by a kill. References: https://www.sqlite.org/howtocorrupt.html, https://www.sqlite.org/atomiccommit.html. */

describe("an old farm in WAL mode", () => {
  /** A farm as an older version left it when it was killed: its last edits only in the -wal file. */
  const makeOld = (file: string) => {
    makeFile(file);
    runAndKill(`
      import Database from "better-sqlite3";
      const sqlite = new Database(${JSON.stringify(file)});
      sqlite.pragma("journal_mode = WAL");
      sqlite.pragma("application_id = 0");
      sqlite.pragma("wal_checkpoint(TRUNCATE)");
      sqlite.exec("INSERT INTO bed (name, length_metres, width_metres, flags, note) VALUES ('W1', 15, 1.2, '[]', '')");`);
    expect(statSync(`${file}-wal`).size).toBeGreaterThan(0);
  };

  test("opens with the edits of its side file, becomes one file, and loses nothing", () =>
    withFolder((file, folder) => {
      makeOld(file);
      expect(bedsIn(file)).toEqual(["D1", "D2", "W1"]);
      expect(readdirSync(folder).filter((name) => /wal|shm/.test(name))).toEqual([]);
      expect(readFileSync(file).readUInt32BE(68)).toBe(FARM_APPLICATION_ID);
      copyFileSync(file, join(folder, "copy.sqlite"));
      expect(bedsIn(join(folder, "copy.sqlite"))).toContain("W1");
    }));

  test("whose earlier copy was put back beside the side file is refused with both versions kept", () =>
    withFolder((file, _folder) => {
      makeOld(file);
      const earlier = readFileSync(file);
      utimesSync(`${file}-wal`, new Date(), new Date());
      const later = Date.now() + 30;
      while (Date.now() < later);
      writeFileSync(file, earlier);
      expect(stateOf(() => openFarm(file))).toBe("two-versions");
      expect(bedsIn(`${file}.with-side-file.sqlite`)).toContain("W1");
      expect(bedsIn(`${file}.without-side-file.sqlite`)).not.toContain("W1");
      expect(existsSync(`${file}-wal`)).toBe(true);
    }));
});

describe("a copy put back", () => {
  /** Ends in the middle of a write, with pages of it already in the file and the pages before it in the journal. */
  const cutShort = (file: string) =>
    runAndKill(`
      import Database from "better-sqlite3";
      const sqlite = new Database(${JSON.stringify(file)});
      sqlite.pragma("journal_mode = TRUNCATE");
      sqlite.pragma("cache_size = 1");
      sqlite.exec("BEGIN IMMEDIATE; CREATE TABLE half (text)");
      for (let i = 0; i < 400; i++) sqlite.prepare("INSERT INTO half VALUES (?)").run("x".repeat(900));
      sqlite.exec("UPDATE bed SET note = 'half'");`);

  test("is not needed after a kill in a write: the file is as it was before that write", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const before = bedsIn(file);
      cutShort(file);
      expect(statSync(`${file}-journal`).size).toBeGreaterThan(0);
      expect(bedsIn(file)).toEqual(before);
      const database = openFarm(file);
      expect(database.$client.prepare("SELECT count(*) FROM bed WHERE note = 'half'").pluck().get()).toBe(0);
      closeFarm(database);
    }));

  test("beside the journal of a later state is restored, and the journal is moved aside", () =>
    withFolder((file, folder) => {
      makeFile(file);
      copyFileSync(file, join(folder, "copy.sqlite"));
      addBedTo(file, "D8");
      addBedTo(file, "D9");
      cutShort(file);
      copyFileSync(join(folder, "copy.sqlite"), file);
      expect(bedsIn(file)).toEqual(["D1", "D2"]);
      expect(readdirSync(folder).filter((name) => name.includes("not-of-this-file"))).toHaveLength(1);
    }));

  test.each(["over the file in place", "under its name"])(
    "%s while the server runs is what the next page shows",
    (way) =>
      withFolder((file, folder) => {
        makeFile(file);
        copyFileSync(file, join(folder, "copy.sqlite"));
        const server = new KeptOpen(file);
        done(addBed(server.database(), bed({ id: 0, name: "D9" })));
        const turn = server.turn;
        if (way === "under its name") renameSync(join(folder, "copy.sqlite"), file);
        else copyFileSync(join(folder, "copy.sqlite"), file);
        expect(kept(server.database()).beds.map(({ name }) => name)).toEqual(["D1", "D2"]);
        expect(server.turn).toBeGreaterThan(turn);
        done(addBed(server.database(), bed({ id: 0, name: "E1" })));
        server.close();
        expect(bedsIn(file)).toEqual(["D1", "D2", "E1"]);
      }),
  );
});

describe("a file that is deleted while the server runs", () => {
  test("is noticed before a save is acknowledged, and can be put back as it was", () =>
    withFolder((file, _folder) => {
      makeFile(file);
      const server = new KeptOpen(file);
      const database = server.database();
      done(addBed(database, bed({ id: 0, name: "D9" })));
      rmSync(file);
      expect(stateOf(() => addBed(database, bed({ id: 0, name: "E1" })))).toBe("moved");
      expect(stateOf(() => server.database())).toBe("missing");
      expect(server.isHeldAfterLoss).toBe(true);
      server.putBack();
      expect(kept(server.database()).beds.map(({ name }) => name)).toEqual(["D1", "D2", "D9"]);
      server.close();
    }));
});
