import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ACTIONS, mayCall, mayOpen, ROUTES } from "../../../app/people/allowed";
import { HOMES } from "../../../app/people/homes";
import { patternOf } from "../../../app/people/pattern-of";

const files = readdirSync("app", { recursive: true, encoding: "utf8" });

test("every page and route of the tool has its row in the table, and no row is of one that is gone", () => {
  const found = files.flatMap((name) => {
    const [, folder] = /^(.*?)\/?(?:page\.tsx|route\.ts)$/.exec(name) ?? [];
    return folder === undefined || /[^/]$/.test(name.slice(0, -"page.tsx".length)) ? [] : [`/${folder}`];
  });
  expect(found.length).toBeGreaterThan(40);
  expect(Object.keys(ROUTES).sort()).toEqual(found.sort());
});

test("every server action has its row in the table, and no row is of one that is gone", () => {
  const found = files
    .filter((name) => /\.tsx?$/.test(name))
    .flatMap((name) => {
      const code = readFileSync(`app/${name}`, "utf8");
      if (!code.startsWith('"use server"')) return [];
      return [...code.matchAll(/^export (?:const|async function) (\w+)/gm)].map(([, action]) => `${name}#${action}`);
    });
  expect(found.length).toBeGreaterThan(50);
  expect(Object.keys(ACTIONS).sort()).toEqual(found.sort());
});

test("each role may open where it begins, and the owner may open and call all", () => {
  for (const role of ["owner", "helper", "designer", "stranger"] as const)
    expect(mayOpen(role, HOMES[role])).toBe(true);
  for (const route of Object.keys(ROUTES)) expect(mayOpen("owner", route)).toBe(true);
  for (const action of Object.keys(ACTIONS)) expect(mayCall("owner", action)).toBe(true);
});

test("a path falls under the row that names it, before one in brackets; one that no row has is the owner's alone", () => {
  expect(patternOf("/bookings/new", ROUTES)).toBe("/bookings/new");
  expect(patternOf("/beds/17", ROUTES)).toBe("/beds/[id]");
  expect(patternOf("/beds/grid", ROUTES)).toBe("/beds/grid");
  expect(mayOpen("designer", "/beds/grid")).toBe(false);
  for (const path of ["/beds/", "/beds/1/2", "/Beds", "/nowhere", "/toString", "//beds"])
    expect([path, mayOpen("designer", path)]).toEqual([path, false]);
  for (const action of ["", "toString", "bookings/actions.ts"]) expect(mayCall("designer", action)).toBe(false);
});
