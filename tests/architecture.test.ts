import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const files = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => ({ path: join(folder, path), text: readFileSync(join(folder, path), "utf8") }));

const pathsWhere = (folder: string, isWrong: (file: { path: string; text: string }) => boolean) =>
  files(folder)
    .filter(isWrong)
    .map(({ path }) => path);

const importsOf = (text: string): string[] =>
  [...text.matchAll(/(?:from|import)\s*\(?\s*"([^"]+)"/g)].map(([, name]) => name);

test("lib never asks for the time, the dice or the machine: callers pass them in", () => {
  const impure =
    /\bMath\.random\b|\bDate\.now\b|\bnew Date\(\)|\bprocess\.|\bconsole\.|\bperformance\.|\bcrypto\.|\bsetTimeout\b/;
  expect(pathsWhere("lib", ({ text }) => impure.test(text))).toEqual([]);
});

test("only lib/domain/day.ts touches Date or date-fns", () => {
  const touches = /\bnew Date\b|\bDate\.|from "date-fns/;
  expect(pathsWhere("lib", ({ text }) => touches.test(text))).toEqual(["lib/domain/day.ts"]);
});

test("no file of lib imports the screens, the farm's records, the demo, the tests or the machine", () => {
  const outside = /^#(app|db|demo)\b|^node:|(^|\/)(app|db|demo|tests)\/|^next\b|^react\b/;
  expect(pathsWhere("lib", ({ text }) => importsOf(text).some((name) => outside.test(name)))).toEqual([]);
});

test("db knows the words of the farm and nothing of the plan or the screens", () => {
  const forbidden = /^#lib\/(plan|maths|sheets)|^#demo|(^|\/)app\//;
  expect(pathsWhere("db", ({ text }) => importsOf(text).some((name) => forbidden.test(name)))).toEqual([]);
});

test("of all else, only the clock, that of the phone, the time on the wall, the copies and the loading of the demo touch Date: no other file can know a time zone", () => {
  const touches =
    /\bnew Date\b|\bDate\.(now|parse|UTC)\b|\bDateTimeFormat\b|\btoLocale(Date|Time)String\b|from "date-fns/;
  const found = ["app", "db", "demo"].flatMap((folder) => pathsWhere(folder, ({ text }) => touches.test(text)));
  // Copies are named and aged by moments in UTC, which are the same in every zone.
  expect(found.filter((path) => !path.startsWith("db/copies/"))).toEqual([
    "app/clock.ts",
    "app/field/phone-clock.client.ts",
    "db/journal/wall-time.ts",
    "demo/load-demo.ts",
  ]);
});

test("a test that plans proves the match: it plans through tests/proven-plan.ts", () => {
  const plans = /import \{[^}]*\bplan\b[^}]*\} from "#lib\/plan\/road\/plan"/;
  const unproven = pathsWhere("tests", ({ text }) => plans.test(text)).filter(
    (path) => !path.startsWith("tests/bench/"),
  );
  expect(unproven).toEqual(["tests/proven-plan.ts"]);
});

test("where a need or a stem lies in a flow is known to the match alone", () => {
  const index = /\b(firstNeed|firstSupply|firstPassage|firstServingArc|varietyOfSupply|varietyOfPassage)\b/;
  const touches = (folder: string) => pathsWhere(folder, ({ text }) => index.test(text));
  expect(
    [...touches("lib"), ...touches("app")].filter((path) => !/^lib\/plan\/road\/match[a-z-]*\.ts$/.test(path)),
  ).toEqual([]);
});

test("the house has the rooms it was built with, and no others", () => {
  const built = new Set(["node_modules", "coverage"]);
  const folders = readdirSync(".", { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith(".") && !built.has(entry.name))
    .map(({ name }) => name);
  expect(folders.sort()).toEqual(["app", "db", "demo", "lib", "tests"]);
  expect(readdirSync("lib").sort()).toEqual(["domain", "maths", "plan", "sheets"]);
});

/** For each room of lib/plan, the rooms that biome.json lets it import. */
const arrows = (): Map<string, string[]> => {
  const { overrides } = JSON.parse(readFileSync("biome.json", "utf8"));
  return new Map(
    readdirSync("lib/plan", { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => {
        const own = overrides.filter(({ includes }: { includes: string[] }) =>
          includes.includes(`lib/plan/${name}/**`),
        );
        const named = [...JSON.stringify(own).matchAll(/!#lib\/plan\/([a-z-]+)\//g)].map(([, room]) => room);
        return [name, own.length === 1 ? named.sort() : ["no rule of its own"]];
      }),
  );
};

test("each room of lib/plan has its own arrows in biome.json, and they lead down: to rooms before it, never in a circle", () => {
  const below = new Set<string>();
  for (const room of ["road", "learning", "winter", "what-if", "chance", "words"]) {
    for (const other of arrows().get(room) ?? []) expect(below.has(other), `${room} imports ${other}`).toBe(true);
    below.add(room);
  }
  expect([...arrows().keys()].sort()).toEqual([...below].sort());
});

test("no file is a drawer for odds and ends", () => {
  const drawer = /(^|\/)(utils?|helpers?|common|misc|index)\.tsx?$/;
  for (const folder of ["app", "db", "demo", "lib", "tests"])
    expect(pathsWhere(folder, ({ path }) => drawer.test(path))).toEqual([]);
});
