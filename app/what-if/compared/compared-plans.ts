import type { WhatIf } from "#lib/domain/what-if";
import type { Plan } from "#lib/plan/road/plan";
import { coveredColours } from "#lib/plan/road/week-colours";
import { type ComparedWeek, type Comparison, comparison, type PlanTotals } from "#lib/plan/what-if/comparison";
import type { ChangeMisfit } from "#lib/plan/what-if/what-if";
import { winterTotals } from "#lib/plan/what-if/winter";
import type { RibbonWeek } from "../../season/ribbon/cells";
import { wouldBePlan } from "../would-be-plan";

/** A week in which more or fewer stems are short, or asked, than as it stands; every role together. */
export type TouchedWeek = Pick<ComparedWeek, "week" | "monday"> & {
  readonly before: RibbonWeek;
  readonly after: RibbonWeek;
};

/** Stems short of a booking now and then; null where it is not in the season. */
type ChangedBooking = {
  readonly bookingId: number;
  readonly client: string;
  readonly eventOn: Comparison["bookings"][number]["eventOn"];
  readonly before: number | null;
  readonly after: number | null;
};

/** A what-if beside the farm as it stands: its plan, and all that changes. */
export type Supposed = {
  readonly whatIf: WhatIf;
  readonly plan: Plan;
  readonly misfits: readonly ChangeMisfit[];
  readonly difference: PlanTotals;
  readonly touched: readonly TouchedWeek[];
  readonly bookings: readonly ChangedBooking[];
};

/** The season as it stands and under each what-if, at most three of them. */
export function comparedPlans(now: Plan, whatIfs: readonly WhatIf[]): { compared: Comparison; supposed: Supposed[] } {
  const wouldBe = whatIfs.map((whatIf) => wouldBePlan(now, whatIf));
  const compared = comparison([now, ...wouldBe.map(({ plan }) => plan)], winterTotals);
  const coloursNow = coloursByMonday(now);
  const supposed = whatIfs.map((whatIf, index) => {
    const { plan, misfits } = wouldBe[index];
    return {
      whatIf,
      plan,
      misfits,
      difference: compared.differences[index + 1],
      touched: touchedWeeks(compared.weeks, index + 1, coloursNow, coloursByMonday(plan)),
      bookings: compared.bookings.flatMap(({ bookingId, client, eventOn, shortStems }) => {
        const [before, after] = [shortStems[0], shortStems[index + 1]];
        return before === after ? [] : { bookingId, client, eventOn, before, after };
      }),
    };
  });
  return { compared, supposed };
}

type Colours = ReadonlyMap<string, RibbonWeek["covered"]>;

const coloursByMonday = (plan: Plan): Colours =>
  new Map(coveredColours(plan, "all").map((colours, index) => [plan.weeks[index].monday, colours]));

function touchedWeeks(weeks: Comparison["weeks"], planIndex: number, now: Colours, then: Colours): TouchedWeek[] {
  return weeks.flatMap(({ week, monday, all }) => {
    const [before, after] = [all[0], all[planIndex]];
    if (before.shortStems === after.shortStems && before.needStems === after.needStems) return [];
    const drawn = (need: typeof before, colours: Colours): RibbonWeek => ({
      ...need,
      covered: colours.get(monday) ?? [],
      unclaimed: [],
    });
    return { week, monday, before: drawn(before, now), after: drawn(after, then) };
  });
}
