import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { applyChanges } from "#lib/plan/what-if/what-if";
import type { Spreads } from "./sample-spreads";
import { sampleSteps } from "./simulation";
import type { SeasonSamples } from "./simulation-samples";

/** A run of seasons to sample, as plain data that can be sent to another thread. The answer is {@link SeasonSamples}. */
export type SimulationJob = {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  readonly changes: readonly Change[];
  readonly seed: number;
  readonly firstSeason: number;
  readonly seasonCount: number;
  readonly spreads?: Spreads;
};

/**
 * Does the job: the farm with its changes, season after season. Changes that no longer fit are left out.
 * @internal for tests and measurements: the pool does it step by step
 */
export function runSimulationJob(job: SimulationJob): SeasonSamples {
  const sampling = simulationSteps(job);
  for (;;) {
    const step = sampling.next();
    if (step.done) return step.value;
  }
}

/** The same a season a step, for whoever must stay able to stop. */
export function* simulationSteps(job: SimulationJob): Generator<void, SeasonSamples, void> {
  const { snapshot } = applyChanges(job.snapshot, job.seasonYear, job.changes);
  const { seasonYear, seed, firstSeason, seasonCount, spreads } = job;
  return yield* sampleSteps(snapshot, seasonYear, seed, firstSeason, seasonCount, spreads);
}

/**
 * The job in up to so many parts of nearly equal length, one after the other; merged, their answers are the job's own [R1].
 * @throws RangeError unless `partCount` is 1 or more
 */
export function splitJob(job: SimulationJob, partCount: number): SimulationJob[] {
  if (!(partCount >= 1)) throw new RangeError(`partCount must be 1 or more, got ${partCount}`);
  const parts = Math.max(1, Math.min(Math.floor(partCount), job.seasonCount));
  const firstOf = (part: number) => Math.floor((part * job.seasonCount) / parts);
  return Array.from({ length: parts }, (_, part) => ({
    ...job,
    firstSeason: job.firstSeason + firstOf(part),
    seasonCount: firstOf(part + 1) - firstOf(part),
  }));
}
