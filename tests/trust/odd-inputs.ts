import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";

/** Texts that programs trip over, each from a fault that some program had. */
const ODD_TEXTS = [
  "",
  " ",
  "0",
  "-1",
  "1.5",
  "1e309",
  "-0",
  "NaN",
  "Infinity",
  "9007199254740993",
  "99999999999999999999",
  "0x10",
  "1,200",
  "null",
  "undefined",
  "[object Object]",
  "__proto__",
  "constructor",
  "9000-12-31",
  "1000-01-01",
  "2027-02-29",
  "0000-00-00",
  "2027-W53",
  "8999-W52",
  "02-29",
  "'; DROP TABLE bed; --",
  "<script>alert(1)</script>",
  "=cmd|'/C calc'!A1",
  "../../etc/passwd",
  "//elsewhere.example/",
  "/\\elsewhere.example",
  "javascript:alert(1)",
  "%ff",
  "%00",
  "\u0000",
  "\uD800",
  "\uFFFD",
  "\u202E",
  "é".normalize("NFD"),
  "🌷".repeat(20),
  "a".repeat(3000),
  "9".repeat(400),
  "x,".repeat(500),
  "/".repeat(500),
  "\r\n\r\n",
  '"',
  "[]",
  "{}",
  '["$1:__proto__:then"]',
  '{"then":1}',
];

export const oddText = (random: RandomSource): string => oneOf(random, ODD_TEXTS);

/** A text with a few of its letters lost, doubled, changed, or an odd text put among them. */
export function mangled(random: RandomSource, text: string): string {
  let changed = text;
  for (let count = wholeBetween(random, 1, 3); count > 0; count--) {
    const at = wholeBetween(random, 0, changed.length);
    const put = oneOf(random, [
      "",
      changed.slice(at, at + 5),
      oddText(random).slice(0, 40),
      String.fromCharCode(wholeBetween(random, 0, 0x2ff)),
    ]);
    changed = changed.slice(0, at) + put + changed.slice(at + wholeBetween(random, 0, 3));
  }
  return changed;
}
