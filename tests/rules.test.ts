import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readSuite, readTests } from "./test-titles";

const idsIn = (text: string): string[] => [...text.matchAll(/\[([A-Z]+\d+)\]/g)].map(([, id]) => id);

/** The numbers of the rules as `lib/plan/SPEC.md` lists them. */
const ruleIds = [...readFileSync("lib/plan/SPEC.md", "utf8").matchAll(/^- \*\*([A-Z]+\d+)\*\*/gm)].map(([, id]) => id);

const suite = readSuite("tests");
const asserts = (calls: ReadonlySet<string>): boolean => [...calls].some((call) => suite.asserting.has(call));

test("every rule has one number", () => {
  expect(ruleIds.length).toBeGreaterThan(40);
  expect(ruleIds.filter((id, index) => ruleIds.indexOf(id) !== index)).toEqual([]);
});

test("every rule stands in the title of a test that runs an expect, and every rule in a title exists", () => {
  const quoted = suite.titled.flatMap(({ kind, title, calls }) =>
    kind === "test" && asserts(calls) ? idsIn(title) : [],
  );
  expect(ruleIds.filter((id) => !quoted.includes(id))).toEqual([]);
  expect(suite.titled.flatMap(({ title }) => idsIn(title)).filter((id) => !ruleIds.includes(id))).toEqual([]);
});

test("every test runs an expect, itself or in a function it calls", () => {
  const silent = suite.titled.filter(({ kind, calls }) => kind === "test" && !asserts(calls));
  expect(silent.map(({ path, title }) => `${path}: ${title}`)).toEqual([]);
});

test("titles are parsed: a comment and a string are none, a template and a table of cases are", () => {
  const { titled } = readTests(
    "some.test.ts",
    `// test("[A1] in a comment")
     const text = 'test("[A2] in a string", () => expect(1))';
     test.each([[1]])("[A3] a case of %i", (one) => { expect(one).toBe(1); });
     describe("group", () => { test(\`[A4] of \${text}\`, () => { text.trim(); }); });`,
  );
  expect(titled.map(({ kind, title, calls }) => [kind, title, calls.has("expect")])).toEqual([
    ["test", "[A3] a case of %i", true],
    ["group", "group", false],
    ["test", "[A4] of …", false],
  ]);
});

test("every rule that the code speaks of exists", () => {
  const spoken = ["lib", "app", "db", "demo"].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((path) => /\.tsx?$/.test(path))
      .flatMap((path) =>
        idsIn(readFileSync(join(folder, path), "utf8")).map((id) => ({ path: join(folder, path), id })),
      ),
  );
  expect(spoken.filter(({ id }) => !ruleIds.includes(id))).toEqual([]);
});
