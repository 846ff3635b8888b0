import type { Anchor, BloomCurve } from "#lib/domain/bloom-curve";
import { dayInYear, type MonthDay, monthDayOf, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ChangeOf } from "#lib/domain/what-if";
import { type Applied, unchanged } from "./applied";

const MOST_DAYS_AFTER_PLANTING = 1000;
const MOST_STEMS_PER_PLANT = 1000;

/**
 * The farm with its median first frost on another day; the early and the late date move with it by as many days, inside the year. The
 * farm's own dates carry it, so plan and simulation reckon with the same frost.
 */
export function movedFrost(now: Snapshot, seasonYear: number, firstFrost: MonthDay): Applied {
  const { frost } = now.farm;
  const days = dayNumberIn(firstFrost, seasonYear) - dayNumberIn(frost.firstAutumnP50, seasonYear);
  const moved = {
    ...frost,
    firstAutumnP10: shifted(frost.firstAutumnP10, days, seasonYear).monthDay,
    firstAutumnP50: firstFrost,
    firstAutumnP90: shifted(frost.firstAutumnP90, days, seasonYear).monthDay,
  };
  return { snapshot: { ...now, farm: { ...now.farm, frost: moved } } };
}

/** The farm with first cuts so many days later (earlier, when negative), of every crop or of one. Frost stays where it is. */
export function shiftedSeason(now: Snapshot, seasonYear: number, change: ChangeOf<"season-shifted">): Applied {
  return withCurves(now, change.cropId, (curve) => {
    const { anchor, fits } = shiftedAnchor(curve.anchor, change.days, seasonYear);
    const problem = "a first cut would leave the year: it is held at the year's end, or at the planting day";
    return { curve: { ...curve, anchor }, ...(fits ? {} : { problem }) };
  });
}

/** The farm with so many times the stems per plant, of every crop or of one. */
export function scaledYield(now: Snapshot, { factor, cropId }: ChangeOf<"yield-scaled">): Applied {
  return withCurves(now, cropId, (curve) => {
    const wanted = curve.stemsPerPlantByWeek.map((stems) => stems * factor);
    const held = wanted.map((stems) => Math.min(MOST_STEMS_PER_PLANT, stems));
    const fits = wanted.every((stems) => stems <= MOST_STEMS_PER_PLANT);
    const problem = `no plant gives more than ${MOST_STEMS_PER_PLANT} stems a week: its curve is held there`;
    return { curve: { ...curve, stemsPerPlantByWeek: held }, ...(fits ? {} : { problem }) };
  });
}

function withCurves(
  now: Snapshot,
  cropId: number | null,
  otherwise: (curve: BloomCurve) => { curve: BloomCurve; problem?: string },
): Applied {
  if (cropId !== null && !now.crops.some(({ id }) => id === cropId))
    return unchanged(now, "this crop is no longer on the farm");
  const changed = now.curves.map((curve) =>
    cropId === null || curve.cropId === cropId ? otherwise(curve) : { curve, problem: undefined },
  );
  const problem = changed.find((one) => one.problem)?.problem;
  return { snapshot: { ...now, curves: changed.map(({ curve }) => curve) }, ...(problem ? { problem } : {}) };
}

function shiftedAnchor(anchor: Anchor, days: number, seasonYear: number): { anchor: Anchor; fits: boolean } {
  if (anchor.kind === "days-after-planting") {
    const wanted = anchor.days + days;
    const held = Math.min(MOST_DAYS_AFTER_PLANTING, Math.max(0, wanted));
    return { anchor: { kind: "days-after-planting", days: held }, fits: held === wanted };
  }
  const { monthDay, fits } = shifted(anchor.firstCut, days, seasonYear);
  return { anchor: { kind: "day-of-year", firstCut: monthDay }, fits };
}

const dayNumberIn = (monthDay: MonthDay, year: number): number => toDayNumber(dayInYear(monthDay, year));

/** A day of the year so many days later in a year, held inside that year. */
function shifted(monthDay: MonthDay, days: number, year: number): { monthDay: MonthDay; fits: boolean } {
  const first = toDayNumber(parseDay(`${year}-01-01`));
  const last = toDayNumber(parseDay(`${year}-12-31`));
  const wanted = dayNumberIn(monthDay, year) + days;
  const held = Math.min(last, Math.max(first, wanted));
  return { monthDay: monthDayOf(toDay(held)), fits: held === wanted };
}
