import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import type { Loss } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecast, frostDayOf, type PlantingForecast } from "#lib/plan/road/forecast";
import type { Plan } from "#lib/plan/road/plan";
import { usableOf } from "#lib/plan/road/usable";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";
import { anySeed } from "../any-farm";
import { loss } from "./any-loss";
import { anyGarden, anySeason, lived } from "./lived-season";

const number = (text: string) => toDayNumber(day(text));

/** The same by the letter of PL1, stem after stem: `bare` is the planting with nothing seen. */
function bySpec(bare: PlantingForecast, losses: readonly Loss[], snap: Snapshot): Map<number, number> {
  const { opensFrom, openingStems, bed, crop: grows } = bare;
  const isPicked = (on: number) => {
    const isSprayed =
      bed.noEntryFrom !== null &&
      bed.noEntryUntil !== null &&
      toDay(on) >= bed.noEntryFrom &&
      toDay(on) < bed.noEntryUntil;
    return snap.farm.pickingWeekdays.includes(weekdayOfDayNumber(on)) && !isSprayed;
  };
  const cut = new Map<number, number>();
  let [numerator, denominator, before] = [0n, 1n, 0n];
  openingStems.forEach((stems, index) => {
    const opensOn = opensFrom + index;
    let on = opensOn;
    while (on - opensOn <= grows.fieldDays.count && !isPicked(on)) on++;
    const isCut = on - opensOn <= grows.fieldDays.count;
    let [left, of] = [BigInt(stems), 1n];
    for (const one of losses)
      if (toDayNumber(one.seenOn) <= (isCut ? on : opensOn)) {
        left *= BigInt(one.plantsLeft);
        of *= BigInt(one.plantsBefore);
      }
    [numerator, denominator] = [numerator * of + left * denominator, denominator * of];
    const given = numerator / denominator - before;
    before += given;
    const isFrozen = grows.tender && on >= frostDayOf(snap.farm, 2027);
    if (isCut && !isFrozen) cut.set(on, (cut.get(on) ?? 0) + Number(given));
  });
  return cut;
}

test("[PL1] on seeded farms every planting gives what exact shares of every stem leave, rounded down day after day", () => {
  const anyLosses = fc.array(
    fc.record({
      place: fc.nat(5),
      on: fc.integer({ min: -5, max: 25 }),
      before: fc.integer({ min: 1, max: 40 }),
      left: fc.nat(40),
    }),
    { maxLength: 4 },
  );
  let lost = 0;
  fc.assert(
    fc.property(anyGarden, anyLosses, (snap, drawn) => {
      fc.pre(snap.plantings.length > 0);
      const losses = drawn.map(({ place, on: after, before, left }, index) => {
        const { bedId, varietyId } = snap.plantings[place % snap.plantings.length];
        const seenOn = toDay(number("2027-06-01") + after);
        return loss({
          id: index + 1,
          bedId,
          varietyId,
          seenOn,
          plantsBefore: before,
          plantsLeft: Math.min(left, before),
        });
      });
      const bare = forecast(snap, 2027).plantings;
      forecast({ ...snap, losses }, 2027).plantings.forEach((row, at) => {
        const here = losses.filter(({ bedId, varietyId }) => bedId === row.bed.id && varietyId === row.variety.id);
        const expected = bySpec(bare[at], here, snap);
        const got = new Map(row.cutDays.map((on, index) => [on, row.cutStems[index]]));
        for (const on of new Set([...expected.keys(), ...got.keys()]))
          expect(got.get(on) ?? 0).toBe(expected.get(on) ?? 0);
        if (here.length > 0 && row.openedStems < bare[at].openedStems) lost += 1;
        const cut = row.cutStems.reduce((sum, stems) => sum + stems, 0);
        expect(cut + row.lostInFieldStems + row.lostToFrostStems).toBe(row.openedStems);
        expect(row.usableStems.reduce((sum, stems) => sum + stems, 0)).toBe(
          usableOf(cut, row.crop.cutSpareShare.count),
        );
      });
    }),
    { ...anySeed, numRuns: 400 },
  );
  expect(lost).toBeGreaterThan(80);
});

/** Stems that were cut in a bed before a day and are a booking's own. */
const ownBefore = ({ match }: Plan, until: number) =>
  match.supplies
    .flatMap(({ variety, bookingId, days, lots }) =>
      bookingId === undefined
        ? []
        : days.flatMap((cutDay, at) =>
            cutDay < until
              ? lots[at].flatMap(({ stand, stems }) =>
                  stand.kind === "planting"
                    ? [[variety.id, bookingId, cutDay, stand.planting.bed.id, stems].join()]
                    : [],
                )
              : [],
          ),
    )
    .sort();

const stemsOf = ({ match }: Plan) =>
  JSON.stringify(match.supplies.map(({ variety, bookingId, days, stems }) => [variety.id, bookingId, days, stems]));

test("[PL1] [PL2] [T5] in lived seasons no stem before the day of a loss or a frost moves, and a plan from the one before is the plan made afresh", () => {
  let moved = 0;
  fc.assert(
    fc.property(anySeason, fc.nat(), fc.nat(12), ({ snap, seed, dayCount }, pick, ago) => {
      fc.pre(snap.plantings.length > 0);
      const { cuts, today } = lived(snap, seed, dayCount);
      const until = today - ago;
      const { bedId, varietyId } = snap.plantings[pick % snap.plantings.length];
      const before = { ...snap, cuts };
      const eaten: Snapshot = {
        ...before,
        ...(pick % 3 === 0 ? { farm: { ...snap.farm, killingFrosts: [toDay(until)] } } : {}),
        losses: [loss({ bedId, varietyId, seenOn: toDay(until), plantsBefore: 10, plantsLeft: pick % 4 })],
      };
      const stood = provenPlan(before, 2027, undefined, null, today);
      const now = provenPlan(eaten, 2027, undefined, stood, today);
      expect(ownBefore(now, until)).toEqual(ownBefore(stood, until));
      const afresh = provenPlan(eaten, 2027, undefined, null, today);
      expect(stemsOf(now)).toBe(stemsOf(afresh));
      expect([...now.match.shortStems]).toEqual([...afresh.match.shortStems]);
      if (stemsOf(now) !== stemsOf(stood)) moved += 1;
      // And taken back it is as it was.
      const back = provenPlan(before, 2027, undefined, now, today);
      expect([...back.match.shortStems]).toEqual([...stood.match.shortStems]);
    }),
    { ...anySeed, numRuns: 60 },
  );
  expect(moved).toBeGreaterThan(8);
});
