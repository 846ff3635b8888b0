import { scryptSync } from "node:crypto";
import { expect, test } from "vitest";
import { hashOf, isPassword, PASSWORD_LETTERS, passwordProblem } from "#db/people/password";

test("Node's scrypt gives the key of RFC 7914, section 12, third example", () => {
  const key = scryptSync("pleaseletmein", "SodiumChloride", 64, { N: 16384, r: 8, p: 1 });
  expect(key.toString("hex")).toBe(
    "7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2d5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887",
  );
});

test("a password is known again, another is not, and the same one is kept otherwise each time", async () => {
  const [one, two] = [await hashOf("three hens and a heron"), await hashOf("three hens and a heron")];
  expect(one).toMatch(/^scrypt 131072 8 1 [\w-]{22} [\w-]{43}$/);
  expect(one).not.toBe(two);
  expect(await isPassword("three hens and a heron", one)).toBe(true);
  expect(await isPassword("three hens and a Heron", one)).toBe(false);
  for (const odd of ["", "scrypt", "plain 1 1 1 a three hens and a heron"])
    expect(await isPassword("three hens and a heron", odd)).toBe(false);
});

test("an é that one keyboard writes as one letter and another as two is the same", async () => {
  expect(await isPassword("cafe\u0301 au lait noir", await hashOf("caf\u00e9 au lait noir"))).toBe(true);
});

test("a password has twelve letters or more, not all alike, and not more than 128", () => {
  expect(passwordProblem("a".repeat(PASSWORD_LETTERS.fewest - 1))).toContain("12 letters or more");
  expect(passwordProblem("aaaaaaaaaaaaaaaa")).toContain("nearly all the same");
  expect(passwordProblem("🌷🌸🌹🌺🌻🌼🌷🌸🌹🌺🌻")).toContain("12 letters or more");
  expect(passwordProblem("three hens and")).toBe(null);
  expect(passwordProblem("ab cde".repeat(30))).toContain("128");
});
