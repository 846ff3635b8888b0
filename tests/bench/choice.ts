import { type FarmSize, LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { winterBeds } from "#lib/plan/winter/beds";
import { chooseBeds, finished } from "#lib/plan/winter/choose-beds";
import { winterSeason } from "#lib/plan/winter/season";

/** A row of the table of times: the median over the seeds, in milliseconds. */
export type BenchRow = { readonly name: string; readonly median: number; readonly note: string };

const SEASON = 2027;
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const CASES: readonly { readonly name: string; readonly size: FarmSize; readonly candidates: number }[] = [
  { name: "small farm", size: { bedCount: 24, bookingCount: 18 }, candidates: 12 },
  { name: "typical farm", size: TYPICAL, candidates: 60 },
  { name: "typical farm, more dahlias", size: { bedCount: 120, bookingCount: 90 }, candidates: 60 },
  { name: "large farm", size: LARGE, candidates: 60 },
];

/** Times of the proven choice of beds: the network's making, and the choice itself, on ten seeds of each size. */
export async function choiceRows(): Promise<BenchRow[]> {
  const solver = await loadLinearSolver();
  timeOf(farmWith(0, CASES[0].size, 12), solver);
  return CASES.flatMap(({ name, size, candidates }) => {
    const runs = SEEDS.map((seed) => timeOf(farmWith(seed, size, candidates), solver));
    const openCounts = runs.map(({ openCount }) => openCount);
    const beds = `${Math.min(...openCounts)} to ${Math.max(...openCounts)} beds open`;
    const worst = Math.max(...runs.map(({ choiceMs }) => choiceMs));
    const provenCount = runs.filter(({ isProven }) => isProven).length;
    return [
      { name: `winter network, ${name}`, median: median(runs.map(({ seasonMs }) => seasonMs)), note: beds },
      {
        name: `choice of beds, ${name}`,
        median: median(runs.map(({ choiceMs }) => choiceMs)),
        note: `${beds}; worst of ${SEEDS.length} seeds ${worst.toFixed(0)} ms; ${provenCount} proven to the cent`,
      },
    ];
  });
}

/** The farm with all but the first candidates flagged. */
function farmWith(seed: number, size: FarmSize, candidates: number): Snapshot {
  const snapshot = seededFarm(seed, size, SEASON);
  const barred = new Set(
    winterBeds(snapshot, SEASON)
      .slice(candidates)
      .map(({ bed }) => bed.id),
  );
  const flags = ["wanted for something else" as const];
  return { ...snapshot, beds: snapshot.beds.map((bed) => (barred.has(bed.id) ? { ...bed, flags } : bed)) };
}

function timeOf(snapshot: Snapshot, solver: LinearSolver) {
  const start = performance.now();
  const season = winterSeason(snapshot, SEASON);
  const made = performance.now();
  const choice = finished(chooseBeds(snapshot, SEASON, solver, season));
  const end = performance.now();
  return {
    seasonMs: made - start,
    choiceMs: end - made,
    openCount: season.openBeds.length,
    isProven: choice.status === "optimal",
  };
}

const median = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[numbers.length >> 1];
