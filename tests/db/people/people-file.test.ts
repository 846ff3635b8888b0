import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { PeopleFile } from "#db/people/people-file";

test("what a process that was killed left of the people's file is gone with the next writing; what another is writing stays", () => {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  try {
    const farm = join(folder, "farm.sqlite");
    const { pid: gone } = spawnSync(process.execPath, ["--version"]);
    for (const pid of [gone, process.ppid]) writeFileSync(`${farm}.people.json.unfinished-${pid}`, "half");
    new PeopleFile(farm).write((kept) => ({ ...kept, ownerPassword: "a hash" }));
    expect(readdirSync(folder).sort()).toEqual([
      "farm.sqlite.people.json",
      `farm.sqlite.people.json.unfinished-${process.ppid}`,
    ]);
    expect(new PeopleFile(farm).read().ownerPassword).toBe("a hash");
    expect(statSync(`${farm}.people.json`).mode & 0o077).toBe(0);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
