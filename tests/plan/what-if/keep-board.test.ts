import { describe, expect, test } from "vitest";
import { keepBoard } from "#lib/plan/what-if/keep-board";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { chosenBeds } from "#lib/plan/winter/choose-beds";
import { bedsKeptNow, plantingsToChange } from "#lib/plan/winter/kept-beds";
import { keptIds, selectionOf, winterSeason } from "#lib/plan/winter/season";
import { keptInWords } from "#lib/plan/words/keep-or-dig-words";
import { provenPlan } from "../../proven-plan";
import { bed, booking, crop, curve, day, focal, planting, snapshot } from "../../small-farm";
import { SEASON, winterFarm } from "../winter/farm";

/** Two dahlia beds of 30 focal stems each: kept they bloom in the week of 7 June, dug after September. 60 are asked for on 12 June. */
const june = () =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true })],
    curves: [
      curve({ id: 1, treatment: "kept-in-ground" }),
      curve({ id: 2, treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 109 } }),
    ],
    beds: [bed({ id: 1, name: "D1" }), bed({ id: 2, name: "D2" })],
    plantings: [1, 2].map((id) => planting({ id, bedId: id, treatment: "spring-planted", winterSurvivalShare: 1 })),
    bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(60) })],
  });

function boardOf(farm: ReturnType<typeof june>, kept: readonly number[], year = 2027) {
  const [dug, tried] = [[], kept].map((beds) => provenPlan(withKeptBeds(farm, year, beds), year));
  return { ...keepBoard(dug, provenPlan(farm, year), tried, kept), words: keptInWords(dug, tried, kept) };
}

describe("the board of beds kept", () => {
  test("one bed of two kept covers 30 of the 60 stems short with all dug, and the sentence says so", () => {
    const board = boardOf(june(), [1]);
    expect(board.comparison.totals.map(({ focalShortStems }) => focalShortStems)).toEqual([60, 60, 30]);
    expect(board.comparison.weeks.find(({ monday }) => monday === "2027-06-07")?.focal[2].shortStems).toBe(30);
    expect(board.words).toMatch(/^Keep bed D1: 30 of 60 short focal stems of 12 June are covered; 30 remain/);
  });

  test("the second plan is the farm as it stands, with what its beds take", () => {
    const stands = withKeptBeds(june(), 2027, [2]);
    const board = boardOf(stands, [1, 2]);
    expect(board.comparison.totals.map(({ focalShortStems }) => focalShortStems)).toEqual([60, 30, 0]);
    const [dug, now, both] = board.winters.map(({ cost }) => cost.tarpSquareMetres);
    expect(dug).toBe(0);
    expect(now).toBeGreaterThan(0);
    expect(both).toBeCloseTo(2 * now, 9);
  });

  test.each([11, 12, 13])("what is weighed is to the cent what the search makes least (farm %i)", (seed) => {
    const farm = winterFarm(seed, 14, 10);
    const season = winterSeason(farm, SEASON);
    const ids = keptIds(
      season,
      season.openBeds.map((_, index) => index % 2 === 0),
    );
    const chosen = chosenBeds(season, selectionOf(season, ids));
    const tried = boardOf(farm, ids, SEASON).winters[2];
    expect(tried.weighedCents).toBe(chosen.totalCents);
    expect(tried.cost.cents).toBe(chosen.winterCents);
    expect([tried.brokenStems, tried.brokenCents]).toEqual([chosen.brokenStems, chosen.brokenCents]);
    expect(tried.cost.hours).toBeCloseTo(chosen.hours, 9);
    expect(tried.cost.leafCubicMetres).toBeCloseTo(chosen.leafCubicMetres, 9);
  });
});

describe("adopting beds", () => {
  test.each([21, 22])(
    "the plantings to change make the farm the one that was tried, and then there is none (farm %i)",
    (seed) => {
      const farm = winterFarm(seed, 14, 4);
      const season = winterSeason(farm, SEASON);
      const ids = keptIds(
        season,
        season.openBeds.map((_, index) => index % 3 === 0),
      );
      expect(ids.length).toBeGreaterThan(0);
      const changed = new Map(plantingsToChange(farm, SEASON, ids).map((row) => [row.id, row]));
      const adopted = { ...farm, plantings: farm.plantings.map((row) => changed.get(row.id) ?? row) };
      expect(adopted).toEqual(withKeptBeds(farm, SEASON, ids));
      expect(plantingsToChange(adopted, SEASON, ids)).toEqual([]);
      expect(bedsKeptNow(adopted, SEASON).map((row) => row.bed.id)).toEqual(ids);
    },
  );
});
