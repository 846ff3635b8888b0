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

/** What a season's orders come to, in two sentences. */
export function ordersLead({
  needStems,
  gotStems,
  earnedCents,
}: {
  needStems: number;
  gotStems: number;
  earnedCents: number;
}): string {
  const covered =
    gotStems === needStems
      ? `All ${countOf(needStems, "stem")} asked for are there`
      : `${inWholes(gotStems)} of ${countOf(needStems, "stem")} asked for are there`;
  return `${covered}: they bring ${inRoundMoney(earnedCents)}. Bookings come first, and nothing is bought in for an order.`;
}
