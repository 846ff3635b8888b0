import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { fuzzReaders } from "./fuzz";
import { JSON_DOORS } from "./fuzz-server";

test("no odd input makes a reader throw: it is read, or refused in words", () => {
  expect(fuzzReaders(2_100, 1).faults).toEqual([]);
});

test("the JSON doors that a server is tried at are there, and are asked in JSON", () => {
  const known = JSON_DOORS.filter(([path]) => path !== "/~");
  expect(known.length).toBeGreaterThan(0);
  for (const [path, question] of known) {
    expect(existsSync(`app${path}/route.ts`), path).toBe(true);
    expect(JSON.parse(question)).toBeTypeOf("object");
  }
});
