import type { Snapshot } from "#lib/domain/snapshot";
import type { FlowSolution } from "#lib/maths/flow-network";
import { buyInFinder } from "#lib/plan/road/buy-in";
import type { Grown } from "#lib/plan/road/grown";
import { MatchOfStems } from "#lib/plan/road/match-of-stems";
import type { MatchRuns } from "#lib/plan/road/match-runs";
import { type Need, needs } from "#lib/plan/road/needs";
import { meetingSeasons, seasonOfBooking } from "#lib/plan/road/seasons";
import { type FirstCutChance, firstCutChances } from "./first-cut-chance";
import { type SampledSeason, seasonSampler } from "./sample-season";
import { DEFAULT_SPREADS } from "./sample-spreads";
import type { SampleFrame, SeasonSamples } from "./simulation-samples";
import { SimulationSupply } from "./simulation-supply";

/**
 * Samples seasons and matches each at least cost, a step before each season. Season i of a seed is the same whichever call it falls in, so the
 * work can be shared out over threads and merged [R1].
 * @param firstSeason  0 or more
 * @param seasonCount  how many seasons from there
 */
export function* sampleSteps(
  simulation: Simulation,
  firstSeason: number,
  seasonCount: number,
): Generator<void, SeasonSamples, unknown> {
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
export type MatchedSample = { readonly network: MatchRuns; readonly solution: FlowSolution };

/**
 * Everything about a farm's season that chance does not touch, made once; then season after season. Seasons that could meet it, first cuts
 * as far off as they may be, are sampled and matched with it, as a plan matches them [M8].
 */
export class Simulation {
  readonly frame: SampleFrame;
  /** A season as chance turns it out, with those that meet it, in order of year. */
  readonly season: (index: number) => readonly SampledSeason[];
  readonly #needs: readonly Need[];
  /** The places among the needs of those that are the season's own. */
  readonly #own: readonly number[];
  readonly #supply: SimulationSupply;
  readonly #network: MatchOfStems;
  /** Stems of each supply node in the season at hand. */
  readonly #stems: Int32Array;

  constructor(snapshot: Snapshot, seasonYear: number, seed: number, spreads = DEFAULT_SPREADS) {
    const { farm } = snapshot;
    const chanceIn = chanceInSeason(snapshot, spreads.sharedShare);
    const years = meetingSeasons(snapshot, seasonYear, (row) => chanceIn(row.planting.seasonYear)(row).mostDays);
    const chances = years.map(chanceIn);
    const samplers = years.map((year, place) =>
      seasonSampler(snapshot, year, seed, spreads, chances[place], year - seasonYear),
    );
    this.season = (index) => samplers.map((sampled) => sampled(index));
    this.#needs = needs(snapshot, years);
    this.#own = [...this.#needs.keys()].filter((index) => seasonOfBooking(this.#needs[index].booking) === seasonYear);
    this.#supply = new SimulationSupply(snapshot, years, chances);
    const { possible, nodeCount } = this.#supply;
    this.#network = new MatchOfStems(farm, possible, this.#needs, buyInFinder(snapshot));
    this.#stems = new Int32Array(nodeCount);
    this.frame = {
      seasonYear,
      needs: this.#own.map((index) => {
        const { booking, role, stems } = this.#needs[index];
        return { bookingId: booking.id, role, stems };
      }),
    };
  }

  /** The cheapest match of a season. */
  matched(season: number): MatchedSample {
    this.#supply.stemsOf(this.season(season), this.#stems);
    const network = this.#network.ofStems(this.#stems);
    return { network, solution: network.solve() };
  }

  /** Matches a season and notes it in row `index` of the samples. */
  walk(season: number, index: number, samples: SeasonSamples): void {
    const { network, solution } = this.matched(season);
    for (let need = 0; need < this.#needs.length; need++) {
      samples.claimCents[index] += network.shortCentsOf(need, solution);
    }
    const row = index * this.#own.length;
    this.#own.forEach((need, place) => {
      samples.shortStems[row + place] = network.unmetOf(need, solution);
    });
  }
}

/** How chance moves first cuts in each season, made when it is first asked for. */
function chanceInSeason(
  snapshot: Snapshot,
  sharedShare: number,
): (seasonYear: number) => (row: Grown) => FirstCutChance {
  const made = new Map<number, (row: Grown) => FirstCutChance>();
  return (seasonYear) => {
    const chanceOf = made.get(seasonYear) ?? firstCutChances(snapshot, seasonYear, sharedShare);
    made.set(seasonYear, chanceOf);
    return chanceOf;
  };
}
