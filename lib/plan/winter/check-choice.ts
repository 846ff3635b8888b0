import { checkSearch } from "#lib/maths/switch-flow/check-search";
import { winterBeds } from "./beds";
import type { ProvenChoice } from "./choose-beds";
import { limitsOn, winterLimits } from "./limits";
import { keptIds, selectionOf, type WinterSeason } from "./season";

/**
 * Proves a choice by its certificate, summed again in whole numbers [K4]: no choice within flags and limits costs less than the bound, the beds kept are
 * those of the search and cost what it says, or no choice keeps to the limits. Limits are made anew from the farm. An empty list is a proof.
 */
export function checkChoice(season: WinterSeason, { choice, search }: ProvenChoice): string[] {
  const { futures, openBeds, costs } = season;
  const { snapshot, seasonYear } = futures;
  const limits = limitsOn(winterLimits(snapshot.farm, winterBeds(snapshot, seasonYear)), openBeds);
  const faults = checkSearch(costs.problem, limits, costs.still, search);
  const { best, bound, status } = search;
  if (openBeds.some((bed) => futures.beds[bed].forbidden.length > 0)) faults.push("a bed with a flag may be kept");
  if (choice.status === "infeasible" || status === "infeasible")
    return choice.status === status ? faults : [...faults, `the choice is ${choice.status}, its search ${status}`];
  if (choice.boundCents !== bound) faults.push(`the choice is bounded at ${choice.boundCents}, its search at ${bound}`);
  if (choice.status === "stopped early") return best ? [...faults, "the search found a choice"] : faults;
  if (choice.status !== status) faults.push(`the choice is ${choice.status}, its search ${status}`);
  if (choice.totalCents !== best?.cost) faults.push(`the choice costs ${choice.totalCents}, its search ${best?.cost}`);
  const kept = keptIds(season, selectionOf(season, choice.keptBedIds));
  if (!best || keptIds(season, best.selection).join() !== kept.join())
    faults.push("the beds kept are not those of the search");
  return faults;
}
