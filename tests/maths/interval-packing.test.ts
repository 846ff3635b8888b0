import fc from "fast-check";
import { expect, test } from "vitest";
import { type Interval, packedIntervals } from "#lib/maths/interval-packing";
import { loadLinearSolver, solveOnce } from "#lib/maths/linear-programme";

const worthOf = (intervals: readonly Interval[], taken: readonly boolean[]) =>
  intervals.reduce((sum, { worth }, index) => (taken[index] ? sum + worth : sum), 0);
const fits = (intervals: readonly Interval[], taken: readonly boolean[], places: readonly number[]) =>
  places.every((most, time) => {
    const at = intervals.filter(({ from, until }, index) => taken[index] && from <= time && time < until);
    return at.length <= most;
  });

test("of three buckets for two places over two nights the two that are worth most are taken, and one of no night takes no place", () => {
  const one = { from: 0, until: 2, worth: 5 };
  expect(packedIntervals([one, { ...one, worth: 9 }, { ...one, worth: 7 }], [2, 2])).toEqual([false, true, true]);
  expect(packedIntervals([{ from: 1, until: 1, worth: 0 }, one], [0, 0])).toEqual([true, false]);
});

test("two short ones come in for a long one that is worth less than both, and do not for one that is worth more", () => {
  const short = [
    { from: 0, until: 1, worth: 4 },
    { from: 1, until: 3, worth: 4 },
  ];
  expect(packedIntervals([{ from: 0, until: 3, worth: 7 }, ...short], [1, 1, 1])).toEqual([false, true, true]);
  expect(packedIntervals([{ from: 0, until: 3, worth: 9 }, ...short], [1, 1, 1])).toEqual([true, false, false]);
});

test("an interval outside the times, or one that ends before it begins, is refused", () => {
  expect(() => packedIntervals([{ from: 0, until: 2, worth: 1 }], [1])).toThrow(RangeError);
  expect(() => packedIntervals([{ from: 1, until: 0, worth: 1 }], [1])).toThrow(RangeError);
});

const anyIntervals = (maxLength: number) =>
  fc.record({
    intervals: fc.array(
      fc
        .record({ from: fc.integer({ min: 0, max: 5 }), nights: fc.integer({ min: 0, max: 4 }), worth: fc.nat(20) })
        .map(({ from, nights, worth }) => ({ from, until: Math.min(6, from + nights), worth })),
      { maxLength, size: "max" },
    ),
    places: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 6, maxLength: 6 }),
  });

test("any choice of up to nine is worth what the best of all choices is, each tried", () => {
  fc.assert(
    fc.property(anyIntervals(9), ({ intervals, places }) => {
      const taken = packedIntervals(intervals, places);
      expect(fits(intervals, taken, places)).toBe(true);
      let best = 0;
      for (let choice = 0; choice < 2 ** intervals.length; choice++) {
        const tried = intervals.map((_, index) => (choice >> index) % 2 === 1);
        if (fits(intervals, tried, places)) best = Math.max(best, worthOf(intervals, tried));
      }
      expect(worthOf(intervals, taken)).toBe(best);
    }),
    { seed: 20261126, numRuns: 300 },
  );
});

test("a choice of up to sixty is worth what an independent solver finds, which may take parts", async () => {
  const solver = await loadLinearSolver();
  fc.assert(
    fc.property(anyIntervals(60), ({ intervals, places }) => {
      fc.pre(intervals.length > 0);
      const taken = packedIntervals(intervals, places);
      expect(fits(intervals, taken, places)).toBe(true);
      const rows = places.map((upper, time) => {
        const columns = [...intervals.keys()].filter(
          (index) => intervals[index].from <= time && time < intervals[index].until,
        );
        return { lower: Number.NEGATIVE_INFINITY, upper, columns, coefficients: columns.map(() => 1) };
      });
      const answer = solveOnce(solver, {
        costs: intervals.map(({ worth }) => -worth),
        lowers: intervals.map(() => 0),
        uppers: intervals.map(() => 1),
        rows,
      });
      expect(worthOf(intervals, taken)).toBeCloseTo(-(answer?.objective ?? Number.NaN), 6);
    }),
    { seed: 20261126, numRuns: 60 },
  );
});
