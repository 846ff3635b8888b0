import { mondayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Farm } from "#lib/domain/records/farm-settings";
import { isDelivery } from "./orders";
import type { Plan } from "./plan";

/** The settings that say what hands and room can do. */
type Limits = Pick<
  Farm,
  "cutStemsPerHour" | "cutHoursPerDay" | "benchStemsPerHour" | "benchHoursPerWeek" | "bucketPlaces"
>;

/** What a plan takes of hands and room, in stems and buckets by day number; bench stems by the day number of their Monday. */
export type PlanLoad = {
  readonly stemsToCut: ReadonlyMap<number, number>;
  readonly benchStems: ReadonlyMap<number, number>;
  readonly bucketsStanding: ReadonlyMap<number, number>;
};

/**
 * A day (of cutting, of a full cooler) or a week (of the bench, by its Monday) that takes more than there is: hours of cutting or of the bench, or places for
 * buckets. Days are day numbers.
 */
export type Strain = {
  readonly kind: "cutting" | "bench" | "cooler";
  readonly day: number;
  readonly takes: number;
  readonly has: number;
};

/**
 * Adds up what a plan takes: stems to cut in beds on each day [C1], stems made up for events and for standing orders in pieces in each week, on their design days [C2], and buckets
 * that stand in the cooler over each night [C3].
 */
export function planLoad({ work, snapshot: { farm } }: Pick<Plan, "work" | "snapshot">): PlanLoad {
  const stemsToCut = new Map<number, number>();
  const bucketsStanding = new Map<number, number>();
  for (const { booking, stand, cutDay, stemsToCut: stems, bucketCount, heldDays } of work.pickList) {
    if (stand.kind === "planting") add(stemsToCut, cutDay, stems);
    const nights = heldDays - eventDaysOf(farm, booking).deliverDays;
    for (let night = cutDay; night < cutDay + nights; night++) add(bucketsStanding, night, bucketCount);
  }
  const benchStems = new Map<number, number>();
  for (const { needs } of [work.match, ...(work.orders ? [work.orders.match] : [])])
    for (const { booking, eventDay, stemsWithoutSpare } of needs) {
      if (isDelivery(booking) && booking.pieces.length === 0) continue;
      add(benchStems, mondayNumber(eventDay - eventDaysOf(farm, booking).designDays), stemsWithoutSpare);
    }
  return { stemsToCut, benchStems, bucketsStanding };
}

const add = (sums: Map<number, number>, key: number, count: number) => sums.set(key, (sums.get(key) ?? 0) + count);

/** Loads that were added up, by plan: a week's page asks for one week after the other. */
const known = new WeakMap<object, readonly Strain[]>();

/** Where a plan takes more than the farm has said is at hand, in order of day, the cutting of a day before its cooler. What nobody has said has no limit. */
function strains(plan: Pick<Plan, "work" | "snapshot">): readonly Strain[] {
  const { cutHoursPerDay, benchHoursPerWeek, bucketPlaces } = plan.snapshot.farm;
  // Then the lists of a whole season are not made up for it.
  if (cutHoursPerDay === null && benchHoursPerWeek === null && bucketPlaces === null) return [];
  const found = known.get(plan) ?? strainsOf(planLoad(plan), plan.snapshot.farm);
  known.set(plan, found);
  return found;
}

/** The same of a load: all that is over its limit, by whole amounts, so that what fits exactly fits. */
export function strainsOf({ stemsToCut, benchStems, bucketsStanding }: PlanLoad, limits: Limits): Strain[] {
  const { cutStemsPerHour, cutHoursPerDay, benchStemsPerHour, benchHoursPerWeek, bucketPlaces } = limits;
  return [
    ...over("cutting", stemsToCut, cutStemsPerHour, cutHoursPerDay),
    ...over("bench", benchStems, benchStemsPerHour, benchHoursPerWeek),
    ...over("cooler", bucketsStanding, 1, bucketPlaces),
  ].sort((a, b) => a.day - b.day || KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
}

const KINDS: readonly Strain["kind"][] = ["bench", "cutting", "cooler"];

/** A last digit of floating point is no further stem. */
const NOT_A_STEM = 1e-6;

const over = (
  kind: Strain["kind"],
  load: ReadonlyMap<number, number>,
  unitsEach: number,
  has: number | null,
): Strain[] =>
  has === null
    ? []
    : [...load]
        .filter(([, units]) => units > has * unitsEach + NOT_A_STEM)
        .map(([day, units]) => ({ kind, day, takes: units / unitsEach, has }));

/** The strains that touch any day from `from` to `to`, both included; a week of the bench is seven days. Day numbers. */
export const strainsBetween = (plan: Pick<Plan, "work" | "snapshot">, from: number, to: number): Strain[] =>
  strains(plan).filter(({ kind, day }) => day <= to && (kind === "bench" ? day + 6 : day) >= from);
