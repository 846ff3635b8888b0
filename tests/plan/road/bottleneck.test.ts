import fc from "fast-check";
import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Bottleneck, bottleneckFinder } from "#lib/plan/road/bottleneck";
import { checkMatch } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";
import { booking, day, focal, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { directMatch } from "./match-by-arcs";

/** The bottleneck of every gap, each checked: it adds up, and no stem outside it could serve a need in it. */
function bottlenecks(given: Snapshot): Bottleneck[] {
  const { match, gaps, forecast } = provenPlan(given, 2027);
  expect(checkMatch(match)).toEqual([]);
  const bottleneckOf = bottleneckFinder(match);
  const { arcs, lots } = directMatch(given, forecast.plantings, match.needs);
  return gaps.map(({ needIndex }) => {
    const bottleneck = bottleneckOf(needIndex);
    const within = new Set(bottleneck.needIndexes);
    const reaching = new Set(arcs.filter(({ need }) => within.has(need)).map(({ lot }) => lot));
    const counted = {
      ...bottleneck,
      needStems: bottleneck.needIndexes.reduce((sum, index) => sum + match.needs[index].stems, 0),
      supplyStems: [...reaching].reduce((sum, lot) => sum + lots[lot].stems, 0),
      shortStems: bottleneck.needIndexes.reduce((sum, index) => sum + match.shortStems[index], 0),
    };
    expect(bottleneck).toEqual(counted);
    expect(within.has(needIndex) && bottleneck.freeStems >= 0).toBe(true);
    expect(bottleneck.needStems - bottleneck.supplyStems + bottleneck.freeStems).toBe(bottleneck.shortStems);
    return bottleneck;
  });
}

test("[G3] two bookings ask for 8 each of the same 10 stems: 16 asked, 10 there, 6 short", () => {
  const found = bottlenecks(
    snapshot({
      plantings: [],
      coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-10"), stemCount: 10 }],
      bookings: [booking({ id: 1, stemLines: focal(8) }), booking({ id: 2, status: "held", stemLines: focal(8) })],
    }),
  );
  expect(found).toEqual([{ needIndexes: [0, 1], needStems: 16, supplyStems: 10, freeStems: 0, shortStems: 6 }]);
});

test("[G3] a gap is limited through a third hand: cream goes to one who would take blush, blush to one who takes nothing else", () => {
  const found = bottlenecks(
    snapshot({
      plantings: [],
      varieties: [variety({ id: 1, colour: "cream" }), variety({ id: 2, colour: "blush" })],
      coolerStock: [
        { id: 1, varietyId: 1, cutOn: day("2027-06-10"), stemCount: 5 },
        { id: 2, varietyId: 2, cutOn: day("2027-06-10"), stemCount: 5 },
      ],
      bookings: [
        booking({ id: 1, stemLines: focal(5, { colours: ["blush"] }) }),
        booking({ id: 2, stemLines: focal(5, { colours: ["blush", "cream"] }) }),
        booking({ id: 3, status: "enquiry", stemLines: focal(4, { colours: ["cream"] }) }),
      ],
    }),
  );
  expect(found).toEqual([{ needIndexes: [0, 1, 2], needStems: 14, supplyStems: 10, freeStems: 0, shortStems: 4 }]);
});

test("[G3] where nothing blooms the bottleneck is the need alone", () => {
  const found = bottlenecks(snapshot({ plantings: [], bookings: [booking({ id: 1, stemLines: focal(7) })] }));
  expect(found).toEqual([{ needIndexes: [0], needStems: 7, supplyStems: 0, freeStems: 0, shortStems: 7 }]);
});

test("[G3] in 200 farms every bottleneck adds up, and holds every stem that could serve a need in it", () => {
  fc.assert(
    fc.property(anyFarm, (given) => void bottlenecks(given)),
    anySeed,
  );
});

test("[G3] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
  let sharedCount = 0;
  for (let seed = 1; seed <= 100; seed++)
    for (const { needIndexes } of bottlenecks(seededFarm(seed, { bedCount: 12, bookingCount: 10 })))
      if (needIndexes.length > 1) sharedCount++;
  expect(sharedCount).toBeGreaterThan(10);
});
