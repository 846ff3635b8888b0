import { toDayNumber } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { TimingSeen } from "./season-model";

/** What a first bloom that is seen may be off: beds are not walked every day. Our own guess, like all spreads here. */
const BLOOM_SPREAD_DAYS = 1.5;
/** What a judgement of so many days to go may be off: a day, and a quarter of the days. */
const judgementSpread = (days: number): number => 1 + days / 4;
/** What "early" and "late" mean, in days, and how far that may be off; "as due" is nearer. */
const OFF_DAYS = 6;
const OFF_SPREAD_DAYS = 4;
const DUE_SPREAD_DAYS = 3;
const NOT_YET_SPREAD_DAYS = 1;

/**
 * What a look at the buds says of days late [O2]. A number of days to go says when the first cut comes; else the sign does: first bloom is the day itself,
 * buds showing that it comes later, early and late are six days off, as due is none.
 */
export function timingOf(
  { lookedOn, sign, daysToCut }: Omit<BudLook, "id" | "bedId" | "varietyId">,
  firstCut: number,
): TimingSeen {
  const sinceDue = toDayNumber(lookedOn) - firstCut;
  if (daysToCut !== null) return came(sinceDue + daysToCut, judgementSpread(daysToCut));
  switch (sign) {
    case "first bloom":
      return came(sinceDue, BLOOM_SPREAD_DAYS);
    case "buds showing":
      return { says: "not yet", daysLate: sinceDue, spreadDays: NOT_YET_SPREAD_DAYS };
    case "early":
      return came(-OFF_DAYS, OFF_SPREAD_DAYS);
    case "as due":
      return came(0, DUE_SPREAD_DAYS);
    case "late":
      return came(OFF_DAYS, OFF_SPREAD_DAYS);
  }
}

const came = (daysLate: number, spreadDays: number): TimingSeen => ({ says: "came", daysLate, spreadDays });
