import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Change } from "#lib/domain/what-if";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { misfitInWords } from "#lib/plan/words/misfit-words";
import { provenPlan } from "../../proven-plan";
import { day, monthDay, planting, snapshot } from "../../small-farm";
import { dahliaFarm, FITTING, GONE, newBooking } from "./farm";

const farmAfter = (...changes: Change[]) => applyChanges(dahliaFarm(), 2027, changes);

const treatments = (changes: Change[]) => farmAfter(...changes).snapshot.plantings.map(({ treatment }) => treatment);

describe("applying changes", () => {
  test("[W1] seed 41: any list of changes leaves the farm it was applied to as it was", () => {
    const before = dahliaFarm();
    const text = JSON.stringify(before);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...FITTING, ...GONE), { maxLength: 8 }), (changes) => {
        applyChanges(before, 2027, changes);
        expect(JSON.stringify(before)).toBe(text);
      }),
      { seed: 41 },
    );
  });

  test("[W2] no change is the same farm, and keep then dig is dig, dig then keep is keep", () => {
    const before = dahliaFarm();
    expect(applyChanges(before, 2027, []).snapshot).toBe(before);
    const kept: Change = { kind: "bed-kept", bedId: 1 };
    const dug: Change = { kind: "bed-dug", bedId: 1 };
    expect(farmAfter(kept, dug).snapshot).toEqual(farmAfter(dug).snapshot);
    expect(farmAfter(dug, kept).snapshot).toEqual(farmAfter(kept).snapshot);
    expect(farmAfter(kept, kept).snapshot).toEqual(farmAfter(kept).snapshot);
  });

  test.each(GONE)("[W3] $kind of what is gone is left out and told once; the rest apply", (gone) => {
    const { snapshot: farmNow, misfits } = farmAfter(gone, { kind: "status-set", bookingId: 1, status: "held" });
    expect(misfits).toHaveLength(1);
    expect(misfits[0].changeIndex).toBe(0);
    expect(misfitInWords(misfits[0].misfit)).toMatch(/no longer on the farm/);
    expect(farmNow).toEqual(farmAfter({ kind: "status-set", bookingId: 1, status: "held" }).snapshot);
  });

  test("[W3] what fits gives no problem", () => {
    expect(farmAfter(...FITTING).misfits).toEqual([]);
  });

  test("[W3] keeping a bed without anything to overwinter, and moving what stays in the ground, do not fit", () => {
    expect(farmAfter({ kind: "planting-removed", plantingId: 1 }, { kind: "bed-kept", bedId: 1 }).misfits).toEqual([
      { changeIndex: 1, misfit: { kind: "nothing-winters", bedName: "East", seasonYear: 2027 } },
    ]);
    const moved = farmAfter(
      { kind: "bed-kept", bedId: 2 },
      { kind: "planting-moved", plantingId: 3, bedId: 1, plantedOn: null },
    );
    expect(moved.misfits.map(({ misfit }) => misfit.kind)).toEqual(["stays-in-the-ground"]);
    expect(moved.snapshot.plantings[2].bedId).toBe(2);
  });

  test("[W4] keeping West keeps its dahlias of 2027, not those of 2028, nor any yarrow, nor East", () => {
    expect(treatments([{ kind: "bed-kept", bedId: 2 }])).toEqual([
      "spring-planted",
      "field",
      "kept-in-ground",
      "spring-planted",
    ]);
    expect(treatments([{ kind: "bed-kept", bedId: 1 }])).toEqual([
      "kept-in-ground",
      "field",
      "spring-planted",
      "spring-planted",
    ]);
  });

  test("[W4] a bed that has stood since 2025 and is dug goes back in on the same day of 2027", () => {
    const old = planting({ id: 1, treatment: "kept-in-ground", plantedOn: day("2025-05-20") });
    const stood = { ...dahliaFarm(), plantings: [old] };
    const [dug] = applyChanges(stood, 2027, [{ kind: "bed-dug", bedId: 1 }]).snapshot.plantings;
    expect([dug.treatment, dug.plantedOn]).toEqual(["spring-planted", "2027-05-20"]);
    const [kept] = applyChanges(stood, 2027, [{ kind: "bed-kept", bedId: 1 }]).snapshot.plantings;
    expect(kept).toEqual(old);
  });

  test("[W4] kept, the dahlias of bed West are first cut from 24 June, not from 13 August", () => {
    const firstCuts = (changes: Change[]) => {
      const { snapshot: farmNow } = applyChanges(dahliaFarm(), 2027, changes);
      return provenPlan(farmNow, 2027).forecast.plantings[2].opensFrom;
    };
    expect(firstCuts([]) - firstCuts([{ kind: "bed-kept", bedId: 2 }])).toBe(50);
  });

  test("[W5] ten days late every planting of the season is cut ten days later; of one crop, its own alone; no curve changes", () => {
    const cuts = (...changes: Change[]) =>
      provenPlan(farmAfter(...changes).snapshot, 2027).forecast.plantings.map((row) => row.opensFrom);
    const late = (cropId: number | null): Change => ({ kind: "season-shifted", days: 10, cropId });
    const [dahlia, yarrow, another] = cuts();
    expect(cuts(late(null))).toEqual([dahlia + 10, yarrow + 10, another + 10]);
    expect(cuts(late(1))).toEqual([dahlia + 10, yarrow, another + 10]);
    expect(cuts(late(2))).toEqual([dahlia, yarrow + 10, another]);
    const { snapshot: farmNow } = farmAfter(late(null));
    expect(farmNow.curves).toEqual(dahliaFarm().curves);
    expect(farmNow.plantings.map(({ seasonYear, daysLate }) => [seasonYear, daysLate])).toEqual([
      ...[1, 2, 3].map(() => [2027, 10]),
      [2028, null],
    ]);
  });

  test("[W5] a season that is late is late for a planting that is added too, whichever stands first in the list", () => {
    const { id: _, ...added } = planting({ id: 0 });
    const late: Change = { kind: "season-shifted", days: 10, cropId: null };
    const more: Change = { kind: "planting-added", planting: added };
    expect(farmAfter(late, more)).toEqual(farmAfter(more, late));
    expect(farmAfter(late, more).snapshot.plantings.at(-1)?.daysLate).toBe(10);
  });

  test("[W5] seed 42: two shifts add up, and two scales multiply", () => {
    const days = fc.integer({ min: -30, max: 30 });
    fc.assert(
      fc.property(days, days, (first, second) => {
        const shift = (by: number): Change => ({ kind: "season-shifted", days: by, cropId: null });
        expect(farmAfter(shift(first), shift(second)).snapshot).toEqual(farmAfter(shift(first + second)).snapshot);
      }),
      { seed: 42 },
    );
    const factor = fc.integer({ min: 0, max: 8 }).map((quarters) => quarters / 4);
    fc.assert(
      fc.property(factor, factor, (first, second) => {
        const scale = (by: number): Change => ({ kind: "yield-scaled", factor: by, cropId: 1 });
        expect(farmAfter(scale(first), scale(second)).snapshot).toEqual(farmAfter(scale(first * second)).snapshot);
      }),
      { seed: 42 },
    );
  });

  test("[W5] frost moved from 18 October to 8 October takes the early and the late date ten days along, and the plan with it", () => {
    const { snapshot: farmNow, frostDay } = farmAfter({ kind: "frost-moved", firstFrost: monthDay("10-08") });
    const { firstAutumnP10, firstAutumnP50, firstAutumnP90 } = farmNow.farm.frost;
    expect([firstAutumnP10, firstAutumnP50, firstAutumnP90]).toEqual(["09-24", "10-08", "10-23"]);
    expect(frostDay).toBe(provenPlan(dahliaFarm(), 2027).frostDay - 10);
    expect(provenPlan(farmNow, 2027).frostDay).toBe(frostDay);
  });

  test("[W5] a planting is held at 120 days late and at five times its stems, and that is told", () => {
    const shifts = [60, 60, 1].map((days): Change => ({ kind: "season-shifted", days, cropId: null }));
    const scales = [3, 2].map((factor): Change => ({ kind: "yield-scaled", factor, cropId: null }));
    const { snapshot: farmNow, misfits } = applyChanges(snapshot(), 2027, [...shifts, ...scales]);
    expect([farmNow.plantings[0].daysLate, farmNow.plantings[0].yieldFactor]).toEqual([120, 5]);
    expect(misfits).toEqual([
      { changeIndex: 2, misfit: { kind: "first-cut-held" } },
      { changeIndex: 4, misfit: { kind: "yield-held" } },
    ]);
  });

  test("[W3] [W5] a frost whose early date would leave the year is held there, and said so", () => {
    const { snapshot: farmNow, misfits } = farmAfter({ kind: "frost-moved", firstFrost: monthDay("01-05") });
    const { firstAutumnP10, firstAutumnP50 } = farmNow.farm.frost;
    expect([firstAutumnP10, firstAutumnP50]).toEqual(["01-01", "01-05"]);
    expect(misfits).toEqual([{ changeIndex: 0, misfit: { kind: "frost-held" } }]);
  });

  test("a booking that is added gets an id that no booking had, even after the last one is dropped", () => {
    const { snapshot: farmNow } = farmAfter(
      { kind: "booking-dropped", bookingId: 2 },
      { kind: "booking-added", booking: newBooking },
    );
    expect(farmNow.bookings.map(({ id }) => id)).toEqual([1, 3]);
  });

  test("leaves, tarp and hours at hand are set, each its own", () => {
    const set = (resource: "leaves" | "tarp" | "hours", atHand: number | null): Change => ({
      kind: "at-hand-set",
      resource,
      atHand,
    });
    const { winter } = farmAfter(set("leaves", 12), set("tarp", 30), set("hours", 8)).snapshot.farm;
    expect([winter.leafCubicMetresAtHand, winter.tarpSquareMetresAtHand, winter.hoursAtHand]).toEqual([12, 30, 8]);
    expect(farmAfter(set("leaves", 12), set("leaves", null)).snapshot).toEqual(dahliaFarm());
  });
});
