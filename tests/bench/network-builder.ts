import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "#lib/plan/road/buy-in";
import { forecast } from "#lib/plan/road/forecast";
import { type MatchNetwork, matchNetwork } from "#lib/plan/road/match-network";
import { needs } from "#lib/plan/road/needs";
import { supplyOf } from "#lib/plan/road/supply";

/** The season of every invented farm that is measured. */
export const SEASON = 2027;

/** Builds a farm's match network anew at each call, from a forecast and needs that were made before. */
export function networkBuilder(farm: Snapshot): () => MatchNetwork {
  const price = buyInFinder(farm);
  const supplies = supplyOf(farm, forecast(farm, SEASON).plantings, SEASON);
  const asked = needs(farm, SEASON);
  return () => matchNetwork(farm.farm, supplies, asked, price);
}
