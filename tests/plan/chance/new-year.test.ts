import { expect, test } from "vitest";
import { yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { sampledRows } from "#lib/plan/chance/sampled-rows";
import { Simulation } from "#lib/plan/chance/simulation";
import { provenPlan } from "../../proven-plan";
import { booking, curve, day, focal, monthDay, planting, snapshot } from "../../small-farm";
import { aroundNewYear } from "../road/new-year-farm";
import { certain, expectNetworkOfPlan, rowOf, sampleSeasons } from "./sampled";

/** A farm with plantings, bookings and lots on either side of New Year 2028, half of its beds replanted for the next season. */
function overNewYear(seed: number): Snapshot {
  const farm = aroundNewYear(seed);
  const { plantings } = farm;
  const next = plantings.map((row) => ({ ...row, id: row.id + 1000, seasonYear: 2028, plantedOn: day("2028-04-20") }));
  return { ...farm, plantings: [...plantings, ...next.filter((_, index) => index % 2 === 0)] };
}

test("[R2] [M8] seed 55: seasons that meet at New Year are sampled together, each planting once, in the network of a plan of both", () => {
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    const farm = overNewYear(seed);
    const simulation = new Simulation(farm, 2028, 55);
    for (let season = 0; season < 10; season++) expectNetworkOfPlan(farm, [2027, 2028], simulation, season);
    const years = simulation.season(3);
    expect(years.map(({ plantings }) => plantings.length)).toEqual(
      [2027, 2028].map((year) => sampledRows(farm, year).length),
    );
    expect(years[0].frostDay).toBeLessThan(years[1].frostDay - 300);
  }
});

test("[R4] [M8] with nothing left to chance New Year is no wall: each season goes short of what its plan does, over 20 farms", () => {
  let metCount = 0;
  for (let seed = 1; seed <= 20; seed++) {
    const farm = certain(aroundNewYear(seed));
    for (const year of [2027, 2028]) {
      const { match, meetingSeasons } = provenPlan(farm, year);
      const own = match.needs.flatMap(({ booking }, need) => (yearOf(booking.eventOn) === year ? [need] : []));
      const samples = sampleSeasons(farm, year, 56, 0, 2);
      expect(rowOf(samples.shortStems, 1, 2)).toEqual(own.map((need) => match.shortStems[need]));
      expect(samples.frame.needs.map(({ bookingId }) => bookingId)).toEqual(
        own.map((need) => match.needs[need].booking.id),
      );
      metCount += meetingSeasons.length - 1;
    }
  }
  expect(metCount).toBeGreaterThan(20);
});

test("[M8] a first cut that may come late enough to serve the next season's bookings brings that season in", () => {
  const late = (firstCutSpreadDays: number) =>
    snapshot({
      curves: [curve({ firstCutSpreadDays, anchor: { kind: "day-of-year", firstCut: monthDay("11-10") } })],
      plantings: [planting({ id: 1 })],
      bookings: [booking({ id: 1, eventOn: day("2028-01-02"), stemLines: focal(10) })],
    });
  const seasonsOf = (spreadDays: number) => new Simulation(late(spreadDays), 2027, 1).season(0).length;
  expect([seasonsOf(0), seasonsOf(20)]).toEqual([1, 2]);
});
