import type { Day, IsoWeek } from "#lib/domain/day";
import { yearOf } from "#lib/domain/day";
import { stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import type { WeekRole } from "#lib/plan/road/weeks";
import type { WinterCost } from "#lib/plan/winter/costs";

/** What a winter costs under a plan, in cents: the parts of `WinterCost`, which make up its whole [K1]. */
export type WinterMoney = Pick<WinterCost, (typeof MONEY)[number]>;

const MONEY = ["labourCents", "materialCents", "replacementCents", "freeBedCents"] as const;

/** A plan in a few numbers. `winter` is null when no winter costs were asked for. */
export type PlanTotals = {
  readonly shortStems: number;
  readonly focalShortStems: number;
  readonly buyInCents: number;
  readonly winter: WinterMoney | null;
  /** Bookings that ask for stems, and how many of them are covered to the last stem. */
  readonly bookingCount: number;
  readonly coveredBookingCount: number;
};

/** Up to four plans side by side; every list inside holds one entry a plan, in their order. */
export type Comparison = {
  readonly totals: readonly PlanTotals[];
  /** Each plan less the first one; the first is all zeros. */
  readonly differences: readonly PlanTotals[];
  readonly weeks: readonly ComparedWeek[];
  readonly bookings: readonly ComparedBooking[];
};

export type ComparedWeek = {
  readonly monday: Day;
  readonly week: IsoWeek;
  readonly focal: readonly WeekRole[];
  /** The same of every role together. */
  readonly all: readonly WeekNeed[];
};

/** Stems asked and stems short. */
type WeekNeed = Pick<WeekRole, "needStems" | "shortStems">;

/** Stems short of a booking under each plan; null where the plan does not have it, or it asks for nothing. */
type ComparedBooking = {
  readonly bookingId: number;
  readonly client: string;
  readonly eventOn: Day;
  readonly shortStems: readonly (number | null)[];
};

const PLANS_AT_MOST = 4;

/**
 * Plans side by side, the first being what the others are measured against [W6].
 * @param winterCosts  what the winter costs under a plan; left out, `winter` is null
 * @throws RangeError unless there are one to four plans
 */
export function comparison(plans: readonly Plan[], winterCosts?: (plan: Plan) => WinterMoney): Comparison {
  if (plans.length < 1 || plans.length > PLANS_AT_MOST)
    throw new RangeError(`plans must be 1 to ${PLANS_AT_MOST}, got ${plans.length}`);
  const shortByBooking = plans.map(shortOfBookings);
  const totals = plans.map((plan, index) => totalsOf(plan, shortByBooking[index], winterCosts?.(plan) ?? null));
  return {
    totals,
    differences: totals.map((one) => difference(one, totals[0])),
    weeks: comparedWeeks(plans),
    bookings: comparedBookings(plans, shortByBooking),
  };
}

function shortOfBookings({ match }: Plan): Map<number, number> {
  const short = new Map<number, number>();
  match.needs.forEach(({ booking }, index) => {
    short.set(booking.id, (short.get(booking.id) ?? 0) + match.shortStems[index]);
  });
  return short;
}

function totalsOf(plan: Plan, short: Map<number, number>, winter: WinterMoney | null): PlanTotals {
  const focal = plan.gaps.filter(({ need }) => need.role === "focal");
  return {
    shortStems: stemsShort(plan.gaps),
    focalShortStems: stemsShort(focal),
    buyInCents: plan.buying.reduce((sum, { costCents }) => sum + costCents, 0),
    winter,
    bookingCount: short.size,
    coveredBookingCount: [...short.values()].filter((stems) => stems === 0).length,
  };
}

const difference = (one: PlanTotals, first: PlanTotals): PlanTotals => ({
  shortStems: one.shortStems - first.shortStems,
  focalShortStems: one.focalShortStems - first.focalShortStems,
  buyInCents: one.buyInCents - first.buyInCents,
  winter:
    one.winter && first.winter
      ? {
          labourCents: one.winter.labourCents - first.winter.labourCents,
          materialCents: one.winter.materialCents - first.winter.materialCents,
          replacementCents: one.winter.replacementCents - first.winter.replacementCents,
          freeBedCents: one.winter.freeBedCents - first.winter.freeBedCents,
        }
      : null,
  bookingCount: one.bookingCount - first.bookingCount,
  coveredBookingCount: one.coveredBookingCount - first.coveredBookingCount,
});

/** The parts of a winter's money as one sum, in cents; 0 where there is none. */
export const winterCents = (winter: WinterMoney | null): number =>
  winter ? MONEY.reduce((sum, part) => sum + winter[part], 0) : 0;

const NOTHING: WeekRole = { role: "focal", needStems: 0, coveredStems: 0, shortStems: 0, reachableStems: 0 };

/** Every week that any of the plans has; a plan that does not reach it has zeros there. */
function comparedWeeks(plans: readonly Plan[]): ComparedWeek[] {
  const byMonday = new Map<Day, { week: IsoWeek; focal: WeekRole[]; all: WeekNeed[] }>();
  plans.forEach(({ weeks }, index) => {
    for (const { monday, week, roles } of weeks) {
      const row = byMonday.get(monday) ?? { week, focal: plans.map(() => NOTHING), all: plans.map(() => NOTHING) };
      byMonday.set(monday, row);
      row.focal[index] = roles.find(({ role }) => role === "focal") ?? NOTHING;
      row.all[index] = {
        needStems: roles.reduce((sum, { needStems }) => sum + needStems, 0),
        shortStems: roles.reduce((sum, { shortStems }) => sum + shortStems, 0),
      };
    }
  });
  return [...byMonday].sort(([a], [b]) => (a < b ? -1 : 1)).map(([monday, row]) => ({ monday, ...row }));
}

/** Every booking that any of the plans has in its season, by the day of its event in the first plan that has it. */
function comparedBookings(plans: readonly Plan[], short: readonly Map<number, number>[]): ComparedBooking[] {
  const rows = new Map<number, ComparedBooking>();
  for (const { snapshot, seasonYear } of plans)
    for (const { id, client, eventOn } of snapshot.bookings)
      if (!rows.has(id) && yearOf(eventOn) === seasonYear && short.some((ofPlan) => ofPlan.has(id)))
        rows.set(id, { bookingId: id, client, eventOn, shortStems: short.map((ofPlan) => ofPlan.get(id) ?? null) });
  return [...rows.values()].sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : 0));
}
