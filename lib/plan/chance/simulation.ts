import { type Day, mondayOf, toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES } from "#lib/domain/words";
import type { FlowSolution } from "#lib/maths/flow-network";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { MatchOfStems, type ThinnedNetwork } from "#lib/plan/road/match-of-stems";
import { type Need, needs } from "#lib/plan/road/needs";
import { type SampledSeason, seasonSampler } from "./sample-season";
import { DEFAULT_SPREADS, type Spreads } from "./sample-spreads";
import {
  focalColours,
  mondaysOf,
  openReach,
  type Reach,
  type SampleFrame,
  saturdaysOf,
  weekReach,
} from "./simulation-frame";
import type { SeasonSamples } from "./simulation-samples";
import { SimulationSupply } from "./simulation-supply";

/** `openDays` are the days for which free focal stems are noted; left out, every Saturday of the season. */
export type SimulationOptions = { readonly spreads?: Spreads; readonly openDays?: readonly Day[] };

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
  options: SimulationOptions = {},
): SeasonSamples {
  const sampling = sampleSteps(snapshot, seasonYear, seed, firstSeason, seasonCount, options);
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
  options: SimulationOptions = {},
): Generator<void, SeasonSamples, void> {
  const simulation = new Simulation(snapshot, seasonYear, seed, options);
  const { frame } = simulation;
  const samples = {
    frame,
    firstSeason,
    seasonCount,
    shortStems: new Int32Array(seasonCount * frame.needs.length),
    reachableStems: new Int32Array(seasonCount * frame.mondays.length * ROLES.length),
    openStems: new Int32Array(seasonCount * frame.openDays.length * frame.openColours.length),
    buyInCents: new Float64Array(seasonCount),
    claimCents: new Float64Array(seasonCount),
  };
  for (let index = 0; index < seasonCount; index++) {
    yield;
    simulation.walk(firstSeason + index, index, samples);
  }
  return samples;
}

/** One season matched: its network with the cheapest flow, which `checkFlow` can prove. Good until the next season is matched. */
export type MatchedSeason = { readonly network: ThinnedNetwork; readonly solution: FlowSolution };

/** Everything about a farm's season that chance does not touch, made once; then season after season. */
export class Simulation {
  readonly frame: SampleFrame;
  readonly season: (index: number) => SampledSeason;
  readonly #needs: readonly Need[];
  readonly #supply: SimulationSupply;
  readonly #network: MatchOfStems;
  readonly #weekReach: Reach;
  readonly #openReach: Reach;
  readonly #bunchStems: readonly number[];
  readonly #stemCents: readonly number[];
  /** Stems of each supply node in the season at hand; `matched` takes from it what the match gives away. */
  readonly #stems: Int32Array;

  constructor(snapshot: Snapshot, seasonYear: number, seed: number, { spreads, openDays }: SimulationOptions = {}) {
    const { farm } = snapshot;
    const { cropOf, centsOf } = buyInFinder(snapshot.crops);
    this.#needs = needs(snapshot, seasonYear);
    this.season = seasonSampler(snapshot, seasonYear, seed, spreads ?? DEFAULT_SPREADS);
    this.#supply = new SimulationSupply(snapshot, seasonYear);
    const { possible, nodeCount } = this.#supply;
    this.#network = new MatchOfStems(farm, possible, this.#needs, centsOf);
    this.#stems = new Int32Array(nodeCount);
    const mondays = mondaysOf(possible, this.#needs);
    this.frame = {
      seasonYear,
      needs: this.#needs.map(({ booking, role, stems }) => ({
        bookingId: booking.id,
        role,
        stems,
        monday: mondayOf(booking.eventOn),
      })),
      mondays: mondays.map(toDay),
      openDays: openDays ?? saturdaysOf(mondays),
      openColours: focalColours(possible),
    };
    this.#weekReach = weekReach(farm, possible, this.#needs, mondays);
    this.#openReach = openReach(farm, possible, this.frame.openDays, this.frame.openColours);
    this.#bunchStems = this.#needs.map((need) => cropOf(need)?.bunchStems.count ?? 1);
    this.#stemCents = this.#needs.map((need) => cropOf(need)?.buyInCents.count ?? 0);
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
    add(this.#weekReach, this.#stems, samples.reachableStems, index * this.frame.mondays.length * ROLES.length);
    network.takeGiven(this.#stems, solution);
    const { openDays, openColours } = this.frame;
    add(this.#openReach, this.#stems, samples.openStems, index * openDays.length * openColours.length);
    const row = index * this.#needs.length;
    for (let need = 0; need < this.#needs.length; need++) {
      const short = network.unmetOf(need, solution);
      if (short === 0) continue;
      const bought = Math.ceil(short / this.#bunchStems[need]) * this.#bunchStems[need];
      samples.shortStems[row + need] = short;
      samples.buyInCents[index] += Math.round(bought * this.#stemCents[need]);
      samples.claimCents[index] += short * this.#network.shortCentsOf(need);
    }
  }
}

/** Adds the stems of each node to the columns it counts towards, from `first` on. */
function add({ node, column }: Reach, stems: Int32Array, into: Int32Array, first: number): void {
  for (let pair = 0; pair < node.length; pair++) into[first + column[pair]] += stems[node[pair]];
}
