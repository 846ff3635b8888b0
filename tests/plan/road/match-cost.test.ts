import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Colour } from "#lib/domain/words";
import { checkMatch } from "#lib/plan/road/match";
import { highs } from "../../least-cost";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { costByHighs, costByTryingAll, directMatch } from "./match-by-arcs";

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });

describe("the cheapest match", () => {
  test("[M5] 200 seeded farms of 12 beds and 10 bookings cost what HiGHS finds with an arc from every cut to every need", async () => {
    const solver = await highs;
    for (let seed = 1; seed <= 200; seed++) {
      const given = seededFarm(seed, { bedCount: 12, bookingCount: 10 });
      const { forecast, match } = provenPlan(given, 2027);
      expect(checkMatch(match), `seed ${seed}`).toEqual([]);
      const direct = directMatch(given, forecast.plantings, match.needs);
      expect(costByHighs(solver, direct), `seed ${seed}`).toBeCloseTo(match.solution.totalCost, 2);
    }
  });

  test("[M5] so do 200 farms in which everything meets", async () => {
    const solver = await highs;
    let [servedCount, contestedCount] = [0, 0];
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { forecast, match, gaps } = provenPlan(given, 2027);
        if (match.servings.length > 0) servedCount++;
        if (gaps.some(({ reasons }) => reasons.some(({ reason }) => reason === "promised"))) contestedCount++;
        expect(checkMatch(match)).toEqual([]);
        const direct = directMatch(given, forecast.plantings, match.needs);
        expect(costByHighs(solver, direct)).toBeCloseTo(match.solution.totalCost, 2);
      }),
      anySeed,
    );
    expect([servedCount > 80, contestedCount > 40]).toEqual([true, true]);
  });

  test("[M5] and a handful of stems costs what trying every way finds", () => {
    const few = fc.record({
      lots: fc.array(
        fc.record({
          varietyId: fc.constantFrom(1, 2, 3),
          cutOn: fc.integer({ min: 15, max: 21 }).map((date) => day(`2027-06-${date}`)),
          stemCount: fc.integer({ min: 1, max: 3 }),
        }),
        { maxLength: 4 },
      ),
      asked: fc.array(
        fc.record({
          stemCount: fc.integer({ min: 1, max: 3 }),
          eventOn: fc.integer({ min: 20, max: 24 }).map((date) => day(`2027-06-${date}`)),
          status: fc.constantFrom("confirmed" as const, "held" as const, "enquiry" as const),
          colours: fc.constantFrom<Colour[]>(["cream"], ["blush", "cream"], []),
          cropId: fc.constantFrom(null, 1, 2),
        }),
        { maxLength: 3 },
      ),
      priceCents: fc.constantFrom(1, 40, 300),
    });
    fc.assert(
      fc.property(few, ({ lots, asked, priceCents }) => {
        const given = snapshot({
          farm: farm({ leadDays: 1 }),
          crops: [
            crop({ id: 1, buyInCents: sourced(priceCents) }),
            crop({ id: 2, usualRole: "secondary", roles: ["focal", "secondary"], holdDays: sourced(6) }),
          ],
          varieties: [
            variety({ id: 1, colour: "cream" }),
            variety({ id: 2, colour: "blush" }),
            variety({ id: 3, cropId: 2 }),
          ],
          plantings: [],
          coolerStock: lots.map((lot, index) => ({ id: index + 1, ...lot })),
          bookings: asked.map(({ stemCount, eventOn, status, ...line }, index) =>
            booking({ id: index + 1, eventOn, status, stemLines: focal(stemCount, line) }),
          ),
        });
        const { match } = provenPlan(given, 2027);
        expect(checkMatch(match)).toEqual([]);
        expect(costByTryingAll(directMatch(given, [], match.needs))).toBe(match.solution.totalCost);
      }),
      anySeed,
    );
  });
});
