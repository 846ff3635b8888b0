import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type CallExpression, type Expression, parseSync, Visitor } from "oxc-parser";

/** A test or a group of tests as the parser reads it: the file, the title, and the names of all functions called or handed over inside. */
export type Titled = {
  readonly path: string;
  readonly kind: "test" | "group";
  /** Of a title made from a template, the parts that stand in the file. */
  readonly title: string;
  readonly calls: ReadonlySet<string>;
};

/** What the tests say and do: every titled test, and the names of the functions declared in `tests/` that lead to an `expect`. */
export type Suite = { readonly titled: readonly Titled[]; readonly asserting: ReadonlySet<string> };

/** Reads every TypeScript file below a folder. Comments and strings elsewhere are no titles: the code is parsed, not searched. */
export function readSuite(folder: string): Suite {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".ts"));
  const read = paths.map((path) => readTests(join(folder, path), readFileSync(join(folder, path), "utf8")));
  return {
    titled: read.flatMap(({ titled }) => titled),
    asserting: reaching(
      "expect",
      read.flatMap(({ functions }) => functions),
    ),
  };
}

type Declared = { readonly name: string; readonly calls: ReadonlySet<string> };

/** The titled tests of one file, and its named functions with what they call. */
export function readTests(path: string, text: string): { titled: Titled[]; functions: Declared[] } {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new RangeError(`${path} must be TypeScript: ${errors[0].message}`);
  const titled: Titled[] = [];
  const functions: Declared[] = [];
  const calls: { readonly start: number; readonly end: number; readonly name: string }[] = [];
  const spans: { readonly start: number; readonly end: number; readonly use: (calls: Set<string>) => void }[] = [];
  new Visitor({
    CallExpression(node) {
      const name = calledName(node.callee);
      // A function handed over, as to `fc.property`, is called there.
      const handed = node.arguments.flatMap((one) => (one.type === "Identifier" ? one.name : []));
      for (const called of name ? [name, ...handed] : handed)
        calls.push({ start: node.start, end: node.end, name: called });
      const kind = name === "test" || name === "it" ? "test" : name === "describe" ? "group" : null;
      const title = kind && titleOf(node);
      if (kind && title !== null)
        spans.push({ ...node, use: (inside) => titled.push({ path, kind, title: title as string, calls: inside }) });
    },
    FunctionDeclaration({ id, start, end }) {
      if (id) spans.push({ start, end, use: (inside) => functions.push({ name: id.name, calls: inside }) });
    },
    VariableDeclarator({ id, init, start, end }) {
      if (id.type === "Identifier" && init?.type === "ArrowFunctionExpression")
        spans.push({ start, end, use: (inside) => functions.push({ name: id.name, calls: inside }) });
    },
  }).visit(program);
  for (const { start, end, use } of spans)
    use(new Set(calls.filter((call) => call.start > start && call.end <= end).map(({ name }) => name)));
  return { titled, functions };
}

/** `expect(x).toBe` and `expect.soft(x)` call `expect`; `test.each(rows)("…")` calls `test`; `a.b()` of anything else calls `b`. */
function calledName(callee: Expression): string | null {
  if (callee.type === "Identifier") return callee.name;
  if (callee.type === "CallExpression") return calledName(callee.callee);
  if (callee.type === "TaggedTemplateExpression") return calledName(callee.tag);
  if (callee.type !== "MemberExpression") return null;
  const root = rootName(callee);
  if (root === "expect" || root === "test" || root === "it" || root === "describe") return root;
  return callee.property.type === "Identifier" ? callee.property.name : null;
}

function rootName(node: Expression): string | null {
  if (node.type === "Identifier") return node.name;
  if (node.type === "MemberExpression") return rootName(node.object);
  return node.type === "CallExpression" ? rootName(node.callee) : null;
}

function titleOf({ arguments: [first] }: CallExpression): string | null {
  if (first?.type === "Literal" && typeof first.value === "string") return first.value;
  if (first?.type === "TemplateLiteral") return first.quasis.map(({ value }) => value.cooked ?? "").join("…");
  return null;
}

/** The names from which calls lead to this name, itself included. */
function reaching(name: string, functions: readonly Declared[]): Set<string> {
  const found = new Set([name]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const { name: one, calls } of functions) if ([...calls].some((call) => found.has(call))) found.add(one);
  }
  return found;
}
