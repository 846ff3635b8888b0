import { expect } from "vitest";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkFlow } from "#lib/maths/check-flow";
import type { SampledSeason } from "#lib/plan/chance/sample-season";
import { sampledRows } from "#lib/plan/chance/sampled-rows";
import { Simulation, sampleSteps } from "#lib/plan/chance/simulation";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { forecastPlanting, type PlantingForecast } from "#lib/plan/road/forecast";
import { withLateStems } from "#lib/plan/road/late-stems";
import { matchNetwork } from "#lib/plan/road/match-network";
import { needs } from "#lib/plan/road/needs";
import { supplyOf } from "#lib/plan/road/supply";
import { finished } from "#lib/plan/winter/choose-beds";

/** Sampled seasons, all at once. */
export const sampleSeasons = (farm: Snapshot, seasonYear: number, seed: number, firstSeason: number, count: number) =>
  finished(sampleSteps(new Simulation(farm, seasonYear, seed), firstSeason, count));

/** The farm with every spread at nothing: no first cut moved, one yield, certain winters, frost on one day. */
export function certain(farm: Snapshot): Snapshot {
  const { frost } = farm.farm;
  const surely = { ...frost, firstAutumnP10: frost.firstAutumnP50, firstAutumnP90: frost.firstAutumnP50 };
  return {
    ...farm,
    farm: { ...farm.farm, frost: surely, winter: { ...farm.farm.winter, winterSurvivalShare: 1 } },
    curves: farm.curves.map((curve): BloomCurve => ({ ...curve, firstCutSpreadDays: 0, yieldSpread: 0 })),
  };
}

/** The network that a sampled season is matched in is that of a plan of the same stems, and its match is proven. */
export function expectNetworkOfPlan(farm: Snapshot, years: readonly number[], simulation: Simulation, season: number) {
  const sampled = simulation.season(season);
  const forecasts = years.flatMap((year, place) => asPlans(farm, year, sampled[place]));
  const direct = matchNetwork(farm.farm, supplyOf(farm, forecasts, ...years), needs(farm, years), buyInFinder(farm));
  const { network, solution } = simulation.matched(season);
  const { nodeCount, arcCount, from, to, cost, supply, unmetCost } = network.flow;
  expect([nodeCount, arcCount, network.nodeOfNeed(0)]).toEqual([
    direct.flow.nodeCount,
    direct.flow.arcCount,
    direct.nodeOfNeed(0),
  ]);
  expect(from.slice(0, arcCount)).toEqual(direct.flow.from);
  expect(to.slice(0, arcCount)).toEqual(direct.flow.to);
  expect(cost.slice(0, arcCount)).toEqual(direct.flow.cost);
  expect(supply.slice(0, nodeCount)).toEqual(direct.flow.supply);
  expect(unmetCost.slice(0, nodeCount)).toEqual(direct.flow.unmetCost);
  expect(checkFlow(network.flow, solution)).toEqual([]);
}

/** The plantings of a sampled season through the plan's own forecast. */
export function asPlans(farm: Snapshot, year: number, { frostDay, plantings }: SampledSeason) {
  const forecasts: PlantingForecast[] = [];
  sampledRows(farm, year).forEach(({ row, isReplanted }, index) => {
    const sampled = plantings[index];
    const standing = { ...row.planting, plantCount: sampled.plants, aliveShare: 1, winterSurvivalShare: 1 };
    // The clumps that came through are among the plants that stand.
    const seen = { ...row.seen, cameThrough: [] };
    const firstCut = row.firstCut === null ? null : row.firstCut + sampled.shiftDays;
    const given =
      firstCut === null
        ? forecastPlanting(row, farm.farm, frostDay)
        : forecastPlanting({ ...row, planting: standing, firstCut, seen }, farm.farm, frostDay);
    const before = isReplanted ? forecasts.pop() : undefined;
    forecasts.push(before ? withLateStems(before, given) : given);
  });
  return forecasts;
}

/** One season's row of samples. */
export const rowOf = (rows: Int32Array, season: number, seasonCount: number): number[] => {
  const width = rows.length / seasonCount;
  return [...rows.slice(season * width, (season + 1) * width)];
};
