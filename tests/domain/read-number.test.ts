import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DecimalMark, readNumber, writeNumber } from "#lib/domain/read-number";

const said = (text: string, mark?: DecimalMark) => {
  const reading = readNumber(text, mark);
  return reading.ok ? reading.value : "refused";
};

describe("a number that is typed or imported", () => {
  test.each<[string, number | "refused", number | "refused"]>([
    ["12.", 12, 12],
    ["1e7", 10_000_000, 10_000_000],
    ["1,200", 1200, 1.2],
    ["12,000,000", 12_000_000, "refused"],
    ["1,5", "refused", 1.5],
    ["1.5", 1.5, 1.5],
    ["1.200", 1.2, "refused"],
    ["0.075", 0.075, 0.075],
    ["0,075", "refused", 0.075],
    ["1.200,5", "refused", 1200.5],
    ["1,200.5", 1200.5, "refused"],
    ["1.200.000", "refused", 1_200_000],
    ["-3", -3, -3],
    [".5", 0.5, 0.5],
    ["12 %", "refused", "refused"],
    ["12 stems", "refused", "refused"],
    ["1 200", "refused", "refused"],
    ["0x10", "refused", "refused"],
    ["1e999", "refused", "refused"],
    ["", "refused", "refused"],
  ])("%s is %s with a decimal point and %s with a decimal comma", (text, withPoint, withComma) => {
    expect([said(text, "point"), said(text, "comma")]).toEqual([withPoint, withComma]);
  });

  test("a refusal says both ways to write what could be meant", () => {
    expect(readNumber("1,5")).toEqual({
      ok: false,
      message: '"1,5" has a comma: write 1.5 for a decimal or 15 for a whole',
    });
    expect(readNumber("1.200", "comma")).toEqual({
      ok: false,
      message: '"1.200" may be a whole or a fraction: write 1200 or 1,200',
    });
  });

  test("every finite number reads back from its text, with either mark", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom("point", "comma"),
        (number, mark) => {
          expect(readNumber(writeNumber(number, mark), mark)).toEqual({ ok: true, value: number + 0 });
        },
      ),
      { seed: 72, numRuns: 500 },
    );
  });
});
