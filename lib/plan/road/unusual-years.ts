import { dayInYear, type MonthDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { forecast, type YearKind } from "./forecast";
import type { Grown } from "./grown";
import { type Match, match } from "./match";
import type { Plan } from "./plan";
import { daysLateAt, replay } from "./replay";
import { Shelf } from "./shelf";
import { type Lot, supplyOf, type VarietySupply } from "./supply";

/**
 * One year in ten is later, or lighter, than this: 1.28 spreads (the normal distribution's 90 % point), times √½, since we take half of a planting's variance to be
 * the year's, shared by all. Our assumption, as in the simulation, where the season cannot be replayed [Y2].
 */
const ONE_YEAR_IN_TEN = 1.2816 * Math.SQRT1_2;

/** What the beds and the cooler give in years that are early or late: in poor ones, light with an early frost, and in rich ones, heavy with a late frost [G4]. Each kind is worked out when it is asked for. */
export function unusualYears({ snapshot, seasonYear, today, meetingSeasons, match: asPlanned }: PlannedSupply): {
  readonly poor: VarietySupply[][];
  readonly rich: VarietySupply[][];
} {
  const { firstAutumnP10, firstAutumnP90 } = snapshot.farm.frost;
  const others = meetingSeasons
    .filter((season) => season !== seasonYear)
    .flatMap((season) => forecast(snapshot, season).plantings);
  const supplyIn = (kind: YearKind, firstFrost: MonthDay) => {
    const own = forecast(snapshot, seasonYear, toDayNumber(dayInYear(firstFrost, seasonYear)), kind).plantings;
    const supplies = supplyOf(snapshot, [...own, ...others], ...meetingSeasons);
    return today === null ? supplies : upTo(today, asPlanned.supplies, supplies, snapshot);
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

type PlannedSupply = Pick<Plan, "snapshot" | "seasonYear" | "today" | "meetingSeasons"> & {
  readonly match: Pick<Match, "supplies">;
};

/** What was cut up to a day, as the plan has it, and what another kind of year gives from the next day on. What stands in the cooler is in both. */
function upTo(
  today: number,
  planned: readonly VarietySupply[],
  otherYear: readonly VarietySupply[],
  snapshot: Snapshot,
): VarietySupply[] {
  const shelf = new Shelf();
  const put = (from: readonly VarietySupply[], isWanted: (lot: Lot, day: number, supply: VarietySupply) => boolean) => {
    for (const supply of from)
      supply.days.forEach((day, index) => {
        for (const lot of supply.lots[index])
          if (isWanted(lot, day, supply)) shelf.put(supply.variety.id, supply.bookingId ?? null, day, lot);
      });
  };
  put(planned, ({ stand }, day, { bookingId }) => stand.kind === "cooler" || bookingId !== undefined || day <= today);
  put(otherYear, ({ stand }, day) => stand.kind === "planting" && day > today);
  return shelf.supplies(snapshot);
}

/** The plan's needs matched anew with what an early and a late poor year give. */
export function poorMatches(plan: Pick<Plan, keyof PlannedSupply>): Match[] {
  const { farm } = plan.snapshot;
  const buyIn = buyInFinder(plan.snapshot);
  return unusualYears(plan).poor.map((supplies) => match(farm, supplies, plan.match.needs, buyIn));
}
