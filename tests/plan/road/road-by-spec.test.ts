import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { highs } from "../../least-cost";
import { provenPlan } from "../../proven-plan";
import { anyFarm, anySeed } from "../any-farm";
import { directMatch, leastShort } from "./match-by-arcs";
import { aroundNewYear } from "./new-year-farm";
import { bloomBySpec, needsBySpec, type SpecNeed, type SpecPlanting } from "./road-by-spec";

/**
 * Walks the road a second time, from the rules alone, all seasons at once [M8], and meets the plan to the stem and, where all bookings are of its
 * season, to the cent.
 */
async function meets(farm: Snapshot, season = 2027): Promise<void> {
  const { forecast, match } = provenPlan(farm, season);
  const bloom = bloomBySpec(farm);
  const ofSeason = bloom.filter(({ planting }) => planting.seasonYear === season);
  expect(ofSeason.map(given)).toEqual(forecast.plantings.map(given));
  const asked = needsBySpec(farm);
  const { cents, shortStems } = leastShort(await highs, directMatch(farm, bloom, asked));
  const own = (eventOn: string) => Number(eventOn.slice(0, 4)) === season;
  const needed = asked.flatMap((need, index) =>
    own(need.booking.eventOn) ? [[...wants(need), shortStems[index]]] : [],
  );
  expect(needed).toEqual(
    match.needs.flatMap((need, index) =>
      own(need.booking.eventOn) ? [[...wants(need), match.shortStems[index]]] : [],
    ),
  );
  if (needed.length === asked.length) expect(cents).toBe(match.solution.totalCost);
}

const given = ({
  planting,
  cutDays,
  cutStems,
  usableStems,
  lostInFieldStems,
  lostToFrostStems,
}: PlantingForecast | SpecPlanting) => ({
  ...{ id: planting.id, cutDays, cutStems, usableStems, lostInFieldStems, lostToFrostStems },
});

const wants = ({ booking, role, cropId, cropOnly, asks, colours, stems }: SpecNeed) =>
  [booking.id, role, cropId, cropOnly, asks, colours, stems] as const;

describe("the road written a second time from the rules", () => {
  test("[F3] [F4] [N1] [M5] [M7] gives the demo's plan: every cut, every need, the cost and every stem short", async () => {
    await meets(demoSnapshot());
  });

  test("[F3] [F4] [F14] [N1] [M5] [M7] and those of 60 seeded farms", async () => {
    for (let seed = 1; seed <= 60; seed++) await meets(seededFarm(seed, { bedCount: 12, bookingCount: 10 }));
  });

  test("[M8] and those of 30 farms with bookings and cooler lots on both sides of New Year", async () => {
    for (let seed = 1; seed <= 30; seed++) for (const season of [2027, 2028]) await meets(aroundNewYear(seed), season);
  });

  test("[F3] [F4] [N1] [M5] [M7] and those of 150 farms in which everything meets", async () => {
    await fc.assert(
      fc.asyncProperty(anyFarm, (farm) => meets(farm)),
      { ...anySeed, numRuns: 150 },
    );
  });
});
