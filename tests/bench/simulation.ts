import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { Simulation, sampleSteps } from "#lib/plan/chance/simulation";
import { coveredChances } from "#lib/plan/chance/simulation-summary";
import { openDates } from "#lib/plan/road/open-dates";
import { plan } from "#lib/plan/road/plan";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { comparison } from "#lib/plan/what-if/comparison";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { finished } from "#lib/plan/winter/choose-beds";

const sampleSeasons = (farm: Snapshot, seasonYear: number, seed: number, firstSeason: number, count: number) =>
  finished(sampleSteps(new Simulation(farm, seasonYear, seed), firstSeason, count));

/** One line of the bench table; milliseconds are medians, warm, on one thread. */
export type BenchRow = { readonly name: string; readonly medianMs: number; readonly note: string };

/** What-ifs, open dates and sampled seasons of invented farms. Two threads halve the time of a thousand seasons. */
export function simulationRows(): BenchRow[] {
  const typical = seededFarm(1, TYPICAL);
  const large = seededFarm(1, LARGE);
  const largePlan = plan(large, 2027);
  const hundred = sampleSeasons(typical, 2027, 1, 0, 100);
  const thousand = sampleSeasons(typical, 2027, 1, 0, 1000);
  const late = [{ kind: "season-shifted" as const, days: 10, cropId: null }];
  return [
    row("what-if, typical farm", 15, "applied, planned and compared", () => {
      comparison([plan(typical, 2027), plan(applyChanges(typical, 2027, late).snapshot, 2027)]);
    }),
    row("open dates, large farm", 15, "every Saturday of the season, with its poor years", () =>
      openDates(largePlan, poorMatches(largePlan)),
    ),
    row(
      "simulation made ready, typical farm",
      9,
      "networks and tables, once a thread",
      () => new Simulation(typical, 2027, 1),
    ),
    row("100 seasons, typical farm", 9, `sampled and matched; ${hundred.frame.needs.length} needs`, () =>
      sampleSeasons(typical, 2027, 1, 0, 100),
    ),
    row("1,000 seasons, typical farm", 3, "sampled and matched", () => sampleSeasons(typical, 2027, 1, 0, 1000)),
    row("1,000 seasons summed up", 5, "the chance of each booking", () => coveredChances(thousand)),
    row("20 seasons, large farm", 3, "sampled and matched", () => sampleSeasons(large, 2027, 1, 0, 20)),
  ];
}

function row(name: string, runCount: number, note: string, work: () => unknown): BenchRow {
  work();
  const times = Array.from({ length: runCount }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { name, medianMs: times[Math.floor(runCount / 2)], note };
}
