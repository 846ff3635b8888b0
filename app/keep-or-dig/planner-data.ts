import { type Day, toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Colour, TREATMENT_WORDS, type Units } from "#lib/domain/words";
import { DUG, KEPT, type WinterBed, winterBeds } from "#lib/plan/winter/beds";
import { clumpCount, clumpsLost, type WinterCost } from "#lib/plan/winter/costs";
import { bedsKeptNow } from "#lib/plan/winter/kept-beds";
import { mostBedsKept } from "#lib/plan/winter/limits";
import { FLAG_WORDS } from "#lib/plan/words/flag-words";
import type { BedBlooms } from "./bed-blooms";
import type { BoardInWords } from "./tried-plan";

/** A candidate bed as the table shows it. */
export type BedRow = {
  readonly id: number;
  readonly name: string;
  readonly varieties: readonly { readonly name: string; readonly colour: Colour; readonly clumpCount: number }[];
  readonly clumpCount: number;
  /** How it stands in the farm, in words. */
  readonly now: string;
  /** Why it may not be kept; empty when it may. */
  readonly forbidden: readonly string[];
  readonly keep: WinterCost;
  readonly dig: WinterCost;
  readonly survivalShare: number;
  /** The first cut of the bed when it is kept; null where nothing is cut. */
  readonly keptFirstCut: Day | null;
  /** True when a planting has a number of its own, false when the farm's is taken. */
  readonly hasOwnSurvival: boolean;
};

/** What is at hand for the winter; null is as much as wanted. */
export type AtHand = {
  readonly leafCubicMetres: number | null;
  readonly tarpSquareMetres: number | null;
  readonly hours: number | null;
  readonly keptBedCount: number | null;
};

/** All that the screen starts from. */
export type PlannerData = {
  readonly seasonYear: number;
  /** Grows with every write, so that what is shown is asked anew after one. */
  readonly revision: number;
  readonly units: Units;
  readonly rows: readonly BedRow[];
  readonly atHand: AtHand;
  /** The beds that are kept as the farm stands and may be. */
  readonly keptNowIds: readonly number[];
  readonly board: BoardInWords;
  readonly blooms: BedBlooms;
  /** The Monday of the week at hand. */
  readonly thisMonday: Day;
  /** Replanting has begun: nothing of this winter is adopted any more. */
  readonly isOver: boolean;
  /** What is sampled where the beds are asked how sure they are, in words. */
  readonly sampled: string;
};

export function bedRows(snapshot: Snapshot, seasonYear: number): BedRow[] {
  const treatmentOf = new Map(snapshot.plantings.map(({ id, treatment }) => [id, treatment]));
  return winterBeds(snapshot, seasonYear).map((bed) => {
    const plantings = bed.plantings.map(({ kept }) => kept.planting);
    const clumps = clumpCount(plantings);
    return {
      id: bed.bed.id,
      name: bed.bed.name,
      varieties: bed.plantings.map(({ kept: { variety, planting } }) => ({
        name: variety.name,
        colour: variety.colour,
        clumpCount: planting.plantCount,
      })),
      clumpCount: clumps,
      now: nowInWords(bed, treatmentOf),
      forbidden: bed.forbidden.map((flag) => FLAG_WORDS[flag]),
      keep: bed.keep,
      dig: bed.dig,
      survivalShare:
        clumps === 0 ? snapshot.farm.winter.winterSurvivalShare : 1 - clumpsLost(plantings, snapshot.farm) / clumps,
      keptFirstCut: firstOf(bed.plantings.map(({ kept }) => kept.firstCut)),
      hasOwnSurvival: plantings.some(({ winterSurvivalShare }) => winterSurvivalShare !== null),
    };
  });
}

function firstOf(dayNumbers: readonly (number | null)[]): Day | null {
  const known = dayNumbers.filter((day) => day !== null);
  return known.length ? toDay(known.reduce((a, b) => Math.min(a, b))) : null;
}

function nowInWords({ plantings }: WinterBed, treatmentOf: ReadonlyMap<number, keyof typeof TREATMENT_WORDS>): string {
  const now = [...new Set(plantings.flatMap(({ kept }) => treatmentOf.get(kept.planting.id) ?? []))];
  if (now.length > 1) return now.includes(KEPT) ? "part kept" : "mixed";
  if (now[0] === KEPT) return "kept";
  return now[0] === DUG ? "dug" : TREATMENT_WORDS[now[0]];
}

/** The beds ticked at first: those that the farm keeps and that no flag forbids. */
export const keptNowIds = (snapshot: Snapshot, seasonYear: number): number[] =>
  bedsKeptNow(snapshot, seasonYear)
    .filter(({ forbidden }) => forbidden.length === 0)
    .map(({ bed }) => bed.id);

/** What the farm has for the winter; the share of beds is rounded down to whole beds, of all candidates. */
export function atHandOf({ farm: { winter } }: Snapshot, candidateCount: number): AtHand {
  const { leafCubicMetresAtHand, tarpSquareMetresAtHand, hoursAtHand, keepShareAtMost } = winter;
  return {
    leafCubicMetres: leafCubicMetresAtHand,
    tarpSquareMetres: tarpSquareMetresAtHand,
    hours: hoursAtHand,
    keptBedCount: keepShareAtMost === null ? null : mostBedsKept(keepShareAtMost, candidateCount),
  };
}
