import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { isPassword } from "#db/people/password";
import { PeopleFile } from "#db/people/people-file";

const folder = mkdtempSync(join(tmpdir(), "farm-"));
const farm = join(folder, "farm.sqlite");
writeFileSync(farm, "");
afterAll(() => rmSync(folder, { recursive: true }));

const set = (input: string, file = farm) => {
  const ran = spawnSync(process.execPath, ["--import", "tsx", "db/people/run-password.ts"], {
    ...{ input, encoding: "utf8" },
    env: { ...process.env, FARM_FILE: file },
  });
  return { status: ran.status, said: ran.stderr };
};

test("a password is taken as it was typed, whatever ends the line", async () => {
  expect(set("three hens and a heron\r\n")).toEqual({ status: 0, said: "" });
  expect(await isPassword("three hens and a heron", new PeopleFile(farm).read().ownerPassword ?? "")).toBe(true);
});

test("what is no password is refused in words, and the one before stays", () => {
  const before = new PeopleFile(farm).read();
  expect(set("")).toEqual({ status: 1, said: expect.stringMatching(/^No password was set: .*12 letters or more/) });
  expect(new PeopleFile(farm).read()).toEqual(before);
});

test("a place without a farm gets no file: it was mistyped, or its stick is out", () => {
  const missing = join(folder, "stick", "farm.sqlite");
  expect(set("three hens and a heron\n", missing)).toEqual({
    status: 1,
    said: expect.stringContaining(`no farm lies at ${missing}`),
  });
  expect(existsSync(join(folder, "stick"))).toBe(false);
});

test("a people's file that cannot be read is told with its mend, and left as it is", () => {
  writeFileSync(`${farm}.people.json`, "{ half");
  expect(set("three hens and a heron\n")).toEqual({
    status: 1,
    said: expect.stringContaining(`${farm}.people.json cannot be read`),
  });
  expect(readFileSync(`${farm}.people.json`, "utf8")).toBe("{ half");
});
