import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { buyInFinder } from "#lib/plan/road/buy-in";
import type { Match } from "#lib/plan/road/match";
import { offers } from "#lib/plan/road/offers";
import { ordersFinder } from "#lib/plan/road/orders";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { buyersInWords, offersLead, offersText, whenInWords } from "#lib/plan/words/offer-words";
import { offersCsv } from "#lib/sheets/offers-csv";
import { booking, crop, curve, day, farm, focal, planting, snapshot } from "../../small-farm";
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
  expect(toDay(all.readyDay)).toBe("2027-06-10");
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

test("[ST4] what keeps a day is not bunched with what is cut three days later: Wednesday's and Thursday's stems stand together on Thursday, Monday's alone", () => {
  const brief = { ...sure(0), crops: [crop({ id: 1, holdDays: { count: 1, mark: "own", source: null } })] };
  const found = offeredOn({ ...brief, farm: farm({ leadDays: 0, designDays: 0 }) }, "2027-06-04");
  expect(found.map(({ stems, readyDay, keepsUntil }) => [stems, toDay(readyDay), toDay(keepsUntil)])).toEqual([
    [30, "2027-06-10", "2027-06-10"],
    [10, "2027-06-07", "2027-06-08"],
  ]);
  expect(found.map(whenInWords)).toEqual(["all of use on Thu 10 Jun", "all cut by Mon 7 Jun, keep until Tue 8 Jun"]);
});

test("[ST4] counted anew from every serving of every year, each day's offers are what every year leaves by then that still keeps, and no stem is offered twice", () => {
  let partedCount = 0;
  fc.assert(
    fc.property(anyFarm, fc.integer({ min: 28, max: 50 }), fc.boolean(), (made, dayOfSeason, isBrief) => {
      const crops = made.crops.map((row) => ({ ...row, bunchStems: { ...row.bunchStems, count: 3 } }));
      const holdDays = { count: 1, mark: "own" as const, source: null };
      const plantings = made.plantings.map((row) => ({ ...row, plantCount: row.plantCount * 3 }));
      const curves = made.curves.map((row) => (isBrief ? { ...row, firstCutSpreadDays: 0, yieldSpread: 0.1 } : row));
      const snap = { ...made, plantings, curves, crops: isBrief ? crops.map((row) => ({ ...row, holdDays })) : crops };
      const today = toDayNumber(day("2027-05-01")) + dayOfSeason;
      const planned = on(snap, today);
      const poor = poorMatches(planned);
      const years = [planned.match, ...poor].map((match) => {
        const sold = ordersFinder(snap, planned.meetingSeasons, buyInFinder(snap))(match);
        return leftByVariety([match, ...(sold ? [sold.match] : [])], today);
      });
      const found = offers(planned, poor, today);
      const asSpec = offersBySpec(snap, years, today);
      const rows = found.map((offer) => [offer.crop.id, offer.colour, offer.readyDay, offer.stems].join(" "));
      expect([...rows].sort()).toEqual([...asSpec].sort());
      expect(found.every(({ readyDay, keepsUntil }) => keepsUntil >= readyDay)).toBe(true);
      if (new Set(found.map(({ crop: { id }, colour }) => `${id} ${colour}`)).size < found.length) partedCount++;
    }),
    { ...anySeed, numRuns: 60 },
  );
  expect(partedCount).toBeGreaterThan(3);
});

/** Stems left of a variety, by the day they are cut, and the last day on which they keep. */
type Left = { readonly varietyId: number; readonly cutDay: number; readonly lastDay: number; stems: number };

/** By crop and colour: every day is tried, all bunches of the best are taken away, and so on. */
function offersBySpec(snap: ReturnType<typeof sure>, years: readonly Left[][], today: number): string[] {
  const kinds = new Map<string, number[]>();
  for (const { id, cropId, colour } of snap.varieties)
    kinds.set(`${cropId} ${colour}`, [...(kinds.get(`${cropId} ${colour}`) ?? []), id]);
  return [...kinds].flatMap(([kind, ids]) => {
    const gone: number[] = [];
    const isThere = (left: Left, on: number) => left.cutDay <= on && left.lastDay >= on;
    const bunchesOn = (on: number) =>
      Math.floor(
        sum(
          ids.map((id) =>
            Math.min(
              ...years.map((year) =>
                sum(
                  year
                    .filter(
                      (left) => left.varietyId === id && isThere(left, on) && !gone.some((at) => isThere(left, at)),
                    )
                    .map(({ stems }) => stems),
                ),
              ),
            ),
          ),
        ) / 3,
      );
    const rows: string[] = [];
    for (;;) {
      const days = [3, 4, 5, 6, 7].map((ahead) => today + ahead);
      const most = Math.max(...days.map(bunchesOn));
      const best = days.find((on) => bunchesOn(on) === most);
      if (most === 0 || best === undefined) return rows;
      rows.push(`${kind} ${best} ${most * 3}`);
      gone.push(best);
    }
  });
}

/** What is cut three to seven days from a day and in no serving, by variety and day. The first match has all stems, those after it what it leaves. */
function leftByVariety([first, ...rest]: readonly Match[], today: number): Left[] {
  const left = new Map<string, Left>();
  const isIn = (cutDay: number) => cutDay >= today + 3 && cutDay <= today + 7;
  first.supplies.forEach(({ variety, days, stems, hold }) => {
    days.forEach((cutDay, at) => {
      if (!isIn(cutDay)) return;
      const lastDay = cutDay + Math.floor(hold.stretchDays);
      const known = left.get(`${variety.id} ${cutDay}`) ?? { varietyId: variety.id, cutDay, lastDay, stems: 0 };
      left.set(`${variety.id} ${cutDay}`, { ...known, stems: known.stems + stems[at] });
    });
  });
  for (const { servings, supplies } of [first, ...rest])
    for (const { supplyIndex, cutDay, stems } of servings) {
      const known = left.get(`${supplies[supplyIndex].variety.id} ${cutDay}`);
      if (known) known.stems -= stems;
    }
  return [...left.values()];
}

test("an offer reads as a florist would be told it, and goes out as CSV", () => {
  const some = offeredOn(sure(0), "2027-06-04");
  expect(offersLead(some, NOW)).toBe(
    "40 stems in 4 bunches, cut Mon 7 Jun to Fri 11 Jun, are nobody’s even in a poor year.",
  );
  expect(offersText(some, NOW)).toBe(
    "To offer, cut Mon 7 Jun to Fri 11 Jun:\n4 bunches of 10 zinnia, cream, long stem, all cut by Thu 10 Jun, keep until Fri 11 Jun",
  );
  expect(offersCsv(some, NOW)).toBe(
    "crop,colour,length,bunches,stems_a_bunch,stems,cut_from,cut_to,ready_on,keeps_until\r\nZinnia,cream,long,4,10,40,2027-06-07,2027-06-11,2027-06-10,2027-06-11\r\n",
  );
  expect(offersLead([], NOW)).toBe(
    "Nothing that is cut Mon 7 Jun to Fri 11 Jun is sure to be over: a poor year leaves no whole bunch.",
  );
  expect(buyersInWords([], "2027-06-04")).toBe(null);
});
