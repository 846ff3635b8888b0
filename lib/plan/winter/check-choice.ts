import { checkSearch } from "#lib/maths/switch-flow/check-search";
import type { SearchEnd } from "#lib/maths/switch-flow/search";
import type { SwitchCosts } from "#lib/maths/switch-flow/switch-costs";
import { winterBeds } from "./beds";
import type { ProvenChoice } from "./choose-beds";
import { fewestCosts, type ProvenFewest } from "./fewest-beds";
import { limitsOn, winterLimits } from "./limits";
import { keptIds, selectionOf, type WinterSeason } from "./season";

/**
 * Proves a choice by its certificate, summed again in whole numbers [K4]: no choice within flags and limits costs less than the bound, the beds kept are
 * those of the search and cost what it says, or no choice keeps to the limits. Limits are made anew from the farm. An empty list is a proof.
 */
export function checkChoice(season: WinterSeason, { choice, search }: ProvenChoice): string[] {
  const faults = searchFaults(season, season.costs, search);
  const { best, bound, status } = search;
  if (choice.status === "infeasible" || status === "infeasible")
    return choice.status === status ? faults : [...faults, `the choice is ${choice.status}, its search ${status}`];
  if (choice.boundCents !== bound) faults.push(`the choice is bounded at ${choice.boundCents}, its search at ${bound}`);
  if (choice.status === "stopped early") return best ? [...faults, "the search found a choice"] : faults;
  if (choice.status !== status) faults.push(`the choice is ${choice.status}, its search ${status}`);
  if (choice.totalCents !== best?.cost) faults.push(`the choice costs ${choice.totalCents}, its search ${best?.cost}`);
  return [...faults, ...keptFaults(season, choice.keptBedIds, search)];
}

/**
 * Proves the fewest beds in the same way [K5]: no choice within flags and limits leaves fewer focal stems short than the bound, and where they are
 * said to be optimal, none of fewer beds leaves as few.
 */
export function checkFewest(season: WinterSeason, { fewest, search }: ProvenFewest): string[] {
  const costs = fewestCosts(season);
  const faults = searchFaults(season, costs, search);
  const { status, keptBedIds, focalShortStems, boundShortStems } = fewest;
  if (status !== search.status) faults.push(`the beds are ${status}, their search ${search.status}`);
  if (status === "infeasible") return faults;
  const stemWeight = season.openBeds.length + 1;
  const cost = focalShortStems * stemWeight + keptBedIds.length;
  if (search.best ? cost !== search.best.cost : keptBedIds.length > 0)
    faults.push(`${focalShortStems} stems short and ${keptBedIds.length} beds are not what the search found`);
  if (boundShortStems * stemWeight > search.bound)
    faults.push(`bounded at ${boundShortStems} stems, the search at ${search.bound / stemWeight}`);
  return [...faults, ...keptFaults(season, keptBedIds, search)];
}

/** What a search does not prove of the season's beds; the limits are made anew from the farm. */
function searchFaults(
  { futures, openBeds }: WinterSeason,
  { problem, still }: SwitchCosts,
  search: SearchEnd,
): string[] {
  const { snapshot, seasonYear, beds } = futures;
  const limits = limitsOn(winterLimits(snapshot.farm, winterBeds(snapshot, seasonYear)), openBeds);
  const faults = checkSearch(problem, limits, still, search);
  return openBeds.some((bed) => beds[bed].forbidden.length > 0) ? [...faults, "a bed with a flag may be kept"] : faults;
}

function keptFaults(season: WinterSeason, keptBedIds: readonly number[], { best }: SearchEnd): string[] {
  const kept = keptIds(season, selectionOf(season, keptBedIds)).join();
  const isOfSearch = kept === (best ? keptIds(season, best.selection).join() : "");
  return isOfSearch ? [] : ["the beds kept are not those of the search"];
}
