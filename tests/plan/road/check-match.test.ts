import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { oneOf, seededRandom } from "#lib/maths/random";
import { checkMatch, type Match, type Serving } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";

/** Matches with servings of many needs: a proof must see one number that was changed in any of them. */
const matches = Array.from(
  { length: 100 },
  (_, index) => provenPlan(seededFarm(index + 1, { bedCount: 24, bookingCount: 10 }), 2027).match,
);

const withServing = (match: Match, index: number, changed: Partial<Serving>): Match => ({
  ...match,
  servings: match.servings.map((serving, place) => (place === index ? { ...serving, ...changed } : serving)),
});

/** Corrupts one serving of each match that has any; how many were corrupted. */
function eachCorrupted(corrupt: (match: Match, index: number, random: () => number) => Match | null): number {
  let corruptedCount = 0;
  matches.forEach((match, seed) => {
    const random = seededRandom(seed);
    if (match.servings.length === 0) return;
    const bad = corrupt(match, oneOf(random, [...match.servings.keys()]), random);
    if (bad === null) return;
    corruptedCount++;
    expect(checkMatch(bad), `seed ${seed + 1}`).not.toEqual([]);
  });
  return corruptedCount;
}

describe("the proof of a match catches", () => {
  test("no fault in any of 100 matches as they are", () => {
    for (const match of matches) expect(checkMatch(match)).toEqual([]);
  });

  test("a serving with one stem more or one stem fewer", () => {
    const count = eachCorrupted((match, index, random) =>
      withServing(match, index, { stems: match.servings[index].stems + oneOf(random, [-1, 1]) }),
    );
    expect(count).toBeGreaterThan(90);
  });

  test("a serving left out, and one told twice", () => {
    expect(
      eachCorrupted((match, index) => ({ ...match, servings: match.servings.toSpliced(index, 1) })),
    ).toBeGreaterThan(90);
    const twice = eachCorrupted((match, index) => ({ ...match, servings: [...match.servings, match.servings[index]] }));
    expect(twice).toBeGreaterThan(90);
  });

  test("a serving said to be cut on another day", () => {
    const count = eachCorrupted((match, index, random) =>
      withServing(match, index, { cutDay: match.servings[index].cutDay + oneOf(random, [-2, -1, 1, 2]) }),
    );
    expect(count).toBeGreaterThan(90);
  });

  test("a serving from another stand than the lots of its day", () => {
    const count = eachCorrupted((match, index) => {
      const { stand, supplyIndex } = match.servings[index];
      const other = match.servings.find((serving) => serving.supplyIndex !== supplyIndex && serving.stand !== stand);
      return other ? withServing(match, index, { stand: other.stand }) : null;
    });
    expect(count).toBeGreaterThan(90);
  });

  test("two servings of alike stems handed to each other's need, where the stems differ in variety", () => {
    const count = eachCorrupted((match, index) => {
      const { supplyIndex, needIndex, stems } = match.servings[index];
      const other = match.servings.findIndex(
        (serving) => serving.stems === stems && serving.supplyIndex !== supplyIndex && serving.needIndex !== needIndex,
      );
      if (other < 0) return null;
      const once = withServing(match, index, { needIndex: match.servings[other].needIndex });
      return withServing(once, other, { needIndex });
    });
    expect(count).toBeGreaterThan(50);
  });

  test("a need said to be short of one stem more", () => {
    const count = eachCorrupted((match, index) => {
      const shortStems = match.shortStems.slice();
      shortStems[match.servings[index].needIndex]++;
      return { ...match, shortStems };
    });
    expect(count).toBeGreaterThan(90);
  });

  test("a price moved by a cent", () => {
    const count = eachCorrupted((match, index, random) => {
      const price = match.solution.price.slice();
      price[match.network.nodeOfNeed(match.servings[index].needIndex)] += oneOf(random, [-1, 1]);
      return { ...match, solution: { ...match.solution, price } };
    });
    expect(count).toBeGreaterThan(90);
  });
});
