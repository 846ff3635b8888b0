import { mondayNumber, toDayNumber, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Gap } from "./gaps";
import type { Plan } from "./plan";
import { seasonOfBooking } from "./seasons";
import type { Week } from "./weeks";

/** Some bookings of a season, and their stems. Full are those of which no stem is short. */
export type EventSums = {
  readonly bookingCount: number;
  readonly fullBookingCount: number;
  readonly needStems: number;
  readonly shortStems: number;
};

/** A season's bookings behind the day of the plan, and those still to come: together all of them [G7]. */
export type SeasonSums = { readonly behind: EventSums; readonly ahead: EventSums };

/** What was cut before the day of the plan, in stems before grading: recorded, or not and so counted as cut as planned [T1]. */
export type CutSums = { readonly cutStems: number; readonly notRecordedStems: number };

/** A week that has gone by: what its events asked and went short of, and what was cut in it, in stems. */
export type WeekGone = Pick<Week, "week" | "monday"> & EventSums & CutSums;

/** How many of a plan's weeks, from the first, have gone by: the week of the plan's day is still to come [G7]. 0 where no day has passed. */
export function weeksGone({ weeks, today }: Pick<Plan, "weeks" | "today">): number {
  if (today === null) return 0;
  const thisMonday = mondayNumber(today);
  return weeks.filter(({ monday }) => toDayNumber(monday) < thisMonday).length;
}

/** Whether an event is still to come on the plan's day; one of the day itself is. `eventDay` is a day number. */
export const isAhead = ({ today }: Pick<Plan, "today">, eventDay: number): boolean =>
  today === null || eventDay >= today;

/** The gaps of events that are still to come, in the order of the plan. */
export const gapsAhead = (plan: Pick<Plan, "gaps" | "today">): Gap[] =>
  plan.gaps.filter(({ need }) => isAhead(plan, need.eventDay));

/** The bookings of a plan's season added up, behind its day and ahead of it. */
export function seasonSums(plan: Plan): SeasonSums {
  return {
    behind: eventSums(plan, (eventDay) => !isAhead(plan, eventDay)),
    ahead: eventSums(plan, (eventDay) => isAhead(plan, eventDay)),
  };
}

/** What was cut in the plan's season before its day. */
export const cutsBehind = (plan: Plan): CutSums =>
  cutSums(plan, Number.NEGATIVE_INFINITY, plan.today ?? Number.NEGATIVE_INFINITY);

/** The weeks of a plan that have gone by, each with its sums, in order. */
export const weeksBehind = (plan: Plan): WeekGone[] =>
  plan.weeks.slice(0, weeksGone(plan)).map(({ week, monday }) => {
    const [first, next] = [toDayNumber(monday), toDayNumber(monday) + 7];
    return {
      week,
      monday,
      ...eventSums(plan, (eventDay) => eventDay >= first && eventDay < next),
      ...cutSums(plan, first, next),
    };
  });

function eventSums({ match, seasonYear }: Plan, isOf: (eventDay: number) => boolean): EventSums {
  const shortOf = new Map<Booking, number>();
  let needStems = 0;
  match.needs.forEach(({ booking, eventDay, stems }, index) => {
    if (seasonOfBooking(booking) !== seasonYear || !isOf(eventDay)) return;
    needStems += stems;
    shortOf.set(booking, (shortOf.get(booking) ?? 0) + match.shortStems[index]);
  });
  const shorts = [...shortOf.values()];
  return {
    bookingCount: shorts.length,
    fullBookingCount: shorts.filter((stems) => stems === 0).length,
    needStems,
    shortStems: shorts.reduce((sum, stems) => sum + stems, 0),
  };
}

/** Cuts from a day to before another; of the plan's own season, both ends as day numbers. */
function cutSums({ snapshot, seasonYear, pickList, today }: Plan, from: number, to: number): CutSums {
  const isOf = (day: number) => day >= from && day < to;
  let cutStems = 0;
  for (const { cutOn, stemsCut } of snapshot.cuts)
    if (yearOf(cutOn) === seasonYear && isOf(toDayNumber(cutOn))) cutStems += stemsCut;
  let notRecordedStems = 0;
  for (const { stand, cutDay, stemsToCut } of pickList)
    if (stand.kind === "planting" && !stand.isRecorded && isOf(cutDay) && today !== null && cutDay < today)
      notRecordedStems += stemsToCut;
  return { cutStems, notRecordedStems };
}
