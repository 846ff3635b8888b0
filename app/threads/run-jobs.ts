import { changedFigures } from "#lib/domain/built-in-figures";
import { changedRecipes } from "#lib/domain/built-in-recipes";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import type { Snapshot } from "#lib/domain/snapshot";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { keepSureness } from "#lib/plan/chance/keep-sureness";
import { Simulation, sampleSteps } from "#lib/plan/chance/simulation";
import type { SeasonSamples } from "#lib/plan/chance/simulation-samples";
import { howTrueSteps } from "#lib/plan/learning/how-true/how-true";
import { plan } from "#lib/plan/road/plan";
import { figuresTakenSteps } from "#lib/plan/what-if/figures-taken";
import { ordersBeside } from "#lib/plan/what-if/orders-beside";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { chooseBeds } from "#lib/plan/winter/choose-beds";
import { fewestBeds } from "#lib/plan/winter/fewest-beds";
import { keepCurve } from "#lib/plan/winter/keep-curve";
import { type WinterSeason, winterSeason } from "#lib/plan/winter/season";
import { sweepKept } from "#lib/plan/winter/sweep";
import { bedVerdicts } from "#lib/plan/winter/verdicts";
import type { BedWorth, JobKind, Jobs } from "./jobs";

/** A job step by step. It yields its progress; sent `true`, it ends with the best it has. */
export type Steps<Kind extends JobKind> = Generator<Jobs[Kind]["progress"], Jobs[Kind]["answer"], boolean | undefined>;

/** Seasons that a farm keeps ready. */
const SEASONS_KEPT = 2;
/** Simulations that it keeps ready: one with every bed dug, and those of two readers' ticks. */
const SIMULATIONS_KEPT = 3;

type SampledPlan = { readonly seasonYear: number; readonly seed: number; readonly keptBedIds: readonly number[] };

/** A farm that jobs are run on, and what was made of it before: the network of a season is asked many questions. */
export class JobFarm {
  readonly snapshot: Snapshot;
  #seasons: readonly WinterSeason[] = [];
  #simulations: readonly (readonly [string, Simulation])[] = [];

  constructor(snapshot: Snapshot) {
    this.snapshot = snapshot;
  }

  season(seasonYear: number): WinterSeason {
    const known = this.#seasons.find(({ futures }) => futures.seasonYear === seasonYear);
    const season = known ?? winterSeason(this.snapshot, seasonYear);
    this.#seasons = [season, ...this.#seasons.filter((other) => other !== season)].slice(0, SEASONS_KEPT);
    return season;
  }

  /** What chance does not touch, made once: the parts of a thousand seasons are walked with the same. */
  simulation({ seasonYear, seed, keptBedIds }: SampledPlan): Simulation {
    const key = `${seasonYear} ${seed} ${keptBedIds}`;
    const [known] = this.#simulations.filter(([name]) => name === key);
    const made = known ?? [key, new Simulation(withKeptBeds(this.snapshot, seasonYear, keptBedIds), seasonYear, seed)];
    this.#simulations = [made, ...this.#simulations.filter((other) => other !== made)].slice(0, SIMULATIONS_KEPT);
    return made[1];
  }
}

/** How each kind of job is done. */
export const RUN: {
  readonly [Kind in JobKind]: (farm: JobFarm, ask: Jobs[Kind]["ask"], solver: LinearSolver) => Steps<Kind>;
} = {
  cheapest: (farm, { seasonYear }, solver) => chooseBeds(farm.snapshot, seasonYear, solver, farm.season(seasonYear)),
  fewest: (farm, { seasonYear }, solver) => fewestBeds(farm.season(seasonYear), solver),
  curve: (farm, { seasonYear }, solver) => keepCurve(farm.season(seasonYear), solver),
  sweep: (farm, { seasonYear, by, values }, solver) => sweepKept(farm.snapshot, seasonYear, solver, by, values),
  *verdicts(farm, { seasonYear, keptBedIds }) {
    const worths: BedWorth[] = [];
    // Whoever asked may have gone on to other beds meanwhile: part of an answer is of no use to anybody.
    if (yield null) return [];
    for (const verdict of bedVerdicts(farm.season(seasonYear), keptBedIds)) {
      worths.push({
        bedId: verdict.bed.id,
        isKept: verdict.isKept,
        worthCents: verdict.worthCents,
        matchCents: verdict.matchCents,
        breakEvenShare: verdict.breakEvenShare,
        weeks: verdict.weeks,
        focalStems: verdict.focalStems,
        wouldBreak: verdict.wouldBreak,
      });
      if (yield null) return [];
    }
    return worths;
  },
  orders: ({ snapshot }, { seasonYear, keptBedIds, todayNumber }) =>
    ordersBeside(snapshot, seasonYear, keptBedIds, todayNumber),
  figures({ snapshot }, { seasonYear, todayNumber }) {
    const crops = changedFigures(snapshot, CATALOGUE);
    const recipes = changedRecipes(snapshot.recipes, DEFAULT_RECIPES);
    return figuresTakenSteps(plan(snapshot, seasonYear, undefined, null, todayNumber), crops, recipes);
  },
  howTrue: ({ snapshot }, { seasonYear }) => howTrueSteps(snapshot, seasonYear),
  *sample(farm, { plans, seasonYear, seed, firstSeason, seasonCount }) {
    const samples: SeasonSamples[] = [];
    for (const keptBedIds of plans) {
      const simulation = farm.simulation({ seasonYear, seed, keptBedIds });
      const sampling = sampleSteps(simulation, firstSeason, seasonCount);
      let step = sampling.next();
      while (!step.done) {
        if (yield null) return null;
        step = sampling.next();
      }
      samples.push(step.value);
    }
    return samples;
  },
  // biome-ignore lint/correctness/useYield: one step
  *sureness({ snapshot }, { seasonYear, keptBedIds, dug, kept }) {
    return keepSureness(snapshot, seasonYear, keptBedIds, dug, kept);
  },
};
