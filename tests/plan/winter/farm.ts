import { seededFarm } from "#demo/seeded-farm";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { oneOf, seededRandom, wholeBetween } from "#lib/maths/random";
import type { WinterFutures } from "#lib/plan/winter/futures";

/** The season of every invented farm here. */
export const SEASON = 2027;

/**
 * An invented farm with about `bedCount / 2` beds of dahlias, a few of them flagged, winter prices and limits drawn anew: some leave
 * nothing to choose, some can keep to no limit at all.
 */
export function winterFarm(seed: number, bedCount: number, bookingCount: number, withLimits = true): Snapshot {
  const farm = seededFarm(seed, { bedCount, bookingCount }, SEASON);
  const random = seededRandom(seed + 1000);
  const maybe = (least: number, most: number) =>
    withLimits && random() < 0.35 ? wholeBetween(random, least, most) : null;
  const winter: Farm["winter"] = {
    ...farm.farm.winter,
    tubersWantedShare: oneOf(random, [0, 0.05, 0.1, 0.3]),
    freeBedCentsPerSquareMetre: oneOf(random, [0, 100, 300]),
    leafCentsPerCubicMetre: oneOf(random, [0, 500, 2500]),
    winterSurvivalShare: oneOf(random, [0.5, 0.75, 0.9]),
    leafCubicMetresAtHand: maybe(0, bedCount),
    tarpSquareMetresAtHand: maybe(0, bedCount * 8),
    hoursAtHand: maybe(bedCount, bedCount * 6),
    keepShareAtMost: withLimits && random() < 0.3 ? random() : null,
  };
  const beds = farm.beds.map((bed) => ({
    ...bed,
    lengthMetres: wholeBetween(random, 5, 30),
    flags: random() < 0.1 ? [oneOf(random, ["wet soil", "vole damage"] as const)] : [],
  }));
  const plantings = farm.plantings.map((planting) => ({
    ...planting,
    winterSurvivalShare: random() < 0.3 ? random() : null,
    flags: random() < 0.05 ? ["virus or gall" as const] : [],
  }));
  return { ...farm, farm: { ...farm.farm, winter }, beds, plantings };
}

/** What a choice costs, the slow way: the whole network solved cold. No limits and no flags are looked at. */
export function costOf({ network, effects, beds }: WinterFutures, isKept: readonly boolean[]): number {
  const supply = network.flow.supply.slice();
  isKept.forEach((kept, bed) => {
    if (kept)
      effects[bed].nodes.forEach((node, at) => {
        supply[node] += effects[bed].units[at];
      });
  });
  const winterCents = beds.reduce((sum, { keep, dig }, bed) => sum + (isKept[bed] ? keep : dig).cents, 0);
  return minCostFlow({ ...network.flow, supply }).totalCost + winterCents;
}

/** Every way to keep some of so many beds. */
function* everyChoice(bedCount: number): Generator<boolean[]> {
  for (let bits = 0; bits < 2 ** bedCount; bits++)
    yield Array.from({ length: bedCount }, (_, bed) => Math.floor(bits / 2 ** bed) % 2 === 1);
}

/** Whether a choice keeps to the farm's limits, straight from its settings. */
export function withinLimits({ snapshot, beds }: WinterFutures, isKept: readonly boolean[]): boolean {
  const { leafCubicMetresAtHand, tarpSquareMetresAtHand, hoursAtHand, keepShareAtMost } = snapshot.farm.winter;
  const chosen = beds.map(({ keep, dig }, bed) => (isKept[bed] ? keep : dig));
  const sum = (of: (cost: (typeof chosen)[number]) => number) => chosen.reduce((total, cost) => total + of(cost), 0);
  const keeps = (takes: number, atHand: number | null) => atHand === null || takes <= atHand + 1e-9;
  return (
    keeps(
      sum((cost) => cost.leafCubicMetres),
      leafCubicMetresAtHand,
    ) &&
    keeps(
      sum((cost) => cost.tarpSquareMetres),
      tarpSquareMetresAtHand,
    ) &&
    keeps(
      sum((cost) => cost.hours),
      hoursAtHand,
    ) &&
    keeps(isKept.filter(Boolean).length, keepShareAtMost === null ? null : keepShareAtMost * beds.length)
  );
}

/** Every choice that keeps to flags and limits. */
export const allowedChoices = (futures: WinterFutures): boolean[][] =>
  [...everyChoice(futures.beds.length)].filter(
    (isKept) =>
      !isKept.some((kept, bed) => kept && futures.beds[bed].forbidden.length > 0) && withinLimits(futures, isKept),
  );
