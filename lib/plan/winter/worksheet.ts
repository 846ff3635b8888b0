import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { winterBeds } from "./beds";
import { clumpCount, leafDepthLaidMetres } from "./costs";
import { spreadWork, type WinterTask } from "./spread-work";
import { dugSteps, keptSteps, type WinterDates, winterDates } from "./winter-steps";

/** What all the work takes. */
export type WinterTotals = {
  readonly hours: number;
  readonly leafCubicMetres: number;
  readonly tarpSquareMetres: number;
  readonly keptClumpCount: number;
  readonly dugClumpCount: number;
};

type BedTotals = WinterTotals & { readonly bedId: number; readonly bedName: string; readonly fate: "kept" | "dug" };

/** The winter's work from today to spring, in order of day, for each bed and in all [K9]. */
export type WinterWorksheet = {
  readonly dates: WinterDates;
  readonly leafDepthLaidMetres: number;
  readonly tasks: readonly WinterTask[];
  readonly beds: readonly BedTotals[];
  readonly totals: WinterTotals;
};

/**
 * What to do in each candidate bed from `today` on, spread over days by the farm's hours a day. Dates hang on the farm's frosts: the first of the autumn
 * before the season, and the last of its spring.
 * @throws RangeError if a bed kept is no candidate
 */
export function winterWorksheet(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  today: Day,
): WinterWorksheet {
  const beds = winterBeds(snapshot, seasonYear);
  const stray = keptBedIds.find((id) => !beds.some(({ bed }) => bed.id === id));
  if (stray !== undefined) throw new RangeError(`keptBedIds must be candidate beds, got ${stray}`);
  const dates = winterDates(snapshot, seasonYear);
  const kept = new Set(keptBedIds);
  const chains = beds.flatMap((bed) =>
    kept.has(bed.bed.id) ? [keptSteps(snapshot, bed, dates)] : dugSteps(snapshot, bed, dates),
  );
  const tasks = spreadWork(chains, snapshot.farm.winter.workHoursPerDay, today);
  return {
    dates,
    leafDepthLaidMetres: leafDepthLaidMetres(snapshot.farm),
    tasks,
    beds: beds.map(({ bed: { id, name }, plantings }) => ({
      bedId: id,
      bedName: name,
      fate: kept.has(id) ? "kept" : "dug",
      ...totals(tasks.filter(({ bedId }) => bedId === id)),
      keptClumpCount: kept.has(id) ? clumpCount(plantings.map((row) => row.kept.planting)) : 0,
    })),
    totals: {
      ...totals(tasks),
      keptClumpCount: clumpCount(
        beds.flatMap(({ bed, plantings }) => (kept.has(bed.id) ? plantings.map((row) => row.kept.planting) : [])),
      ),
    },
  };
}

function totals(tasks: readonly WinterTask[]): Omit<WinterTotals, "keptClumpCount"> {
  const sum = (of: (task: WinterTask) => number) => tasks.reduce((total, task) => total + of(task), 0);
  return {
    hours: sum(({ hours }) => hours),
    leafCubicMetres: sum(({ leafCubicMetres }) => leafCubicMetres),
    tarpSquareMetres: sum(({ tarpSquareMetres }) => tarpSquareMetres),
    dugClumpCount: sum(({ fate, clumpCount: clumps }) => (fate === "dug" ? clumps : 0)),
  };
}
