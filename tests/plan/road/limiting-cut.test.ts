import fc from "fast-check";
import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { cutFinder, type LimitingCut } from "#lib/plan/road/limiting-cut";
import { checkMatch } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";
import { booking, day, focal, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { directMatch } from "./match-by-arcs";

/** The limiting cut of every gap, each checked: it adds up, and no stem outside it could serve a need in it. */
function limitingCuts(given: Snapshot): LimitingCut[] {
  const { match, gaps, forecast } = provenPlan(given, 2027);
  expect(checkMatch(match)).toEqual([]);
  const limitingCut = cutFinder(match);
  const { arcs, lots } = directMatch(given, forecast.plantings, match.needs);
  return gaps.map(({ needIndex }) => {
    const cut = limitingCut(needIndex);
    const inCut = new Set(cut.needIndexes);
    const reaching = new Set(arcs.filter(({ need }) => inCut.has(need)).map(({ lot }) => lot));
    const counted = {
      ...cut,
      needStems: cut.needIndexes.reduce((sum, index) => sum + match.needs[index].stems, 0),
      supplyStems: [...reaching].reduce((sum, lot) => sum + lots[lot].stems, 0),
      shortStems: cut.needIndexes.reduce((sum, index) => sum + match.shortStems[index], 0),
    };
    expect(cut).toEqual(counted);
    expect(inCut.has(needIndex) && cut.freeStems >= 0).toBe(true);
    expect(cut.needStems - cut.supplyStems + cut.freeStems).toBe(cut.shortStems);
    return cut;
  });
}

test("[G3] two bookings ask for 8 each of the same 10 stems: 16 asked, 10 there, 6 short", () => {
  const cuts = limitingCuts(
    snapshot({
      plantings: [],
      coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-10"), stemCount: 10 }],
      bookings: [booking({ id: 1, stemLines: focal(8) }), booking({ id: 2, status: "held", stemLines: focal(8) })],
    }),
  );
  expect(cuts).toEqual([{ needIndexes: [0, 1], needStems: 16, supplyStems: 10, freeStems: 0, shortStems: 6 }]);
});

test("[G3] a gap is limited through a third hand: cream goes to one who would take blush, blush to one who takes nothing else", () => {
  const cuts = limitingCuts(
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
  expect(cuts).toEqual([{ needIndexes: [0, 1, 2], needStems: 14, supplyStems: 10, freeStems: 0, shortStems: 4 }]);
});

test("[G3] where nothing blooms the cut is the need alone", () => {
  const cuts = limitingCuts(snapshot({ plantings: [], bookings: [booking({ id: 1, stemLines: focal(7) })] }));
  expect(cuts).toEqual([{ needIndexes: [0], needStems: 7, supplyStems: 0, freeStems: 0, shortStems: 7 }]);
});

test("[G3] in 200 farms every limiting cut adds up, and holds every stem that could serve a need in it", () => {
  fc.assert(
    fc.property(anyFarm, (given) => void limitingCuts(given)),
    anySeed,
  );
});

test("[G3] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
  let sharedCount = 0;
  for (let seed = 1; seed <= 100; seed++)
    for (const { needIndexes } of limitingCuts(seededFarm(seed, { bedCount: 12, bookingCount: 10 })))
      if (needIndexes.length > 1) sharedCount++;
  expect(sharedCount).toBeGreaterThan(10);
});
