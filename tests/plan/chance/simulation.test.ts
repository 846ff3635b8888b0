import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LARGE, seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkFlow } from "#lib/maths/check-flow";
import { Simulation } from "#lib/plan/chance/simulation";
import { merge } from "#lib/plan/chance/simulation-samples";
import { provenPlan } from "../../proven-plan";
import { bed, day, snapshot } from "../../small-farm";
import { asPlans, certain, expectNetworkOfPlan, rowOf, sampleSeasons } from "./sampled";

const SMALL = { bedCount: 24, bookingCount: 16 };

/** Some stems in the cooler, a sprayed bed, and a planting without a curve: what a farm may have beside the plain. */
function withOddities(farm: Snapshot): Snapshot {
  const [first, second, third, ...others] = farm.plantings;
  const kept = others.filter(({ treatment }) => treatment === "kept-in-ground").slice(0, 3);
  const losses = [
    ...[first, second, ...others.slice(0, 8)].map((row) => ({ ...lossOf(row), seenOn: day("2027-08-03") })),
    ...kept.map((row) => ({ ...lossOf(row), seenOn: day("2027-04-20"), cause: "winter in the ground" as const })),
  ].map((row, index) => ({ id: index + 1, ...row }));
  return {
    ...farm,
    coolerStock: [{ id: 1, varietyId: first.varietyId, cutOn: day("2027-08-18"), stemCount: 25 }],
    beds: farm.beds.map((one) =>
      one.id === second.bedId
        ? bed({ id: one.id, noEntryFrom: day("2027-08-01"), noEntryUntil: day("2027-08-20") })
        : one,
    ),
    plantings: [first, second, { ...third, treatment: "tunnel" }, ...others],
    curves: farm.curves.filter(({ treatment }) => treatment !== "tunnel"),
    losses,
  };
}

const lossOf = ({ bedId, varietyId }: Snapshot["plantings"][number]) => ({
  ...{ bedId, varietyId },
  ...{ cause: "voles" as const, plantsBefore: 7, plantsLeft: 3 },
});

describe("sampled seasons", () => {
  test("[R1] 60 seasons in one run, in two, in seven: the same figures", () => {
    const farm = seededFarm(1, SMALL);
    const whole = sampleSeasons(farm, 2027, 7, 0, 60);
    for (const firsts of [
      [0, 30],
      [0, 9, 18, 27, 36, 45, 54],
    ]) {
      const parts = firsts.map((first, part) => sampleSeasons(farm, 2027, 7, first, (firsts[part + 1] ?? 60) - first));
      expect(merge(parts.reverse())).toEqual(whole);
    }
    expect(sampleSeasons(farm, 2027, 8, 0, 60).shortStems).not.toEqual(whole.shortStems);
  });

  test("[R1] a planting meets the same seasons whatever stands in the other beds, and whichever way its own is wintered", () => {
    const invented = seededFarm(2, SMALL);
    const farm = { ...invented, curves: invented.curves.map((curve) => ({ ...curve, firstCutSpreadDays: 6 })) };
    const alone = { ...farm, plantings: farm.plantings.slice(5, 6) };
    const kept = {
      ...alone,
      plantings: alone.plantings.map((one) => ({ ...one, treatment: "kept-in-ground" as const })),
    };
    const [among, apart, wintered] = [farm, alone, kept].map((one) => new Simulation(one, 2027, 9));
    expect(farm.plantings[5].treatment).toBe("spring-planted");
    for (let season = 0; season < 50; season++) {
      const [[here], [there], [then]] = [among, apart, wintered].map((one) => one.season(season));
      expect(there.plantings[0]).toEqual(here.plantings[5]);
      expect(there.frostDay).toBe(here.frostDay);
      expect(then.plantings[0].shiftDays).toBe(there.plantings[0].shiftDays);
    }
  });

  test("[R1] samples that leave out or double a season, or of another farm, are not merged", () => {
    const farm = seededFarm(1, { bedCount: 4, bookingCount: 2 });
    const run = (first: number, count: number) => sampleSeasons(farm, 2027, 1, first, count);
    expect(() => merge([])).toThrow(RangeError);
    expect(() => merge([run(0, 3), run(4, 2)])).toThrow(/season 3 expected/);
    expect(() => merge([run(0, 3), run(2, 2)])).toThrow(RangeError);
    const other = sampleSeasons({ ...farm, bookings: farm.bookings.slice(1) }, 2027, 1, 3, 2);
    expect(() => merge([run(0, 3), other])).toThrow(/same farm/);
  });

  test("[R2] seed 51: over 60 seasons of four farms, the network is the one a plan would build, and the match is proven", () => {
    for (const seed of [1, 2, 3, 4]) {
      const farm = withOddities(seededFarm(seed, SMALL));
      const simulation = new Simulation(farm, 2027, 51);
      for (let season = 0; season < 15; season++) expectNetworkOfPlan(farm, [2027], simulation, season);
    }
  });

  test("[R2] three seasons of a large farm are proven", () => {
    const simulation = new Simulation(seededFarm(5, LARGE), 2027, 52);
    for (const season of [0, 1, 999]) {
      const { network, solution } = simulation.matched(season);
      expect(checkFlow(network.flow, solution)).toEqual([]);
    }
  });

  test("[R4] with nothing left to chance every season is the plan: stems short and what they cost by price and claim", () => {
    for (const seed of [1, 2, 3]) {
      const farm = certain(withOddities(seededFarm(seed, SMALL)));
      const planned = provenPlan(farm, 2027);
      const samples = sampleSeasons(farm, 2027, 53, 1000, 3);
      const { frame } = samples;
      expect(frame.needs.map(({ stems }) => stems)).toEqual(planned.match.needs.map(({ stems }) => stems));
      const claimCents = planned.match.needs.reduce(
        (sum, _, index) => sum + planned.match.network.shortCentsOf(index, planned.match.solution),
        0,
      );
      for (let season = 0; season < 3; season++) {
        expect(rowOf(samples.shortStems, season, 3)).toEqual([...planned.match.shortStems]);
        expect(samples.claimCents[season]).toBe(claimCents);
      }
    }
  });

  test("a farm with nothing in it can be sampled", () => {
    const samples = sampleSeasons(snapshot({ plantings: [] }), 2027, 1, 0, 4);
    expect([samples.shortStems.length, [...samples.claimCents]]).toEqual([0, [0, 0, 0, 0]]);
  });

  test("[R4] seed 54: what a season gives is what the forecast gives for the same plants, first cut and frost", () => {
    const farm = withOddities(seededFarm(6, SMALL));
    const simulation = new Simulation(farm, 2027, 54);
    fc.assert(
      fc.property(fc.nat(100_000), (season) => {
        const forecasts = asPlans(farm, 2027, simulation.season(season)[0]);
        const cut = forecasts.reduce((sum, { usableStems }) => sum + usableStems.reduce((a, b) => a + b, 0), 25);
        const { network } = simulation.matched(season);
        const supplied = network.flow.supply.slice(0, network.giverCount).reduce((a, b) => a + b, 0);
        expect(supplied).toBe(cut);
      }),
      { seed: 54, numRuns: 50 },
    );
  });
});
