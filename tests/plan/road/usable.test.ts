import fc from "fast-check";
import { expect, test } from "vitest";
import { usableOf, usableStems } from "#lib/plan/road/usable";
import { provenPlan } from "../../proven-plan";
import { booking, crop, focal, snapshot } from "../../small-farm";

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });

test("[F14] of 115 stems cut at 15 % 100 can be promised, of 114 99; at 20 % six are cut for five", () => {
  expect([115, 114, 230].map((stems) => usableOf(stems, 0.15))).toEqual([100, 99, 200]);
  expect(usableStems([1, 1, 1, 1, 1, 1, 6], 0.2)).toEqual([0, 1, 1, 1, 1, 1, 5]);
  expect(usableStems([3, 4], 0)).toEqual([3, 4]);
});

test("[F14] day by day never more than is cut, by any day as many as the stems until then, and a whole answer is not missed by a last digit", () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(400), { minLength: 1, maxLength: 30 }),
      fc.integer({ min: 0, max: 1_000_000 }),
      (cutStems, millionths) => {
        const usable = usableStems(cutStems, millionths / 1e6);
        let [cut, promised] = [0n, 0n];
        usable.forEach((stems, index) => {
          cut += BigInt(cutStems[index]);
          promised += BigInt(stems);
          expect(stems).toBeLessThanOrEqual(cutStems[index]);
          expect(stems).toBeGreaterThanOrEqual(0);
          expect(promised).toBe((cut * 1_000_000n) / (1_000_000n + BigInt(millionths)));
        });
      },
    ),
    { seed: 14 },
  );
});

test("[F14] [P1] [N1] 70 stems at 15 % spare serve a booking of 55 with 10 % of its own by 61, of which 60 are there, cut as 69; the two spares multiply", () => {
  const planned = provenPlan(
    snapshot({
      crops: [crop({ id: 1, cutSpareShare: sourced(0.15), holdDays: sourced(9) })],
      bookings: [booking({ id: 1, spareShare: 0.1, stemLines: focal(55) })],
    }),
    2027,
  );
  const cutBefore = planned.match.supplies[0].days.filter((day) => day <= planned.match.needs[0].eventDay - 2).length;
  expect(planned.match.needs[0].stems).toBe(61);
  expect(cutBefore).toBeGreaterThan(0);
  const promised = planned.match.supplies[0].stems.reduce((sum, stems) => sum + stems, 0);
  expect(promised).toBe(60);
  for (const { stems, stemsToCut } of planned.pickList) expect(stemsToCut).toBe(Math.ceil(stems * 1.15 - 1e-9));
});
