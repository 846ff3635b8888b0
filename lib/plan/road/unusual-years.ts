import { dayInYear, type MonthDay, toDayNumber } from "#lib/domain/day";
import { buyInFinder } from "./buy-in";
import { forecast, type YearKind } from "./forecast";
import type { Grown } from "./grown";
import { type Match, match } from "./match";
import type { Plan } from "./plan";
import { daysLateAt, replay } from "./replay";
import { supplyOf, type VarietySupply } from "./supply";

/**
 * One year in ten is later, or lighter, than this: 1.28 spreads (the normal distribution's 90 % point), times √½, since we take half of a planting's variance to be
 * the year's, shared by all. Our assumption, as in the simulation, where the season cannot be replayed [Y2].
 */
const ONE_YEAR_IN_TEN = 1.2816 * Math.SQRT1_2;

/** What the beds and the cooler give in years that are early or late: in poor ones, light with an early frost, and in rich ones, heavy with a late frost [G4]. Each kind is worked out when it is asked for. */
export function unusualYears({
  snapshot,
  seasonYear,
  meetingSeasons,
}: Pick<Plan, "snapshot" | "seasonYear" | "meetingSeasons">): {
  readonly poor: VarietySupply[][];
  readonly rich: VarietySupply[][];
} {
  const { firstAutumnP10, firstAutumnP90 } = snapshot.farm.frost;
  const others = meetingSeasons
    .filter((season) => season !== seasonYear)
    .flatMap((season) => forecast(snapshot, season).plantings);
  const supplyIn = (kind: YearKind, firstFrost: MonthDay) => {
    const own = forecast(snapshot, seasonYear, toDayNumber(dayInYear(firstFrost, seasonYear)), kind).plantings;
    return supplyOf(snapshot, [...own, ...others], ...meetingSeasons);
  };
  const replayed = replay(snapshot, seasonYear);
  const daysLateAfter = (share: number) => (row: Grown) => {
    const late = replayed?.daysLateOf(row);
    return late ? daysLateAt(late, share) : null;
  };
  const kinds = [
    { lateness: -ONE_YEAR_IN_TEN, daysLateOf: daysLateAfter(0.1) },
    { lateness: ONE_YEAR_IN_TEN, daysLateOf: daysLateAfter(0.9) },
  ];
  const earlyAndLate = (heaviness: number, firstFrost: MonthDay) =>
    kinds.map((kind) => supplyIn({ ...kind, heaviness }, firstFrost));
  return {
    get poor() {
      return earlyAndLate(-ONE_YEAR_IN_TEN, firstAutumnP10);
    },
    get rich() {
      return earlyAndLate(ONE_YEAR_IN_TEN, firstAutumnP90);
    },
  };
}

/** The plan's needs matched anew with what an early and a late poor year give. */
export function poorMatches(plan: Pick<Plan, "snapshot" | "seasonYear" | "meetingSeasons" | "match">): Match[] {
  const { farm, crops } = plan.snapshot;
  const buyIn = buyInFinder(crops);
  return unusualYears(plan).poor.map((supplies) => match(farm, supplies, plan.match.needs, buyIn));
}
