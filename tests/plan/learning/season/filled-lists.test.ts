import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { shownSeason } from "#lib/plan/learning/season/season-lesson";
import { grown } from "#lib/plan/road/grown";
import { provenPlan } from "../../../proven-plan";
import { asAsked, daysOf, onceEach, shortOf } from "../../road/lived-season";

test("[O5] [T4] of a season in which every list was filled nothing is moved, and every need is as covered as it was, day after day", () => {
  let recorded = 0;
  for (const seed of [1, 2, 3]) {
    const snap = seededFarm(seed, { bedCount: 10, bookingCount: 8 });
    const asPlanned = shortOf(provenPlan(snap, 2027));
    let cuts: Cut[] = [];
    for (const today of daysOf(provenPlan(snap, 2027))) {
      const shown = shownSeason({ ...snap, cuts }, 2027) ?? undefined;
      const morning = provenPlan({ ...snap, cuts, shown }, 2027, undefined, null, today);
      expect(shown).toBeUndefined();
      expect(shortOf(morning)).toEqual(asPlanned);
      cuts = onceEach([...cuts, ...asAsked(morning, today)]);
    }
    recorded += cuts.length;
  }
  expect(recorded).toBeGreaterThan(30);
});

test("[O5] where every list was filled, looks at the buds move days alone: seen on the day as expected nothing, four days late no stems", () => {
  let late = 0;
  for (const seed of [1, 2, 3]) {
    const snap = seededFarm(seed, { bedCount: 10, bookingCount: 8 });
    let cuts: Cut[] = [];
    for (const today of daysOf(provenPlan(snap, 2027)))
      cuts = onceEach([...cuts, ...asAsked(provenPlan({ ...snap, cuts }, 2027, undefined, null, today), today)]);
    expect(cuts.length).toBeGreaterThan(5);
    expect(shownSeason({ ...snap, cuts, budLooks: firstBlooms(snap, 0) }, 2027)).toBeNull();
    const shown = shownSeason({ ...snap, cuts, budLooks: firstBlooms(snap, 4) }, 2027);
    for (const { daysLate, yieldFactor } of shown?.values() ?? []) {
      expect(yieldFactor).toBe(1);
      late += daysLate;
    }
  }
  expect(late).toBeGreaterThan(0);
});

/** The first bloom of every planting, so many days after it was expected. */
const firstBlooms = (snap: Snapshot, daysLate: number): BudLook[] =>
  grown(snap, 2027).flatMap(({ planting: { id, bedId, varietyId }, firstCut }) =>
    firstCut === null
      ? []
      : [{ id, bedId, varietyId, lookedOn: toDay(firstCut + daysLate), sign: "first bloom", daysToCut: null }],
  );
