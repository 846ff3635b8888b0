import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import type { Plan } from "#lib/plan/road/plan";
import type { VarietySupply } from "#lib/plan/road/supply";
import { highs } from "../../least-cost";
import { provenPlan } from "../../proven-plan";
import { anySeed } from "../any-farm";
import { goodShareOf } from "./bloom-by-spec";
import { anyGarden, anySeason, asAsked, daysOf, lived, on, onceEach, shortOf, sum } from "./lived-season";
import { directMatch, leastShort } from "./match-by-arcs";

test("[T4] a season that comes true leaves every need that is cut for as covered as it was, day after day, recorded or not", () => {
  const some = fc.record({ snap: anyGarden, seed: fc.nat(), recordedOf10: fc.constantFrom(0, 5, 10) });
  fc.assert(
    fc.property(some, ({ snap, seed, recordedOf10 }) => {
      const random = seededRandom(seed);
      const asPlanned = shortOf(provenPlan(snap, 2027));
      let cuts: Cut[] = [];
      for (const today of daysOf(provenPlan(snap, 2027))) {
        const morning = on({ ...snap, cuts }, today);
        expect(shortOf(morning)).toEqual(asPlanned);
        const isRecorded = () => wholeBetween(random, 1, 10) <= recordedOf10;
        cuts = onceEach([...cuts, ...asAsked(morning, today).filter(isRecorded)]);
        expect(shortOf(on({ ...snap, cuts }, today))).toEqual(asPlanned);
      }
    }),
    { ...anySeed, numRuns: 40 },
  );
});

describe("a season that comes otherwise", () => {
  test("[T2] an independent solver with an arc from every lot to every need that may have it finds the same stems short", async () => {
    await fc.assert(
      fc.asyncProperty(anySeason, async ({ snap, seed, dayCount }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const { match } = on({ ...snap, cuts }, today);
        const lotsOf = ({ variety, crop, days, stems, bookingId }: VarietySupply) =>
          days.map((cutDay, at) => ({ variety, crop, day: cutDay, stems: stems[at], ownerId: bookingId, today }));
        const direct = directMatch({ ...snap, coolerStock: [] }, [], match.needs, match.supplies.flatMap(lotsOf));
        const { cents, shortStems } = leastShort(await highs, direct);
        expect([match.solution.totalCost, [...match.shortStems]]).toEqual([cents, shortStems]);
      }),
      { ...anySeed, numRuns: 60 },
    );
  });

  test("[T1] [T3] stems by day, counted one by one: what was recorded is there, and nothing behind that was neither planned nor forecast", () => {
    fc.assert(
      fc.property(anySeason, ({ snap, seed, dayCount }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const made = on({ ...snap, cuts }, today);
        const { supplies } = made.match;
        for (const { planting: of, bed, variety, crop, curve, cutDays, usableStems } of made.forecast.plantings)
          cutDays.forEach((cutDay, at) => {
            const records = cuts.filter(
              (row) => row.cutOn === toDay(cutDay) && row.bedId === bed.id && row.varietyId === variety.id,
            );
            const saleableShare = goodShareOf(curve, of, cutDay) || 1;
            const goodShare = saleableShare / (1 + crop.cutSpareShare.count);
            const goodStems = sum(records.map(({ stemsCut }) => Math.floor(stemsCut * goodShare + 1e-9)));
            const isAll = records.some(({ stemsCut, stemsAsked }) => stemsAsked === null || stemsCut < stemsAsked);
            const lots = supplies.flatMap(({ days, lots: byDay, bookingId }) =>
              (byDay[days.indexOf(cutDay)] ?? []).flatMap(({ stand, stems }) =>
                stand.kind === "planting" && stand.planting.planting.id === of.id ? [{ stand, stems, bookingId }] : [],
              ),
            );
            const recorded = lots.filter(({ stand }) => stand.isRecorded);
            const other = sum(lots.filter(({ stand }) => !stand.isRecorded).map(({ stems }) => stems));
            expect(sum(recorded.map(({ stems }) => stems))).toBe(goodStems);
            expect(other).toBeLessThanOrEqual(isAll ? 0 : Math.max(0, usableStems[at] - goodStems));
            if (cutDay > today) expect(other).toBe(usableStems[at]);
            if (cutDay < today)
              expect(lots.every(({ stand, bookingId }) => stand.isRecorded || bookingId !== undefined)).toBe(true);
          });
      }),
      { ...anySeed, numRuns: 60 },
    );
  });

  test("[T1] what has passed is not told anew: the next morning has it as the evening before", () => {
    fc.assert(
      fc.property(anySeason, ({ snap, seed, dayCount }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const behind = (made: Plan) =>
          made.match.supplies.flatMap(({ variety, bookingId, days, stems }) =>
            days.flatMap((cutDay, at) =>
              bookingId !== undefined && cutDay < today ? [[variety.id, bookingId, cutDay, stems[at]]] : [],
            ),
          );
        const evening = on({ ...snap, cuts }, today);
        const next = behind(on({ ...snap, cuts }, today + 1));
        for (const row of behind(evening)) {
          const later = next.find((one) => one[0] === row[0] && one[1] === row[1] && one[2] === row[2]);
          // An event that passed keeps what it had from the cooler too.
          expect(later?.[3]).toBeGreaterThanOrEqual(row[3]);
        }
      }),
      { ...anySeed, numRuns: 40 },
    );
  });

  test("[T5] the order in which cuts were recorded makes no difference", () => {
    fc.assert(
      fc.property(anySeason, ({ snap, seed, dayCount }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const said = (rows: readonly Cut[]) => {
          const { match, pickList, gaps } = on({ ...snap, cuts: rows }, today);
          return { short: [...match.shortStems], pickList, gaps: gaps.map(({ reasons }) => reasons) };
        };
        const turned = [...cuts].reverse().map((row, index) => ({ ...row, id: index + 1 }));
        expect(said(turned)).toEqual(said(cuts));
      }),
      { ...anySeed, numRuns: 40 },
    );
  });
});
