import type { Snapshot } from "#lib/domain/snapshot";
import type { Role } from "#lib/domain/words";
import { buyInFinder } from "#lib/plan/road/buy-in";
import type { Match } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import type { Stand, VarietySupply } from "#lib/plan/road/supply";

/** Stems of a role at an event, as the plan makes them of what was recorded [V1]. `costCents`: what those cut and bought cost to buy, not rounded. */
export type EventStems = { plannedStems: number; cutStems: number; boughtStems: number; costCents: number };

/**
 * What each booking asked for by role, what it had from the farm, and what it was short of: that was bought, as the plan says. What was cut for a
 * booking beyond its needs went to the event as well, in the usual role of its crop where the booking asks for that, else in the first that it asks for.
 */
export function eventStems(plan: Plan): Map<number, Map<Role, EventStems>> {
  const stems = new Gathered();
  const { centsOf } = buyInFinder(plan.snapshot);
  plan.match.needs.forEach((need, index) => {
    const short = plan.match.shortStems[index];
    stems.add(need.booking.id, need.role, { plannedStems: need.stems });
    stems.add(need.booking.id, need.role, { boughtStems: short, costCents: short * centsOf(need) });
  });
  const isBought = boughtIn(plan.snapshot, plan.seasonYear);
  const had = (bookingId: number, role: Role, { variety, crop }: VarietySupply, stand: Stand, count: number) =>
    stems.add(bookingId, role, {
      [isBought(stand, variety.id) ? "boughtStems" : "cutStems"]: count,
      costCents: count * crop.buyInCents.count,
    });
  for (const { needIndex, supplyIndex, stand, stems: count } of plan.match.servings) {
    const { booking, role } = plan.match.needs[needIndex];
    had(booking.id, role, plan.match.supplies[supplyIndex], stand, count);
  }
  for (const { supply, bookingId, stand, stems: count } of beyondNeeds(plan.match)) {
    const roles = stems.of.get(bookingId);
    const role = [supply.crop.usualRole, ...supply.crop.roles].find((one) => roles?.has(one));
    if (role !== undefined) had(bookingId, role, supply, stand, count);
  }
  return stems.of;
}

class Gathered {
  readonly of = new Map<number, Map<Role, EventStems>>();

  add(bookingId: number, role: Role, more: Partial<EventStems>): void {
    const roles = this.of.get(bookingId) ?? new Map<Role, EventStems>();
    this.of.set(bookingId, roles);
    const sum = roles.get(role) ?? { plannedStems: 0, cutStems: 0, boughtStems: 0, costCents: 0 };
    roles.set(role, {
      plannedStems: sum.plannedStems + (more.plannedStems ?? 0),
      cutStems: sum.cutStems + (more.cutStems ?? 0),
      boughtStems: sum.boughtStems + (more.boughtStems ?? 0),
      costCents: sum.costCents + (more.costCents ?? 0),
    });
  }
}

/** Stems that were cut for a booking and that none of its needs takes. */
function beyondNeeds({ supplies, servings }: Match) {
  const taken = new Map<VarietySupply, Map<Stand, number>>();
  for (const { supplyIndex, stand, stems } of servings) {
    const ofSupply = taken.get(supplies[supplyIndex]) ?? new Map<Stand, number>();
    taken.set(supplies[supplyIndex], ofSupply.set(stand, (ofSupply.get(stand) ?? 0) + stems));
  }
  return supplies.flatMap((supply) => {
    const { bookingId } = supply;
    if (bookingId === undefined) return [];
    const stands = new Map<Stand, number>();
    for (const { stand, stems } of supply.lots.flat()) stands.set(stand, (stands.get(stand) ?? 0) + stems);
    return [...stands].flatMap(([stand, count]) => {
      const stems = count - (taken.get(supply)?.get(stand) ?? 0);
      return stems > 0 ? [{ supply, bookingId, stand, stems }] : [];
    });
  });
}

/** Whether stems were bought in: those of a purchase, and those put into the cooler where the farm grew none of their variety in the season. */
export function boughtIn({ plantings }: Snapshot, seasonYear: number): (stand: Stand, varietyId: number) => boolean {
  const grown = new Set(
    plantings.filter((planting) => planting.seasonYear === seasonYear).map(({ varietyId }) => varietyId),
  );
  // A recorded cut of a planting that is gone stands in the cooler too, under no number.
  return (stand, varietyId) =>
    stand.kind === "cooler" && (stand.purchase !== undefined || (stand.stock.id > 0 && !grown.has(varietyId)));
}
