import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { gaps } from "#lib/plan/road/gaps";
import { StemsByDay } from "#lib/plan/road/stems-left";
import { windowHolders } from "#lib/plan/road/window-holders";
import { provenPlan } from "../../proven-plan";
import { bed, booking, day, focal, planting, snapshot } from "../../small-farm";
import { keptDays } from "./kept-days";

test("of 30 stems in reach another has 20, by name and bed; who wants them on another week's Saturday has none", () => {
  const bookings = [
    booking({ id: 1, stemLines: focal(20) }),
    booking({ id: 2, stemLines: focal(30) }),
    booking({ id: 3, eventOn: day("2027-07-24"), stemLines: focal(5) }),
  ];
  const { match } = provenPlan(snapshot({ bookings, beds: [bed({ id: 1 })], plantings: [planting({ id: 1 })] }), 2027);
  const holders = windowHolders(match, 1);
  expect(holders.map((holder) => [holder.booking.id, holder.stems, holder.held.length])).toEqual([[1, 20, 1]]);
  expect(windowHolders(match, 2)).toEqual([]);
});

test("over seeded farms what others have, what the need has and what is free are all the stems in its reach", () => {
  for (let seed = 1; seed <= 20; seed++) {
    const { match, snapshot: of } = provenPlan(seededFarm(seed, { bedCount: 12, bookingCount: 14 }), 2027);
    const stems = new StemsByDay(match);
    for (const { needIndex, need, reachableStems, coveredStems } of gaps(of.farm, match, 2027)) {
      const free = match.fits.of(need).varieties.reduce((sum, supplyIndex) => {
        const hold = Math.floor(keptDays(match.supplies[supplyIndex].crop, of)[1]);
        return sum + stems.left(supplyIndex, need.eventDay - hold, need.eventDay - of.farm.leadDays);
      }, 0);
      const others = windowHolders(match, needIndex).reduce((sum, holder) => sum + holder.stems, 0);
      const ownOther = match.servings
        .filter((serving) => serving.needIndex !== needIndex)
        .filter((serving) => match.needs[serving.needIndex].booking.id === need.booking.id)
        .filter((serving) => match.fits.of(need).varieties.includes(serving.supplyIndex))
        .reduce((sum, serving) => sum + serving.stems, 0);
      expect(others + ownOther + coveredStems + free).toBe(reachableStems);
    }
  }
});
