import fc from "fast-check";
import { expect, test } from "vitest";
import { needs, stemsWithoutSpare } from "#lib/plan/road/needs";
import { booking, focal, snapshot } from "../../small-farm";

test("[N1] with a tenth of spare 30 stems are enough for 27 and 132 for 120; with none each is its own", () => {
  expect([0, 1, 2, 30, 132].map((stems) => stemsWithoutSpare(stems, 0.1))).toEqual([0, 0, 1, 27, 120]);
  expect([0, 1, 132].map((stems) => stemsWithoutSpare(stems, 0))).toEqual([0, 1, 132]);
});

test("[N1] they are the most stems whose need, rounded up as a booking's is, is no more than there are", () => {
  const needOf = (stemCount: number, spareShare: number) =>
    needs(snapshot({ bookings: [booking({ id: 1, spareShare, stemLines: focal(stemCount) })] }), 2027)[0].stems;
  fc.assert(
    fc.property(fc.nat(5000), fc.integer({ min: 0, max: 100 }), (stems, percent) => {
      const share = percent / 100;
      const promised = stemsWithoutSpare(stems, share);
      if (promised > 0) expect(needOf(promised, share)).toBeLessThanOrEqual(stems);
      expect(needOf(promised + 1, share)).toBeGreaterThan(stems);
    }),
    { seed: 20270612 },
  );
});
