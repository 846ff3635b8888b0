import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { latestChanges, revision, undoChange } from "#db/journal/journal";
import { hasFarm, loadSnapshot, loadWhatIfs } from "#db/read/read";
import { addBed } from "#db/write/beds";
import { putWhatIf } from "#db/write/what-ifs";
import { bed } from "../small-farm";
import { changeOf, done, fill, kept, withDatabase, withFarm } from "./kept-farm";
import { makeOlderFile } from "./older-file";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "farm-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("a farm in a file", () => {
  test("is made with its folder, waits for the disk at each commit, with foreign keys on, and a read waits a tenth of a second for others", () => {
    const database = openFarm(join(folder, "deep", "down", "farm.sqlite"));
    const pragma = (name: string) => database.$client.pragma(name, { simple: true });
    expect({
      journal: pragma("journal_mode"),
      keys: pragma("foreign_keys"),
      busyMs: pragma("busy_timeout"),
      synchronous: pragma("synchronous"),
    }).toEqual({ journal: "truncate", keys: 1, busyMs: 100, synchronous: 2 });
    expect(hasFarm(database)).toBe(false);
    closeFarm(database);
  });

  test("is the same farm when it is opened again, and its changes can still be undone", () => {
    const file = join(folder, "farm.sqlite");
    const first = openFarm(file);
    fill(first);
    const before = kept(first);
    const added = changeOf(addBed(first, bed({ id: 0, name: "D9" })));
    const after = kept(first);
    const reached = revision(first);
    closeFarm(first);

    const second = openFarm(file);
    expect(hasFarm(second)).toBe(true);
    expect(kept(second)).toEqual(after);
    expect(revision(second)).toBe(reached);
    expect(undoChange(second, added).ok).toBe(true);
    expect(kept(second)).toEqual(before);
    closeFarm(second);
  });

  test("may be open twice: what one writes the other reads, and both keep their own journal", () => {
    const file = join(folder, "farm.sqlite");
    const [one, other] = [openFarm(file), openFarm(file)];
    fill(one);
    const seen = revision(other);
    done(addBed(other, bed({ id: 0, name: "D9" })));
    expect(kept(one)).toEqual(kept(other));
    expect(revision(one)).toBe(seen + 1);
    expect(latestChanges(one, 1)[0].title).toBe("added bed D9");
    closeFarm(one);
    closeFarm(other);
  });

  test("that was made before what-ifs could be kept is copied, then brought up to date, and loses nothing", () => {
    const file = join(folder, "old.sqlite");
    makeOlderFile(file, "0000_farm_records");
    const database = openFarm(file);
    expect(copiesIn(copiesFolder(file), file).map(({ reason }) => reason)).toEqual(["before-migration"]);
    const { beds, bookings } = kept(database);
    expect(beds.map(({ name }) => name)).toEqual(["D1", "D2"]);
    expect(bookings.map(({ id }) => id)).toEqual([1, 2]);
    expect(loadWhatIfs(database)).toEqual({ ok: true, parsed: [] });
    const change = changeOf(putWhatIf(database, { name: "Keep D1", seasonYear: 2027, changes: [] }));
    expect(undoChange(database, change).ok).toBe(true);
    closeFarm(database);
  });

  test("that is not a database is refused, and is not touched", () => {
    expect(() => openFarm("package.json")).toThrow("not a farm’s file");
    expect(JSON.parse(readFileSync("package.json", "utf8")).type).toBe("module");
  });
});

test("a farm that was not started says so", () => {
  withDatabase((database) =>
    expect(loadSnapshot(database)).toEqual({
      ok: false,
      problems: [{ place: "farm", message: "the farm has not been started yet" }],
    }),
  );
});

test("the tables hold exactly the words of the domain, and nothing more", () => {
  withFarm((database) => {
    const tables = database.$client
      .prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT GLOB '*sqlite*' AND name NOT GLOB '__*'",
      )
      .pluck()
      .all();
    expect(tables.sort()).toEqual(
      [
        ...[
          "farm",
          "crop",
          "variety",
          "bloom_curve",
          "recipe",
          "recipe_line",
          "bed",
          "planting",
          "cooler_stock",
          "cut",
          "cooler_move",
          "tally",
          "purchase",
          "bud_look",
          "loss",
          "first_cut",
          "review",
          "weather_year",
        ],
        ...[
          "booking",
          "booking_piece",
          "booking_stem_line",
          "booking_promise",
          "standing_order",
          "booking_unacceptable_crop",
          "what_if",
        ],
        ...["change", "change_row", "save_key"],
      ].sort(),
    );
  });
});
