import { expect, test } from "vitest";
import { changedFigures } from "#lib/domain/built-in-figures";
import { COMMON_PRACTICE } from "#lib/domain/sourced";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, focal, monthDay, planting, snapshot } from "../../small-farm";
import { figuresTaken } from "./figures-at-once";

/** A crop cut from 20 November on for a week, and built in with eight: then it is in bloom at New Year. */
const { id: _crop, ...cropFacts } = crop({ id: 1 });
const shortCurve = curve({
  anchor: { kind: "day-of-year", firstCut: monthDay("11-20") },
  stemsPerPlantByWeek: [1],
  timingOrigin: COMMON_PRACTICE,
  yieldOrigin: COMMON_PRACTICE,
});
const { id: _id, cropId: _of, varietyId: _variety, plantingId: _planting, ...plain } = shortCurve;
const catalogue = [{ ...cropFacts, curves: [{ ...plain, stemsPerPlantByWeek: Array(8).fill(1) }] }];

test("[W9] [M8] figures that bring a season before into January count beside their crop, though it does not meet this one yet", () => {
  const farm = snapshot({
    curves: [shortCurve],
    plantings: [planting({ id: 1, seasonYear: 2026, plantedOn: day("2026-05-20") })],
    bookings: [booking({ id: 1, eventOn: day("2027-01-02"), stemLines: focal(20) })],
  });
  const before = provenPlan(farm, 2027);
  expect(before.meetingSeasons).toEqual([2027]);
  const { shortBefore, shortAfterAll, crops } = figuresTaken(before, changedFigures(farm, catalogue));
  expect([shortBefore, shortAfterAll, crops[0].after.shortStems]).toEqual([20, 0, 0]);
});
