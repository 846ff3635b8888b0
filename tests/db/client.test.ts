import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { latestChanges, revision, undoChange } from "#db/journal/journal";
import { hasFarm, loadSnapshot, loadWhatIfs } from "#db/read/read";
import { addBed } from "#db/write/beds";
import { putWhatIf } from "#db/write/what-ifs";
import { bed } from "../small-farm";
import { changeOf, done, fill, kept, withDatabase, withFarm } from "./kept-farm";

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
    makeFileOfFirstMigration(file);
    const database = openFarm(file);
    expect(copiesIn(copiesFolder(file), file).map(({ reason }) => reason)).toEqual(["before-migration"]);
    const { beds, farm } = kept(database);
    expect(farm.name).toBe("Old Hollow");
    expect(beds.map(({ name }) => name)).toEqual(["D1"]);
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
          "weather_year",
        ],
        ...["booking", "booking_piece", "booking_stem_line", "booking_unacceptable_crop", "what_if"],
        ...["change", "change_row", "save_key"],
      ].sort(),
    );
  });
});

/** A file as the first migration alone left it, with a farm and a bed. */
function makeFileOfFirstMigration(file: string): void {
  const current = openFarm(":memory:");
  fill(current);
  const row = current.$client.prepare<[], Record<string, string | number | null>>("SELECT * FROM farm").get() ?? {};
  const first = current.$client
    .prepare<[], { hash: string; created_at: number }>(
      "SELECT hash, created_at FROM __drizzle_migrations ORDER BY created_at",
    )
    .get();
  closeFarm(current);
  const sqlite = new Database(file);
  sqlite.exec(readFileSync("db/migrations/0000_farm_records.sql", "utf8").replaceAll("--> statement-breakpoint", ""));
  sqlite.exec("CREATE TABLE __drizzle_migrations (id SERIAL PRIMARY KEY, hash text NOT NULL, created_at numeric)");
  sqlite
    .prepare("INSERT INTO __drizzle_migrations (hash, created_at) VALUES (?, ?)")
    .run(first?.hash, first?.created_at);
  const ofThen = sqlite.prepare<[], string>("SELECT name FROM pragma_table_info('farm')").pluck().all();
  const old: Record<string, string | number | null> = {
    ...Object.fromEntries(ofThen.map((column) => [column, row[column]])),
    name: "Old Hollow",
  };
  sqlite
    .prepare(
      `INSERT INTO farm (${Object.keys(old).join(", ")}) VALUES (${Object.keys(old)
        .map(() => "?")
        .join(", ")})`,
    )
    .run(...Object.values(old));
  sqlite.exec("INSERT INTO bed (name, length_metres, width_metres, flags, note) VALUES ('D1', 15, 1.2, '[]', '')");
  sqlite.close();
}
