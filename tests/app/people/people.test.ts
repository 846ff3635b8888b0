import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { hashOf } from "#db/people/password";
import { PeopleFile } from "#db/people/people-file";
import { CODE_MINUTES, People, SESSION_SECONDS } from "../../../app/people/people";
import { SignInPace } from "../../../app/people/sign-in-pace";

const PASSWORD = "three hens and a heron";
const folder = mkdtempSync(join(tmpdir(), "farm-"));
const kept = await hashOf(PASSWORD);
let count = 0;
let farm = "";
let at = 0;
const clock = (laterSeconds = 0) =>
  `${new Date(Date.UTC(2027, 5, 10) + (at + laterSeconds) * 1000).toISOString().slice(0, 19)}Z`;
const open = () => new People(farm, new SignInPace(() => at), clock);
let people: People;

beforeEach(() => {
  farm = join(folder, `farm-${++count}.sqlite`);
  at = 0;
  new PeopleFile(farm).write((before) => ({ ...before, ownerPassword: kept }));
  people = open();
});
afterAll(() => rmSync(folder, { recursive: true }));

const hired = (name: string, role: "helper" | "designer" = "helper") => {
  const found = people.hire(name, role);
  if (!("id" in found)) throw new Error(found.problem);
  return found.id;
};
const joined = (id: number) => people.join(people.invite(id) ?? "") ?? "";

describe("the owner", () => {
  test("comes in with the password, and stays in for thirty days, also when the server is started again", async () => {
    const signed = await people.signIn(PASSWORD, "10.0.0.2");
    if (!signed.ok) throw new Error(signed.problem);
    expect(open().whoHas(signed.token)).toEqual({ id: 0, name: "owner", role: "owner" });
    at = SESSION_SECONDS + 1;
    expect(people.whoHas(signed.token)).toBe(null);
  });

  test("does not come in with another password, none, or before one was set", async () => {
    for (const wrong of ["", "three hens and a hero", `${PASSWORD} `])
      expect((await people.signIn(wrong, "10.0.0.2")).ok).toBe(false);
    expect(new People(join(folder, "none.sqlite")).hasPassword).toBe(false);
    expect((await new People(join(folder, "none.sqlite")).signIn("", "10.0.0.2")).ok).toBe(false);
  });

  test("has to wait after wrong tries, and does not make others wait", async () => {
    for (const _ of [1, 2, 3]) await people.signIn("wrong", "10.0.0.2");
    expect(await people.signIn(PASSWORD, "10.0.0.2")).toEqual({
      ok: false,
      problem: "too many wrong tries: wait 1 second",
    });
    expect((await people.signIn(PASSWORD, "10.0.0.3")).ok).toBe(true);
    at = 2;
    expect((await people.signIn(PASSWORD, "10.0.0.2")).ok).toBe(true);
  });
});

test("many wrong tries at once are slowed down like one after the other", async () => {
  const tried = await Promise.all([1, 2, 3, 4, 5, 6, 7, 8].map(() => people.signIn("wrong", "10.0.0.9")));
  const wrong = tried.filter((one) => !one.ok && one.problem === "this is not the owner’s password");
  expect(wrong.length).toBeLessThanOrEqual(3);
  expect(wrong.length).toBeGreaterThan(0);
});

describe("a helper", () => {
  test("joins with a code once, and with no other code", () => {
    const code = people.invite(hired("Wren")) ?? "";
    expect(people.invited(code)).toEqual({ id: 1, name: "Wren", role: "helper" });
    expect(people.invited(code)).not.toBe(null);
    const token = people.join(code) ?? "";
    expect(people.whoHas(token)?.name).toBe("Wren");
    expect([people.join(code), people.invited(code), people.join("guessed"), people.whoHas("guessed")]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  test("has a quarter of an hour to use the code, and a newer code ends an older", () => {
    const id = hired("Wren");
    const late = people.invite(id) ?? "";
    at = CODE_MINUTES * 60 + 1;
    expect(people.join(late)).toBe(null);
    const older = people.invite(id) ?? "";
    people.invite(id);
    expect(people.join(older)).toBe(null);
  });

  test("has one phone: the one that joins next puts the one before out", () => {
    const id = hired("Wren");
    const [first, second] = [joined(id), joined(id)];
    expect([people.whoHas(first), people.whoHas(second)?.name]).toEqual([null, "Wren"]);
  });

  test("is out at once when ended, and comes back under the same name and number", () => {
    const id = hired("Wren");
    const token = joined(id);
    people.end(id);
    expect([people.whoHas(token), people.hired(), people.invite(id)]).toEqual([null, [], null]);
    expect(hired("wren", "designer")).toBe(id);
    expect(people.whoHas(token)).toBe(null);
  });

  test("has a name of their own, which the owner's is not", () => {
    hired("Wren");
    expect(
      [people.hire("WREN", "helper"), people.hire("W\u200bren", "helper"), people.hire("Owner", "helper")].every(
        (said) => "problem" in said,
      ),
    ).toBe(true);
  });
});

test("signing out ends one device, and everywhere ends all of them and every code", async () => {
  const id = hired("Wren");
  const [a, b] = [await people.signIn(PASSWORD, "a"), await people.signIn(PASSWORD, "b")];
  if (!a.ok || !b.ok) throw new Error("not signed in");
  people.signOut(a.token);
  expect([people.whoHas(a.token), people.whoHas(b.token)?.id]).toEqual([null, 0]);
  const helper = joined(id);
  const code = people.invite(id) ?? "";
  people.signOutEverywhere();
  expect([people.whoHas(b.token), people.whoHas(helper), people.join(code)]).toEqual([null, null, null]);
});

test("the calendar has one address, which holds until it is ended, made anew, or all is ended", () => {
  expect(people.isCalendar("")).toBe(false);
  const first = people.newCalendar();
  expect([people.isCalendar(first), open().isCalendar(first), people.isCalendar(`${first}x`)]).toEqual([
    true,
    true,
    false,
  ]);
  const second = people.newCalendar();
  expect([people.isCalendar(first), people.isCalendar(second), people.hasCalendar]).toEqual([false, true, true]);
  people.endCalendar();
  expect([people.isCalendar(second), people.hasCalendar]).toEqual([false, false]);
  const third = people.newCalendar();
  people.signOutEverywhere();
  expect(people.isCalendar(third)).toBe(false);
});

test("the file of the people holds no password, token or code, lies beside the farm's, and is the owner's alone", async () => {
  const signed = await people.signIn(PASSWORD, "a");
  const code = people.invite(hired("Wren")) ?? "";
  const file = `${farm}.people.json`;
  const text = readFileSync(file, "utf8");
  expect(code.length).toBeGreaterThan(40);
  for (const secret of [PASSWORD, code, signed.ok ? signed.token : ""]) expect(text).not.toContain(secret);
  expect(statSync(file).mode & 0o777).toBe(0o600);
});

test("a file that is not whole lets nobody in", () => {
  const id = hired("Wren");
  const token = joined(id);
  new PeopleFile(farm).write(() => ({ ownerPassword: null }) as never);
  expect(() => people.whoHas(token)).toThrow();
});

test("what another program has written is known with the next request: a password that was set anew signs the owner out", async () => {
  const signed = await people.signIn(PASSWORD, "a");
  new PeopleFile(farm).write((before) => ({ ...before, sessions: [] }));
  expect(people.whoHas(signed.ok ? signed.token : "")).toBe(null);
});
