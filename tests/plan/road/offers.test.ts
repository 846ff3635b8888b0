import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { buyInFinder } from "#lib/plan/road/buy-in";
import type { Match } from "#lib/plan/road/match";
import { offers } from "#lib/plan/road/offers";
import { ordersFinder } from "#lib/plan/road/orders";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { buyersInWords, offersLead, offersText } from "#lib/plan/words/offer-words";
import { offersCsv } from "#lib/sheets/offers-csv";
import { booking, crop, curve, day, focal, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { on, sum } from "./lived-season";

/** 70 stems of the week of 7 June, ten a day, without a spread: a poor year is as any. Bunches of ten; on 4 June the 7th to the 11th are offered. */
const sure = (stems: number) =>
  snapshot({
    crops: [crop({ id: 1, name: "Zinnia", stemLength: "long" })],
    curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0 })],
    bookings: stems > 0 ? [booking({ id: 1, stemLines: focal(stems) })] : [],
  });
const offeredOn = (snap: ReturnType<typeof sure>, today: string) => {
  const made = on(snap, today);
  return offers(made, poorMatches(made), toDayNumber(day(today)));
};
const NOW = toDayNumber(day("2027-06-04"));

test("[ST4] of 40 stems cut from the 7th to the 11th all are offered; where a wedding takes 25 of them, the one bunch that is left whole", () => {
  const [all, ...others] = offeredOn(sure(0), "2027-06-04");
  expect(others).toEqual([]);
  expect([all.bunchCount, all.stems, all.colour, all.stemLength, toDay(all.keepsUntil)]).toEqual([
    ...[4, 40, "cream", "long"],
    "2027-06-11",
  ]);
  expect(offeredOn(sure(25), "2027-06-04").map(({ stems }) => stems)).toEqual([10]);
  expect(offeredOn(sure(0), "2027-05-30")).toEqual([]);
});

test("[ST4] what a poor year does not leave is not offered", () => {
  const shy = { ...sure(0), curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0.5 })] };
  const [offer] = offeredOn(shy, "2027-06-04");
  expect(offer.stems).toBeGreaterThan(0);
  expect(offer.stems).toBeLessThan(40);
  expect(offeredOn({ ...shy, plantings: [planting({ id: 1, plantCount: 12 })] }, "2027-06-04")).toEqual([]);
});

test("[ST4] counted anew from every serving of every year, each variety has no more on offer than any year leaves", () => {
  fc.assert(
    fc.property(anyFarm, fc.integer({ min: 0, max: 160 }), (snap, dayOfSeason) => {
      const today = toDayNumber(day("2027-05-01")) + dayOfSeason;
      const made = on(snap, today);
      const poor = poorMatches(made);
      const years = [made.match, ...poor].map((match) => {
        const sold = ordersFinder(snap, made.meetingSeasons, buyInFinder(snap))(match);
        return leftByVariety([match, ...(sold ? [sold.match] : [])], today);
      });
      const expected = new Map<string, number>();
      for (const { id, cropId, colour } of snap.varieties) {
        const least = Math.min(...years.map((left) => left.get(id) ?? 0));
        expected.set(`${cropId} ${colour}`, (expected.get(`${cropId} ${colour}`) ?? 0) + least);
      }
      const found = offers(made, poor, today);
      for (const [key, stems] of expected) {
        const ofKey = found.filter((offer) => `${offer.crop.id} ${offer.colour}` === key);
        const bunch = snap.crops.find(({ id }) => id === Number(key.split(" ")[0]))?.bunchStems.count ?? 1;
        expect(sum(ofKey.map((offer) => offer.stems))).toBe(Math.floor(stems / bunch) * bunch);
      }
    }),
    { ...anySeed, numRuns: 40 },
  );
});

/** What is cut three to seven days from a day and in no serving, by variety. The first match has all stems, those after it what it leaves. */
function leftByVariety([first, ...rest]: readonly Match[], today: number): Map<number, number> {
  const left = new Map<number, number>();
  const isIn = (cutDay: number) => cutDay >= today + 3 && cutDay <= today + 7;
  first.supplies.forEach(({ variety, days, stems }) => {
    days.forEach((cutDay, at) => {
      if (isIn(cutDay)) left.set(variety.id, (left.get(variety.id) ?? 0) + stems[at]);
    });
  });
  for (const { servings, supplies } of [first, ...rest])
    for (const { supplyIndex, cutDay, stems } of servings) {
      const { id } = supplies[supplyIndex].variety;
      if (isIn(cutDay)) left.set(id, (left.get(id) ?? 0) - stems);
    }
  return left;
}

test("an offer reads as a florist would be told it, and goes out as CSV", () => {
  const some = offeredOn(sure(0), "2027-06-04");
  expect(offersLead(some, NOW)).toBe(
    "40 stems in 4 bunches, cut Mon 7 Jun to Fri 11 Jun, are nobody’s even in a poor year.",
  );
  expect(offersText(some, NOW)).toBe(
    "To offer, cut Mon 7 Jun to Fri 11 Jun:\n4 bunches of 10 zinnia, cream, long stem, keep until Fri 11 Jun",
  );
  expect(offersCsv(some, NOW)).toBe(
    "crop,colour,length,bunches,stems_a_bunch,stems,cut_from,cut_to,keeps_until\r\nZinnia,cream,long,4,10,40,2027-06-07,2027-06-11,2027-06-11\r\n",
  );
  expect(offersLead([], NOW)).toBe(
    "Nothing that is cut Mon 7 Jun to Fri 11 Jun is sure to be over: a poor year leaves no whole bunch.",
  );
  expect(buyersInWords([], "2027-06-04")).toBe(null);
});
