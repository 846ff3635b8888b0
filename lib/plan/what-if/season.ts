import { dayInYear, type MonthDay, monthDayOf, PLAIN_YEAR, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import { MOST_DAYS_LATE, MOST_YIELD_FACTOR, type Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ChangeOf } from "#lib/domain/what-if";
import { plantingsOfCrop } from "#lib/plan/road/grown";
import { type Applied, type Misfit, unchangedSinceGone } from "./applied";

/**
 * The farm with its median first frost on another day; the early and the late date move with it by as many days. One that would leave the
 * year is held at its end, with a misfit. The farm's own dates carry it, so plan and simulation reckon with the same frost.
 */
export function movedFrost(now: Snapshot, firstFrost: MonthDay): Applied {
  const { frost } = now.farm;
  const days = placeInYear(firstFrost) - placeInYear(frost.firstAutumnP50);
  const [early, late] = [frost.firstAutumnP10, frost.firstAutumnP90].map((monthDay) => shifted(monthDay, days));
  const moved = { ...frost, firstAutumnP10: early.monthDay, firstAutumnP50: firstFrost, firstAutumnP90: late.monthDay };
  const snapshot = { ...now, farm: { ...now.farm, frost: moved } };
  return early.fits && late.fits ? { snapshot } : { snapshot, misfit: { kind: "frost-held" } };
}

/** The farm with first cuts of the season so many days later (earlier, when negative), of every crop or of one. Frost stays where it is. */
export const shiftedSeason = (
  now: Snapshot,
  seasonYear: number,
  { days, cropId }: ChangeOf<"season-shifted">,
  before: Snapshot,
): Applied =>
  withSeason(now, seasonYear, cropId, before, (planting) => {
    const wanted = (planting.daysLate ?? 0) + days;
    const daysLate = Math.min(MOST_DAYS_LATE, Math.max(-MOST_DAYS_LATE, wanted));
    return { said: { daysLate }, misfit: daysLate === wanted ? undefined : { kind: "first-cut-held" } };
  });

/** The farm with so many times the stems in the season, of every crop or of one. */
export const scaledYield = (
  now: Snapshot,
  seasonYear: number,
  { factor, cropId }: ChangeOf<"yield-scaled">,
  before: Snapshot,
): Applied =>
  withSeason(now, seasonYear, cropId, before, (planting) => {
    const wanted = (planting.yieldFactor ?? 1) * factor;
    const yieldFactor = Math.min(MOST_YIELD_FACTOR, wanted);
    return { said: { yieldFactor }, misfit: yieldFactor === wanted ? undefined : { kind: "yield-held" } };
  });

/** What a change makes the grower say of a planting's season. */
type Said = {
  readonly said: Partial<Pick<Planting, "daysLate" | "yieldFactor">>;
  readonly misfit: Misfit | undefined;
};

/** The farm with something else said of the season of its plantings. What is as expected, and was not said of before, is not said of. */
function withSeason(
  now: Snapshot,
  seasonYear: number,
  cropId: number | null,
  before: Snapshot,
  otherwise: (planting: Planting) => Said,
): Applied {
  if (cropId !== null && !now.crops.some(({ id }) => id === cropId)) return unchangedSinceGone(now, "this crop");
  const ofCrop = new Set(plantingsOfCrop(now, seasonYear, cropId));
  const saidBefore = new Map(before.plantings.map((row) => [row.id, row]));
  let misfit: Misfit | undefined;
  const plantings = now.plantings.map((planting) => {
    if (!ofCrop.has(planting)) return planting;
    const changed = otherwise(planting);
    misfit ??= changed.misfit;
    const { daysLate, yieldFactor } = { ...planting, ...changed.said };
    const was = saidBefore.get(planting.id);
    return {
      ...planting,
      daysLate: daysLate === 0 && (was?.daysLate ?? null) === null ? null : daysLate,
      yieldFactor: yieldFactor === 1 && (was?.yieldFactor ?? null) === null ? null : yieldFactor,
    };
  });
  return { snapshot: { ...now, plantings }, misfit };
}

/** Days of a year are counted in one of 365: "29 February" is no day of every year, and one day and one day must be two [W5]. */
const placeInYear = (monthDay: MonthDay): number => toDayNumber(dayInYear(monthDay, PLAIN_YEAR));
const FIRST = toDayNumber(parseDay(`${PLAIN_YEAR}-01-01`));
const LAST = toDayNumber(parseDay(`${PLAIN_YEAR}-12-31`));

/** A day of the year so many days later, held inside the year. */
function shifted(monthDay: MonthDay, days: number): { monthDay: MonthDay; fits: boolean } {
  const wanted = placeInYear(monthDay) + days;
  const held = Math.min(LAST, Math.max(FIRST, wanted));
  return { monthDay: monthDayOf(toDay(held)), fits: held === wanted };
}
