import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { resumable } from "#lib/plan/road/lived-days";
import type { Plan } from "#lib/plan/road/plan";
import { provenPlan } from "../../proven-plan";
import { booking, focal } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anySeason, lived } from "./lived-season";

/** What a plan says of every need and of every stem. */
const said = ({ match, pickList }: Plan) => ({
  cents: match.solution.totalCost,
  short: [...match.shortStems],
  stems: match.supplies.map(({ variety, bookingId, days, stems }) => [variety.id, bookingId, days, stems]),
  cut: pickList.map(({ cutDay, variety, booking: { id }, stemsToCut }) => [cutDay, variety.id, id, stemsToCut]),
});

test("[L3] [T5] tap after tap, late ones and bookings taken between, the plan from the one before is the plan made afresh", () => {
  let resumed = 0;
  fc.assert(
    fc.property(fc.record({ season: anySeason, shown: fc.boolean() }), ({ season, shown }) => {
      const { cuts, today } = lived(season.snap, season.seed, season.dayCount);
      const { snap } = season;
      const moved = new Map(snap.plantings.map(({ id }) => [id, { daysLate: 2, yieldFactor: 0.9 }]));
      const late = booking({
        id: 99,
        client: "Late",
        eventOn: toDay(today + 2),
        takenOn: toDay(today),
        stemLines: focal(5),
      });
      const withCuts = (rows: readonly Cut[]): Snapshot => ({ ...snap, cuts: rows });
      const last = cuts.slice(0, -1).concat(cuts.slice(-1).map((row) => ({ ...row, stemsCut: row.stemsCut + 1 })));
      const steps: Snapshot[] = [
        ...cuts.map((_, index) => withCuts(cuts.slice(0, index + 1))),
        withCuts(last),
        ...(shown ? [{ ...withCuts(last), shown: moved }] : []),
        { ...withCuts(cuts.slice(1)), bookings: [...snap.bookings, late] },
        withCuts(cuts),
      ];
      let before: Plan | null = null;
      for (const step of steps.slice(-8)) {
        const now: Plan = provenPlan(step, 2027, undefined, before, today);
        expect(said(now)).toEqual(said(provenPlan(step, 2027, undefined, null, today)));
        if (
          before?.lived &&
          now.lived &&
          resumable(before.lived, now.lived.of, now.lived.passed, now.lived.days) !== null
        )
          resumed += 1;
        before = now;
      }
    }),
    { ...anySeed, numRuns: 40 },
  );
  expect(resumed).toBeGreaterThan(20);
});
