import { yearOf } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { WinterPart } from "#lib/domain/records/learned-winters";
import type { Loss } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { WINTER_LIKENESS } from "#lib/plan/road/plants-seen";

/** The clumps of a winter, named by the year of its spring: of so many that were counted so many came through. */
type CountedWinter = { readonly spring: number; readonly clumps: number; readonly cameThrough: number };

/** What a farm's winter figure would learn from the winters that were counted. Both are shares: of the ground those alive in spring, of the store those lost. */
export type WinterProposal = {
  readonly part: WinterPart;
  readonly was: number;
  readonly is: number;
  readonly winters: readonly CountedWinter[];
};

const CAUSES: Readonly<Record<WinterPart, Loss["cause"]>> = {
  ground: "winter in the ground",
  store: "winter in store",
};

/** A change by less than this is not worth a question. Our choice. */
const LEAST_CHANGE = 0.01;

/** What counts of clumps propose of survival in the ground and of loss in store, to the whole per cent [PL3]. */
export function winterProposals({ farm, losses }: Pick<Snapshot, "farm" | "losses">): WinterProposal[] {
  return (["ground", "store"] as const).flatMap((part) => {
    const winters = countedWinters(losses, CAUSES[part]);
    const was = figureOf(farm, part);
    const is = Math.round(learnedShare(beforeLessons(farm, part), winters, part) * 100) / 100;
    return winters.length > 0 && Math.abs(is - was) >= LEAST_CHANGE - 1e-9 ? [{ part, was, is, winters }] : [];
  });
}

/** The farm with a proposal taken; what its figure was before anything was learned stays known. */
export function withWinterLearned(farm: Farm, { part, is }: Pick<WinterProposal, "part" | "is">): Farm {
  const figure = part === "ground" ? { winterSurvivalShare: is } : { storageLossShare: is };
  const lesson = { part, was: beforeLessons(farm, part), is };
  return {
    ...farm,
    winter: { ...farm.winter, ...figure },
    learnedWinters: [...farm.learnedWinters.filter((one) => one.part !== part), lesson],
  };
}

const figureOf = ({ winter }: Farm, part: WinterPart): number =>
  part === "ground" ? winter.winterSurvivalShare : winter.storageLossShare;

/** The figure as it was before recorded winters moved it; one that was typed since stands for itself. */
function beforeLessons(farm: Farm, part: WinterPart): number {
  const lesson = farm.learnedWinters.find((one) => one.part === part);
  const figure = figureOf(farm, part);
  return lesson && lesson.is === figure ? lesson.was : figure;
}

/** The counts of a cause by winter, ascending; of a variety in a bed the last count of a winter. */
function countedWinters(losses: readonly Loss[], cause: Loss["cause"]): CountedWinter[] {
  const last = new Map<string, Loss>();
  for (const loss of [...losses].sort((a, b) => (a.seenOn < b.seenOn ? -1 : a.seenOn > b.seenOn ? 1 : a.id - b.id)))
    if (loss.cause === cause) last.set(`${yearOf(loss.seenOn)} ${loss.bedId} ${loss.varietyId}`, loss);
  const winters = new Map<number, CountedWinter>();
  for (const { seenOn, plantsBefore, plantsLeft } of last.values()) {
    const spring = yearOf(seenOn);
    const known = winters.get(spring) ?? { spring, clumps: 0, cameThrough: 0 };
    winters.set(spring, { spring, clumps: known.clumps + plantsBefore, cameThrough: known.cameThrough + plantsLeft });
  }
  return [...winters.values()].sort((a, b) => a.spring - b.spring);
}

/**
 * How much a winter is known by so many clumps, from 0 to 1: all of it by very many, half by four, since clumps of one winter fare alike.
 * Source: the weight of n counts in a beta-binomial distribution with intraclass correlation ρ, n ÷ (n + 1/ρ − 1): conjugate priors,
 * https://en.wikipedia.org/wiki/Beta-binomial_distribution; ρ is that of sampled winters.
 */
export const winterSeen = (clumps: number): number => clumps / (clumps + 1 / WINTER_LIKENESS - 1);

/** The share that winters teach: what it was weighs as one winter, each counted one as much as it is known [PL3]. */
function learnedShare(was: number, winters: readonly CountedWinter[], part: WinterPart): number {
  let [sum, weights] = [was, 1];
  for (const { clumps, cameThrough } of winters) {
    const survived = cameThrough / clumps;
    sum += winterSeen(clumps) * (part === "ground" ? survived : 1 - survived);
    weights += winterSeen(clumps);
  }
  return sum / weights;
}
