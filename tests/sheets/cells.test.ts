import fc from "fast-check";
import { expect, test } from "vitest";
import { Guesses, MOST_LETTER_PAIRS, nearestName } from "#lib/domain/nearest-name";
import { choice, decimal, listOf, origin, weekday, whole, word, yesNo } from "#lib/domain/records/kinds";

const SEED = 72;
const refusal = (reading: { ok: boolean; message?: string }) => (reading.ok ? "accepted" : reading.message);

test("a number is read in full or refused with how to write it", () => {
  expect(decimal.read("12.5")).toEqual({ ok: true, value: 12.5 });
  expect(decimal.read("-3")).toEqual({ ok: true, value: -3 });
  expect(decimal.read("1e-7")).toEqual({ ok: true, value: 1e-7 });
  expect(refusal(decimal.read("1,5"))).toBe('"1,5" has a comma: write 1.5 for a decimal or 15 for a whole');
  expect(refusal(decimal.read("12.5 %"))).toBe('"12.5 %" is a percentage: write it as a share, 0.125');
  for (const text of ["", "12 stems", "1.2.3", "Infinity", "1e999", "0x10", "NaN", "1_000"])
    expect(refusal(decimal.read(text))).toMatch(/is not a number: write digits alone/);
  expect(refusal(whole.read("3.7"))).toBe('"3.7" is not a whole number: write 4 or another whole number');
});

test("every finite number reads back from its text", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
      expect(decimal.read(String(number))).toEqual({ ok: true, value: number + 0 });
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test("words of a list are found in any case, with hyphens or spaces; others get the nearest", () => {
  const treatment = choice(["field", "kept-in-ground"]);
  expect(treatment.read("Kept in ground")).toEqual({ ok: true, value: "kept-in-ground" });
  expect(refusal(treatment.read("feild"))).toBe(
    '"feild" is not known here: write one of field, kept-in-ground; did you mean "field"?',
  );
});

test("a list keeps its order; an empty place is refused, since what follows would shift", () => {
  expect(listOf(decimal).read("0.5 / 1/1.5")).toEqual({ ok: true, value: [0.5, 1, 1.5] });
  expect(listOf(word).read("")).toEqual({ ok: true, value: [] });
  expect(refusal(listOf(decimal).read("0.5 / / 1.5"))).toMatch(/an empty place in "0.5 \/ \/ 1.5": write a number/);
  expect(refusal(listOf(decimal).read("0.5 / x / y"))).toMatch(/"x" is not a number.*"y" is not a number/);
});

test("any list of trimmed words, slashes and backslashes and all, reads back from its cell", () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom("/", "\\", "a", " ", "\n"), minLength: 1 }));
  fc.assert(
    fc.property(words, (list) => {
      const trimmed = list.map((item) => item.trim()).filter((item) => item !== "");
      expect(listOf(word).read(listOf(word).write(trimmed))).toEqual({ ok: true, value: trimmed });
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test("yes and no, weekdays and origins come as people write them", () => {
  expect(["yes", "TRUE", "y"].map((text) => yesNo.read(text))).toEqual(Array(3).fill({ ok: true, value: true }));
  expect(["no", "False", "N"].map((text) => yesNo.read(text))).toEqual(Array(3).fill({ ok: true, value: false }));
  expect(refusal(yesNo.read("maybe"))).toBe('"maybe" is neither yes nor no: write one of the two');
  expect(listOf(weekday).read("Mon / wednesday / Su")).toEqual({ ok: true, value: [1, 3, 7] });
  expect(refusal(weekday.read("S"))).toMatch(/is not a weekday: write one of Mon/);
  expect(origin.read("Published: DOLE-DAHLIA")).toEqual({
    ok: true,
    value: { mark: "published", source: "DOLE-DAHLIA" },
  });
  expect(origin.read("common practice")).toEqual({ ok: true, value: { mark: "common practice", source: null } });
  expect(refusal(origin.read("hearsay: a neighbour"))).toMatch(/"hearsay" is not known here: write one of published/);
});

test("the nearest name is at most one slip away for each three letters, swaps counting once", () => {
  const names = ["Dahlia", "Zinnia", "Snapdragon", "D8"];
  expect(nearestName("dalhia", names)).toBe("Dahlia");
  expect(nearestName("Snapdargons", names)).toBe("Snapdragon");
  expect(nearestName("D9", names)).toBe("D8");
  expect(nearestName("Tulip", names)).toBeUndefined();
});

test("guesses are left out once a whole file of unknown names has used them up", () => {
  const names = Array.from({ length: 30_000 }, (_, index) => `Bed ${index}`);
  const guesses = new Guesses();
  let askedCount = 0;
  const found = Array.from({ length: 20 }, () =>
    guesses.didYouMean("Bed 77x", () => {
      askedCount += 1;
      return names;
    }),
  );
  const pairCount = names.reduce((sum, name) => sum + ("Bed 77x".length + 1) * (name.length + 1), 1);
  expect(askedCount).toBe(Math.ceil(MOST_LETTER_PAIRS / pairCount));
  expect(found).toEqual(found.map((_, index) => (index < askedCount ? '; did you mean "Bed 77"?' : "")));
});

test("no guess is made at a text far longer than a name, nor among no names at all for ever", () => {
  const guesses = new Guesses();
  let askedCount = 0;
  const none = () => {
    askedCount += 1;
    return [];
  };
  expect(guesses.nearest("x".repeat(100_000), none)).toBeUndefined();
  expect(askedCount).toBe(0);
});
