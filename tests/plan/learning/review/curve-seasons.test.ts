import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import { addDays, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { curveProposals } from "#lib/plan/learning/review/curve-proposals";
import { curveSeasons } from "#lib/plan/learning/review/curve-seasons";
import { forecast } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import { bed, crop, curve, day, planting, snapshot, variety } from "../../../small-farm";

const NOVEMBER = toDayNumber(day("2027-11-25"));

/** Three beds of a curve, 30 stems a plant over three weeks. */
const FARM = snapshot({
  crops: [crop({ id: 1 })],
  varieties: [variety({ id: 1 })],
  curves: [curve({ stemsPerPlantByWeek: [10, 10, 10], firstCutSpreadDays: 4, yieldSpread: 0.25 })],
  beds: [1, 2, 3].map((id) => bed({ id })),
  plantings: [1, 2, 3].map((id) => planting({ id, bedId: id, gradeOutShare: 0 })),
});

/** Each picking day of a season cut in each planting: the share of what the forecast says, where so much was asked. */
const cutAs = (snap: Snapshot, share: number, askedOf: (stems: number, at: number) => number | null): Cut[] =>
  forecast(snap, 2027)
    .plantings.flatMap(({ planting: { bedId, varietyId }, cutDays, cutStems }) =>
      cutDays.flatMap((on, at): Omit<Cut, "id">[] => {
        const ready = Math.round(cutStems[at] * share);
        const stemsAsked = askedOf(ready, at);
        const stemsCut = stemsAsked === null ? ready : Math.min(ready, stemsAsked);
        if (cutStems[at] === 0) return [];
        return [
          {
            cutOn: toDay(on),
            bedId,
            varietyId,
            bookingId: null,
            goodStems: null,
            restStands: false,
            stemsAsked,
            stemsCut,
          },
        ];
      }),
    )
    .map((row, index) => ({ id: index + 1, ...row }));

const wasFilled = (stems: number): number => stems;
const wasAllReady = (): null => null;

const stemsOf = (cuts: Cut[]): number => curveSeasons({ ...FARM, cuts }, 2027).get(1)?.yieldFactor ?? Number.NaN;
const firstBloom = (late: number): BudLook[] => [
  { id: 1, lookedOn: addDays(day("2027-06-07"), late), bedId: 1, varietyId: 1, sign: "first bloom", daysToCut: null },
];

describe("what a season says of a curve", () => {
  test("[V5] three beds of which every list was filled, with half as much again as expected, say nothing and move nothing", () => {
    const cuts = cutAs(FARM, 1.5, wasFilled);
    expect(cuts.length).toBeGreaterThan(20);
    expect(curveSeasons({ ...FARM, cuts }, 2027)).toEqual(new Map());
    expect(curveProposals({ ...FARM, cuts }, NOVEMBER)).toEqual([]);
  });

  test("[V5] first bloom of one bed ten days late moves the first cut of such a season, and filled lists beside it no stems", () => {
    const cuts = cutAs(FARM, 1.5, wasFilled);
    const parts = (snap: Snapshot) => curveProposals(snap, NOVEMBER).map(({ part }) => part);
    expect(parts({ ...FARM, budLooks: firstBloom(10) })).toEqual(["timing"]);
    expect(curveSeasons({ ...FARM, cuts, budLooks: firstBloom(10) }, 2027).get(1)?.yieldSeen).toBe(0);
    expect(parts({ ...FARM, cuts, budLooks: firstBloom(10) })).not.toContain("yield");
  });

  test("[V5] one bed that had nothing yet on its first day does not let the filled lists of the season move the stems", () => {
    const cuts = cutAs(FARM, 1, wasFilled).map((row, at) => (at === 0 ? { ...row, stemsCut: 0 } : row));
    expect(cuts[0].stemsAsked).toBeGreaterThan(0);
    expect(stemsOf(cuts)).toBeLessThanOrEqual(1);
    expect(curveProposals({ ...FARM, cuts }, NOVEMBER)).toEqual([]);
  });

  test("[V5] of beds cut to the last stem each picking day it says within a twentieth how heavy they were", () => {
    for (const share of [0.6, 0.8, 1, 1.25, 1.5]) {
      const said = stemsOf(cutAs(FARM, share, wasAllReady));
      expect(Math.abs(said / share - 1)).toBeLessThan(0.05);
    }
  });

  test("[V5] days on which the list was filled draw a short day back towards the curve, and never past it", () => {
    const short = cutAs(FARM, 0.6, (stems, at) => (at === 2 ? stems * 2 : null)).filter((_, at) => at % 10 === 2);
    const filled = cutAs(FARM, 1.5, wasFilled).map((row) => ({ ...row, id: 100 + row.id }));
    const others = filled.filter(
      ({ bedId, cutOn }) => !short.some((row) => row.bedId === bedId && row.cutOn === cutOn),
    );
    expect(short.length).toBeGreaterThan(0);
    const [alone, beside] = [stemsOf(short), stemsOf([...short, ...others])];
    expect(alone).toBeLessThan(0.95);
    expect(beside).toBeGreaterThan(alone);
    expect(beside).toBeLessThanOrEqual(1);
  });

  test("[V5] in six farms of any crops whose lists were all filled, heavy or not, nothing is proposed", () => {
    let cutCount = 0;
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const snap = seededFarm(seed, { bedCount: 12, bookingCount: 4 });
      const cuts = cutAs(snap, 0.5 + 0.25 * seed, wasFilled);
      expect(curveProposals({ ...snap, cuts }, toDayNumber(day("2028-01-01")))).toEqual([]);
      cutCount += cuts.length;
    }
    expect(cutCount).toBeGreaterThan(500);
  });

  test("[V5] of the invented farm's two recorded seasons each that is named had, counted row by row, something measured in a bed of its curve", () => {
    const snap = demoSnapshot(2027, day("2026-11-25"));
    const proposals = curveProposals(snap, toDayNumber(day("2026-11-25")));
    expect(proposals.length).toBeGreaterThan(5);
    for (const { part, curve: of, seasons, was, is } of proposals) {
      if (part === "timing") expect(Math.abs(is.laterDays - was.laterDays)).toBeGreaterThanOrEqual(2);
      for (const { season } of seasons) expect(measuredIn(snap, of.id, season, part)).toBe(true);
    }
  });
});

/** The slow second method: every record of a season, bed by bed. */
function measuredIn(snap: Snapshot, curveId: number, season: number, part: "timing" | "yield"): boolean {
  return grown(snap, season).some(({ curve: by, planting: { bedId, varietyId } }) => {
    const isHere = (row: { bedId: number; varietyId: number }) => row.bedId === bedId && row.varietyId === varietyId;
    if (by?.id !== curveId) return false;
    const looks = snap.budLooks.filter((row) => isHere(row) && yearOf(row.lookedOn) === season);
    const days = new Map<string, Cut[]>();
    for (const row of snap.cuts.filter((one) => isHere(one) && yearOf(one.cutOn) === season))
      days.set(row.cutOn, [...(days.get(row.cutOn) ?? []), row]);
    const wasShort = [...days.values()].some((rows) => {
      const cut = rows.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
      return rows.some(({ stemsAsked }) => stemsAsked === null || stemsAsked > cut);
    });
    return wasShort || (part === "timing" && looks.length > 0);
  });
}
