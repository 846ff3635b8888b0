import type { FarmRecords } from "#lib/domain/farm-records";
import { counted } from "./known";

/** "imported 3 beds, 12 plantings, 4 bookings", "changed 2 plantings", or both. */
export function importTitle({ farm, ...lists }: FarmRecords): { title: string; result: number } {
  const idsIn = (list: readonly { readonly id?: number }[] = []) => list.filter(({ id }) => id !== undefined).length;
  const counts = [
    { list: lists.crops, one: "crop", many: "crops" },
    { list: lists.curves, one: "bloom curve", many: "bloom curves" },
    { list: lists.recipes, one: "recipe", many: "recipes" },
    { list: lists.varieties, one: "variety", many: "varieties" },
    { list: lists.beds, one: "bed", many: "beds" },
    { list: lists.plantings, one: "planting", many: "plantings" },
    { list: lists.bookings, one: "booking", many: "bookings" },
    { list: lists.coolerStock, one: "line in the cooler", many: "lines in the cooler" },
    { list: lists.standingOrders, one: "standing order", many: "standing orders" },
    { list: lists.cuts, one: "cut", many: "cuts" },
    { list: lists.reviews, one: "review", many: "reviews" },
    { list: lists.coolerMoves, one: "move out of the cooler", many: "moves out of the cooler" },
    { list: lists.purchases, one: "purchase", many: "purchases" },
    { list: lists.budLooks, one: "look at buds", many: "looks at buds" },
    { list: lists.losses, one: "count of what is left", many: "counts of what is left" },
    { list: lists.firstCuts, one: "first cut", many: "first cuts" },
  ].map(({ list = [], one, many }) => ({ added: list.length - idsIn(list), changed: idsIn(list), one, many }));
  const days = lists.weather?.length ?? 0;
  const told = (which: "added" | "changed") =>
    counts.flatMap((count) => (count[which] > 0 ? [counted(count[which], count.one, count.many)] : []));
  const added = [
    ...(farm ? ["the settings"] : []),
    ...told("added"),
    ...(days > 0 ? [counted(days, "day of weather", "days of weather")] : []),
  ];
  const changed = told("changed");
  const parts = [
    ...(added.length > 0 || changed.length === 0 ? [`imported ${added.join(", ") || "nothing"}`] : []),
    ...(changed.length > 0 ? [`changed ${changed.join(", ")}`] : []),
  ];
  return {
    title: parts.join("; "),
    result: counts.reduce((sum, count) => sum + count.added + count.changed, (farm ? 1 : 0) + days),
  };
}
