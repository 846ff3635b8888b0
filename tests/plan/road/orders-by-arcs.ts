import type { Highs } from "highs";
import { toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { deliveriesOf } from "#lib/plan/road/orders";
import type { Plan } from "#lib/plan/road/plan";
import { LinearProgramme } from "../../least-cost";

/** What is left for standing orders, and what they cost at least, by a slow second method. */

const sumOf = (rows: readonly { readonly stems: number }[]) => rows.reduce((sum, { stems }) => sum + stems, 0);

/** Surplus of every season that the match sees, counted lot by lot. */
export function stemsLeftIn({ work: { match, orders } }: Plan): number {
  const given = [...match.servings, ...(orders?.match.servings ?? [])];
  return match.supplies.reduce(
    (sum, { days, lots }) =>
      sum +
      lots.reduce((left, ofDay, index) => {
        const stands = new Set(ofDay.map(({ stand }) => stand));
        const taken = given.filter(({ stand, cutDay }) => cutDay === days[index] && stands.has(stand));
        return left + Math.max(0, sumOf(ofDay) - sumOf(taken));
      }, 0),
    0,
  );
}

/** The least cost of the deliveries by a programme with an arc from every lot that is left, straight from the rules. */
export function leastCostOfOrders(solver: Highs, given: Snapshot, made: Plan): number {
  const programme = new LinearProgramme();
  const used = made.work.match.servings;
  const lots = made.match.supplies.flatMap(({ variety, crop, days, lots }) =>
    lots.flatMap((ofDay, index) =>
      ofDay.map(({ stand, stems }) => ({
        ...{ variety, crop, cutDay: days[index] },
        row: programme.row(0, stems - sumOf(used.filter((one) => one.stand === stand && one.cutDay === days[index]))),
      })),
    ),
  );
  const { leadDays } = given.farm;
  for (const { order: of, eventOn } of deliveriesOf(made.snapshot.standingOrders, [2027])) {
    const want = programme.row(of.askedCount, of.askedCount);
    programme.put(want, programme.column(Math.max(34, of.stemCents)), 1);
    for (const { variety, crop, cutDay, row } of lots) {
      const held = toDayNumber(eventOn) - cutDay;
      const hold = crop.holdDays.count;
      const rank = of.colours.length === 0 ? 0 : of.colours.indexOf(variety.colour);
      if (held < leadDays || held > Math.max(leadDays, hold) || rank < 0 || !crop.roles.includes("focal")) continue;
      const age = hold > leadDays ? Math.round((8 * (held - leadDays)) / (hold - leadDays)) : 0;
      const column = programme.column(rank + (crop.usualRole === "focal" ? 0 : 2) + age);
      programme.put(row, column, 1);
      programme.put(want, column, 1);
    }
  }
  return programme.leastCost(solver);
}
