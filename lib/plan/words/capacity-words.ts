import { toDay, withWeekday } from "#lib/domain/day";
import type { Strain } from "#lib/plan/road/capacity";
import { countOf, hoursInWords, inTenths, inWholes } from "./numbers";

/** "Fri 11 Jun needs 9 hours of cutting; you have 6." Hours are rounded up to a tenth, so that what is over its limit reads so. */
export function strainInWords({ kind, day, takes, has }: Strain): string {
  const on = withWeekday(toDay(day));
  if (kind === "cooler")
    return `The night of ${on} needs ${countOf(takes, "bucket place")} in the cooler; you have ${inWholes(has)}.`;
  const hours = hoursInWords(Math.ceil(takes * 10 - 1e-6) / 10);
  if (kind === "cutting") return `${on} needs ${hours} of cutting; you have ${inTenths(has)}.`;
  return `The week of ${on} needs ${hours} at the bench; you have ${inTenths(has)}.`;
}

/** What could be done about it, in the order in which it is easiest. */
export const STRAIN_MENDS: Readonly<Record<Strain["kind"], string>> = {
  cutting: "Cut part of it the picking day before, take a second pair of hands, or cut less for the market.",
  bench: "Ask for help at the bench, make what holds a day earlier, or take fewer pieces.",
  cooler: "Deliver or sell sooner, fill buckets fuller where heads are small, or borrow a cool room.",
};
