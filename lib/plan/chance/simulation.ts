import type { Snapshot } from "#lib/domain/snapshot";
import type { FlowSolution } from "#lib/maths/flow-network";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { MatchOfStems } from "#lib/plan/road/match-of-stems";
import type { MatchRuns } from "#lib/plan/road/match-runs";
import { type Need, needs } from "#lib/plan/road/needs";
import { firstCutChances } from "./first-cut-chance";
import { type SampledSeason, seasonSampler } from "./sample-season";
import { DEFAULT_SPREADS } from "./sample-spreads";
import type { SampleFrame, SeasonSamples } from "./simulation-samples";
import { SimulationSupply } from "./simulation-supply";

/**
 * Samples seasons and matches each at least cost. Season i of a seed is the same whichever call it falls in, so the work can be shared
 * out over threads and merged [R1].
 * @param firstSeason  0 or more
 * @param seasonCount  how many seasons from there
 */
export function sampleSeasons(
  snapshot: Snapshot,
  seasonYear: number,
  seed: number,
  firstSeason: number,
  seasonCount: number,
  spreads = DEFAULT_SPREADS,
): SeasonSamples {
  const sampling = sampleSteps(snapshot, seasonYear, seed, firstSeason, seasonCount, spreads);
  for (;;) {
    const step = sampling.next();
    if (step.done) return step.value;
  }
}

/** The same, a step before each season. */
export function* sampleSteps(
  snapshot: Snapshot,
  seasonYear: number,
  seed: number,
  firstSeason: number,
  seasonCount: number,
  spreads = DEFAULT_SPREADS,
): Generator<void, SeasonSamples, void> {
  const simulation = new Simulation(snapshot, seasonYear, seed, spreads);
  const { frame } = simulation;
  const samples = {
    frame,
    firstSeason,
    seasonCount,
    shortStems: new Int32Array(seasonCount * frame.needs.length),
    claimCents: new Float64Array(seasonCount),
  };
  for (let index = 0; index < seasonCount; index++) {
    yield;
    simulation.walk(firstSeason + index, index, samples);
  }
  return samples;
}

/** One season matched: its network with the cheapest flow, which `checkFlow` can prove. Good until the next season is matched. */
export type MatchedSeason = { readonly network: MatchRuns; readonly solution: FlowSolution };

/** Everything about a farm's season that chance does not touch, made once; then season after season. */
export class Simulation {
  readonly frame: SampleFrame;
  readonly season: (index: number) => SampledSeason;
  readonly #needs: readonly Need[];
  readonly #supply: SimulationSupply;
  readonly #network: MatchOfStems;
  /** Stems of each supply node in the season at hand. */
  readonly #stems: Int32Array;

  constructor(snapshot: Snapshot, seasonYear: number, seed: number, spreads = DEFAULT_SPREADS) {
    const { farm } = snapshot;
    this.#needs = needs(snapshot, seasonYear);
    const chanceOf = firstCutChances(snapshot, seasonYear, spreads.sharedShare);
    this.season = seasonSampler(snapshot, seasonYear, seed, spreads, chanceOf);
    this.#supply = new SimulationSupply(snapshot, seasonYear, chanceOf);
    const { possible, nodeCount } = this.#supply;
    this.#network = new MatchOfStems(farm, possible, this.#needs, buyInFinder(snapshot.crops).centsOf);
    this.#stems = new Int32Array(nodeCount);
    this.frame = {
      seasonYear,
      needs: this.#needs.map(({ booking, role, stems }) => ({ bookingId: booking.id, role, stems })),
    };
  }

  /** The cheapest match of a season. */
  matched(season: number): MatchedSeason {
    this.#supply.stemsOf(this.season(season), this.#stems);
    const network = this.#network.ofStems(this.#stems);
    return { network, solution: network.solve() };
  }

  /** Matches a season and notes it in row `index` of the samples. */
  walk(season: number, index: number, samples: SeasonSamples): void {
    const { network, solution } = this.matched(season);
    const row = index * this.#needs.length;
    for (let need = 0; need < this.#needs.length; need++) {
      const short = network.unmetOf(need, solution);
      if (short === 0) continue;
      samples.shortStems[row + need] = short;
      samples.claimCents[index] += short * this.#network.shortCentsOf(need);
    }
  }
}
