import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parseBookingForm } from "../../app/bookings/editor/parse-form";
import { fuzzReaders } from "./fuzz";
import { BOOKING } from "./fuzz-readers";
import { JSON_DOORS } from "./fuzz-server";
import { SCRIPT_CALLS } from "./odd-calls";

test("no odd input makes a reader throw: it is read, or refused in words", () => {
  expect(fuzzReaders(2_100, 1).faults).toEqual([]);
});

test("the booking form whose fields are made odd is taken as it stands, so that each of them is read", () => {
  expect(parseBookingForm(BOOKING, { units: "us" })).toMatchObject({ ok: true });
});

test("the JSON doors that a server is tried at are there, and are asked in JSON", () => {
  const known = JSON_DOORS.filter(([path]) => path !== "/~");
  expect(known.length).toBeGreaterThan(0);
  for (const [path, question] of known) {
    expect(existsSync(`app${path}/route.ts`), path).toBe(true);
    expect(JSON.parse(question)).toBeTypeOf("object");
  }
});

test("the calls of scripts that a server is tried with are of actions that are there", () => {
  const actionFiles = readdirSync("app", { recursive: true, encoding: "utf8" }).filter((name) =>
    /actions?\.ts$/.test(name),
  );
  const code = actionFiles.map((name) => readFileSync(`app/${name}`, "utf8")).join();
  for (const name of Object.keys(SCRIPT_CALLS))
    expect(code).toMatch(new RegExp(`export (const|async function) ${name}\\b`));
});
