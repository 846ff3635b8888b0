import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { closeFarm, openKeptFarm } from "#db/client";
import { type Copy, copiesFolder, copiesIn } from "#db/copies/copy-name";
import { keptCopies } from "#db/copies/kept-copies";
import { removeCopy } from "#db/copies/remove-copy";
import { restoreCopy } from "#db/copies/restore-copy";
import { nameSecondPlace } from "#db/copies/second-place";
import { type Taken, takeCopy, takeCopyNow } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { KeptOpen } from "#db/file/kept-open";
import { addBed } from "#db/write/beds";
import { addDays, parseDay } from "#lib/domain/day";
import { bed } from "../small-farm";
import { addBedTo, bedsIn, makeFile, withFolder } from "./farm-in-file";
import { done, kept } from "./kept-farm";

const copyOf = async (file: string, takenAt?: string): Promise<Taken> => {
  const database = openKeptFarm(file);
  try {
    return await takeCopy(database.$client, file, "by-hand", takenAt);
  } finally {
    closeFarm(database);
  }
};

describe("a copy", () => {
  test("is a whole farm of its own, for its owner alone, and changes nothing in the farm", () =>
    withFolder(async (file) => {
      makeFile(file);
      const before = readFileSync(file);
      const { copy, secondPlaceProblem } = await copyOf(file, "2026-11-25T18:04:12Z");
      expect(secondPlaceProblem).toBe(null);
      expect(copy.name).toBe("farm-2026-11-25T18-04-12Z-by-hand.sqlite");
      expect(statSync(copy.path).mode & 0o777).toBe(0o600);
      expect(bedsIn(copy.path)).toEqual(bedsIn(file));
      expect(readFileSync(file).equals(before)).toBe(true);
      expect(readdirSync(copiesFolder(file))).toEqual([copy.name]);
    }));

  test("taken while writes go on holds all that was acknowledged before it began", () =>
    withFolder(async (file) => {
      makeFile(file);
      const database = openKeptFarm(file);
      done(addBed(database, bed({ id: 0, name: "B0" })));
      const taking = takeCopy(database.$client, file, "daily");
      for (let count = 1; count <= 5; count++) {
        done(addBed(database, bed({ id: 0, name: `B${count}` })));
        await new Promise((resolve) => setImmediate(resolve));
      }
      const { copy } = await taking;
      closeFarm(database);
      expect(bedsIn(copy.path)).toEqual(expect.arrayContaining(["D1", "D2", "B0"]));
    }));

  test("taken by hand is deleted when asked, from the second place too, and one of another reason never is", () =>
    withFolder(async (file, folder) => {
      makeFile(file);
      const stick = join(folder, "stick");
      mkdirSync(stick);
      expect(nameSecondPlace(file, stick)).toBe(null);
      const { copy } = await copyOf(file);
      const { copy: other } = await copyOf(file);
      removeCopy(copy, file);
      expect(copiesIn(copiesFolder(file), file)).toEqual([other]);
      expect(copiesIn(stick, file).map(({ name }) => name)).toEqual([other.name]);
      expect(() => removeCopy({ ...other, reason: "daily" }, file)).toThrow(RangeError);
      expect(existsSync(other.path)).toBe(true);
    }));

  test("goes to the second place too; a place that is gone is told and stops nothing", () =>
    withFolder(async (file, folder) => {
      makeFile(file);
      const stick = join(folder, "stick");
      expect(nameSecondPlace(file, stick)).toContain("no such folder");
      mkdirSync(stick);
      expect(nameSecondPlace(file, stick)).toBe(null);
      const { copy } = await copyOf(file);
      expect(readFileSync(join(stick, copy.name)).equals(readFileSync(copy.path))).toBe(true);
      rmSync(stick, { recursive: true });
      const { copy: next, secondPlaceProblem } = await copyOf(file);
      expect(secondPlaceProblem).toContain("is not there");
      expect(existsSync(next.path)).toBe(true);
    }));
});

describe("restoring", () => {
  test("gives the farm of the copy, also to a server that runs, and is undone by restoring what was before", () =>
    withFolder(async (file) => {
      makeFile(file);
      const { copy } = await copyOf(file);
      const server = new KeptOpen(file);
      done(addBed(server.database(), bed({ id: 0, name: "D9" })));
      const { before } = await restoreCopy(copy.path, file);
      const beds = () => kept(server.database()).beds.map(({ name }) => name);
      expect(beds()).toEqual(["D1", "D2"]);
      expect(before?.reason).toBe("before-restore");
      await restoreCopy(before?.path ?? "", file);
      expect(beds()).toEqual(["D1", "D2", "D9"]);
      server.close();
    }));

  test("over a save that was under way refuses the save, and never acknowledges what is not in the file", () =>
    withFolder(async (file) => {
      makeFile(file);
      const { copy } = await copyOf(file);
      const server = new KeptOpen(file);
      const database = server.database();
      await restoreCopy(copy.path, file);
      expect(() => addBed(database, bed({ id: 0, name: "D9" }))).toThrow(FarmFileRefused);
      expect(bedsIn(file)).toEqual(["D1", "D2"]);
      server.close();
    }));

  test.each(["missing", "empty", "cut short", "a text"])(
    "works when the farm's file is %s, and keeps that file",
    (what) =>
      withFolder(async (file) => {
        makeFile(file);
        addBedTo(file, "D9");
        const { copy } = await copyOf(file);
        const bytes = {
          missing: null,
          empty: "",
          "cut short": readFileSync(file).subarray(0, 20_000),
          "a text": "day",
        }[what];
        rmSync(file);
        if (bytes != null) writeFileSync(file, bytes);
        const { setAside } = await restoreCopy(copy.path, file);
        expect(bedsIn(file)).toEqual(["D1", "D2", "D9"]);
        expect(setAside === null).toBe(what === "missing");
        if (setAside && bytes != null)
          expect(readFileSync(join(setAside, "farm.sqlite")).equals(Buffer.from(bytes))).toBe(true);
      }),
  );

  test.each(["missing", "empty", "cut short", "a text"])(
    "of a copy that is %s is refused, and the farm stays as it was",
    (what) =>
      withFolder(async (file, folder) => {
        makeFile(file);
        const copy = join(folder, "elsewhere.sqlite");
        const bytes = {
          missing: null,
          empty: "",
          "cut short": readFileSync(file).subarray(0, 20_000),
          "a text": "day",
        }[what];
        if (bytes != null) writeFileSync(copy, bytes);
        const before = readFileSync(file);
        await expect(restoreCopy(copy, file)).rejects.toThrow(FarmFileRefused);
        expect(readFileSync(file).equals(before)).toBe(true);
        expect(readdirSync(copiesFolder(file))).toEqual([]);
      }),
  );
});

describe("of a year of daily copies", () => {
  const copies: Copy[] = Array.from({ length: 400 }, (_, back) => {
    const takenAt = `${addDays(parseDay("2026-11-25"), -back)}T06:00:00Z`;
    return { name: takenAt, path: takenAt, takenAt, reason: "daily", byteCount: 1 };
  });
  const days = keptCopies(copies).map(({ takenAt }) => takenAt.slice(0, 10));

  test("the last ten stay, the newest of five weeks, and the newest of twelve months", () => {
    expect(days.slice(0, 10)).toEqual(copies.slice(0, 10).map(({ takenAt }) => takenAt.slice(0, 10)));
    // Sundays, by ISO 8601 the last day of a week: 22 and 15 November are among the last ten already or follow here.
    expect(days).toEqual(expect.arrayContaining(["2026-11-22", "2026-11-15", "2026-11-08", "2026-11-01"]));
    expect(days).toEqual(expect.arrayContaining(["2026-10-31", "2026-09-30", "2026-08-31", "2025-12-31"]));
    expect(days).toHaveLength(10 + 3 + 11);
  });

  test("thinning day by day never loses what thinning at once keeps", () => {
    let lying: Copy[] = [];
    for (const copy of copies.toReversed()) lying = keptCopies([copy, ...lying]);
    expect(lying.map(({ takenAt }) => takenAt.slice(0, 10))).toEqual(days);
  });

  test("copies taken by hand are never thinned", () => {
    const byHand = copies.map((copy): Copy => ({ ...copy, reason: "by-hand" }));
    expect(keptCopies(byHand)).toHaveLength(400);
  });
});

test("of many taken within one second the last is the newest, and stays", () =>
  withFolder((file) => {
    makeFile(file);
    const { $client } = openKeptFarm(file);
    for (let count = 1; count <= 25; count++) {
      const { copy } = takeCopyNow($client, file, "before-restore", "2026-11-25T18:04:12Z");
      expect(copiesIn(copiesFolder(file), file)[0].name).toBe(copy.name);
    }
    $client.close();
  }));

test("what a kill leaves of a copy is never taken for one, and goes after a day", () =>
  withFolder(async (file) => {
    makeFile(file);
    mkdirSync(copiesFolder(file));
    const left = ["unfinished-1-1", "unfinished-1-2"].map((name) => join(copiesFolder(file), name));
    for (const path of left) writeFileSync(path, readFileSync(file).subarray(0, 9000));
    utimesSync(left[0], new Date("2026-01-01"), new Date("2026-01-01"));
    expect(copiesIn(copiesFolder(file), file)).toEqual([]);
    await copyOf(file);
    expect(left.map((path) => existsSync(path))).toEqual([false, true]);
  }));
