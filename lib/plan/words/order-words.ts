import { inShort, WEEKDAYS } from "#lib/domain/day";
import { anyOf } from "#lib/domain/listed";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { countOf, inMoney, inRoundMoney, inWholes } from "./numbers";

/** The names of the crops and recipes that an order may name. */
type Names = { readonly crop: (id: number) => string; readonly recipe: (id: number) => string };

/** "40 focal stems (Dahlia) in blush or cream, Fridays from 2 Jul to 24 Sep, at $1.20 a stem" */
export function orderInWords(order: StandingOrder, names: Names): string {
  const { role, cropId, recipeId, colours, askedCount, weekday, firstOn, lastOn, stemCents } = order;
  const what =
    recipeId === null
      ? countOf(askedCount, `${role} stem`) + (cropId === null ? "" : ` (${names.crop(cropId)})`)
      : `${inWholes(askedCount)} × ${names.recipe(recipeId)}`;
  const in_ = colours.length > 0 ? ` in ${anyOf(colours)}` : "";
  return `${what}${in_}, each ${WEEKDAYS[weekday - 1]} from ${inShort(firstOn)} to ${inShort(lastOn)}, at ${inMoney(stemCents)} a stem`;
}

/** Deliveries added up: stems asked and got, and what these bring. */
type Totals = { readonly needStems: number; readonly gotStems: number; readonly earnedCents: number };

/** What the deliveries still to come are worth, and those that have gone by, in a sentence each. */
export function ordersLead({ needStems, gotStems, earnedCents }: Totals, gone: Totals): string {
  const behind =
    gone.needStems > 0 ? ` Gone by: ${inWholes(gone.gotStems)} of ${countOf(gone.needStems, "stem")}.` : "";
  if (needStems === 0) return `No delivery is still to come.${behind}`;
  const asked = gone.needStems > 0 ? "still to go out" : "asked for";
  const covered =
    gotStems === needStems
      ? `All ${countOf(needStems, "stem")} ${asked} are there`
      : `${inWholes(gotStems)} of ${countOf(needStems, "stem")} ${asked} are there`;
  return `${covered}: they bring ${inRoundMoney(earnedCents)}. Bookings come first, and nothing is bought in for an order.${behind}`;
}

/** What a choice of beds does to standing orders, beside every bed dug. */
export function ordersBesideInWords({ dug, kept }: { readonly dug: Totals; readonly kept: Totals }): string {
  const more = kept.gotStems - dug.gotStems;
  const money = kept.earnedCents - dug.earnedCents;
  const got = `Standing orders, no part of this sum, get ${inWholes(kept.gotStems)} of ${countOf(kept.needStems, "stem")} with these beds`;
  if (more === 0 && money === 0) return `${got}, as many as with every bed dug.`;
  const stems = more === 0 ? "as many" : `${inWholes(Math.abs(more))} ${more > 0 ? "more" : "fewer"}`;
  return `${got}, ${stems} and worth ${inRoundMoney(Math.abs(money))} ${money < 0 ? "less" : "more"} than with every bed dug.`;
}
