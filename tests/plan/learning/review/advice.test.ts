import { describe, expect, test } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { recipeWith, reviewAdvice } from "#lib/plan/learning/review/advice";
import { booking, day, farm, focal, recipe, snapshot } from "../../../small-farm";

/** Events of 100 focal stems asked without spare, each with 110 had and so many used. */
const lines = (used: readonly number[], given: Partial<Snapshot> = {}): Snapshot =>
  snapshot({
    farm: farm({ spareShare: 0.1 }),
    bookings: used.map((_, index) => booking({ id: index + 1, stemLines: focal(100), spareShare: 0.1 })),
    reviews: used.map((stems, index) => reviewOf(index + 1, stems)),
    ...given,
  });

const reviewOf = (id: number, used: number) => ({
  id,
  bookingId: id,
  role: "focal" as const,
  plannedStems: 110,
  cutStems: Math.max(110, used),
  boughtStems: 0,
  thrownAwayStems: Math.max(110, used) - used,
});

/** The same events, asked as ten bouquets of ten. */
const bouquets = (used: readonly number[]): Snapshot => {
  const recipes = [recipe({ id: 1, lines: [{ role: "focal", stemsPerPiece: 10, asks: [], colours: "palette" }] })];
  const pieces = [{ recipeId: 1, pieceCount: 10, colours: [] }];
  return lines(used, {
    recipes,
    bookings: used.map((_, index) => booking({ id: index + 1, pieces, spareShare: 0.1 })),
  });
};

describe("what reviewed events suggest", () => {
  test("[V2] three events that used 102, 104 and 103 of 100 asked were all served by a spare of 4 %, not 10", () => {
    expect(reviewAdvice(lines([102, 104, 103]), 2027).spare).toEqual({ was: 0.1, suggested: 0.04, eventCount: 3 });
  });

  test("[V2] two events suggest nothing, nor do three of which one used all its spare", () => {
    expect(reviewAdvice(lines([102, 104]), 2027).spare).toBeNull();
    expect(reviewAdvice(lines([102, 104, 110]), 2027).spare).toBeNull();
  });

  test("[V2] three events that used 115, 125 and 118 suggest 15 %, the least of them; none is suggested below nothing", () => {
    expect(reviewAdvice(lines([115, 125, 118]), 2027).spare?.suggested).toBe(0.15);
    expect(reviewAdvice(lines([80, 90, 95]), 2027).spare?.suggested).toBe(0);
  });

  test("[V2] events of two seasons ago and roles not yet reviewed do not count", () => {
    const old = lines([102, 104, 103]);
    const bookings = old.bookings.map((row, index) => (index === 0 ? { ...row, eventOn: day("2025-06-14") } : row));
    expect(reviewAdvice({ ...old, bookings }, 2027).spare).toBeNull();
    expect(reviewAdvice({ ...old, reviews: old.reviews.slice(1) }, 2027).spare).toBeNull();
  });

  test("[V3] bouquets of ten that used 92, 88 and 90 of 100 asked need 9.5 stems each; taken, nothing more is suggested", () => {
    const farm = bouquets([92, 88, 90]);
    const { recipes, spare } = reviewAdvice(farm, 2027);
    expect(recipes).toMatchObject([{ role: "focal", was: 10, suggested: 9.5, eventCount: 3 }]);
    expect(spare).toBeNull();
    expect(reviewAdvice({ ...farm, recipes: [recipeWith(recipes[0])] }, 2027).recipes).toEqual([]);
  });

  test("[V3] bouquets that used 121, 133 and 125 where 110 were had are 11 stems each; one stem over says nothing", () => {
    expect(reviewAdvice(bouquets([121, 133, 125]), 2027).recipes).toMatchObject([{ was: 10, suggested: 11 }]);
    expect(reviewAdvice(bouquets([110, 110, 110]), 2027).recipes).toEqual([]);
  });

  test("[V3] a recipe that asks for less than half of the role, or has two lines of it, is left alone", () => {
    const farm = bouquets([80, 80, 80]);
    const bookings = farm.bookings.map((row) => ({ ...row, stemLines: focal(101) }));
    expect(reviewAdvice({ ...farm, bookings }, 2027).recipes).toEqual([]);
    const [line] = farm.recipes[0].lines;
    const two = [{ ...farm.recipes[0], lines: [line, { ...line, stemsPerPiece: 1 }] }];
    expect(reviewAdvice({ ...farm, recipes: two }, 2027).recipes).toEqual([]);
  });

  test("[V2] [V3] trying every per cent and every half stem one by one finds the same", () => {
    const random = seededRandom(2027);
    for (let run = 0; run < 300; run++) {
      const used = Array.from({ length: wholeBetween(random, 3, 5) }, () => wholeBetween(random, 70, 140));
      expect(reviewAdvice(lines(used), 2027).spare?.suggested ?? 0.1).toBeCloseTo(spareTried(used), 9);
      expect(reviewAdvice(bouquets(used), 2027).recipes[0]?.suggested ?? 10).toBe(stemsTried(used));
    }
  });
});

/** The least whole per cent that was enough for each, where each used less than the spare; the most that each used, where each used more. */
function spareTried(used: readonly number[]): number {
  const percents = Array.from({ length: 101 }, (_, percent) => percent);
  const enough = percents.find((percent) => used.every((stems) => stems <= 100 + percent)) ?? 100;
  const each = percents.findLast((percent) => used.every((stems) => stems >= 100 + percent)) ?? 0;
  if (used.every((stems) => stems < 110)) return enough / 100;
  return used.every((stems) => stems > 110) ? each / 100 : 0.1;
}

function stemsTried(used: readonly number[]): number {
  const halves = Array.from({ length: 60 }, (_, half) => half / 2);
  if (used.every((stems) => stems < 100)) return halves.find((each) => used.every((stems) => stems <= 10 * each)) ?? 10;
  if (used.some((stems) => stems < 111)) return 10;
  return Math.max(10, halves.findLast((each) => used.every((stems) => stems >= 11 * each)) ?? 10);
}
