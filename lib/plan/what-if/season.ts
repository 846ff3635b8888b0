import { dayInYear, type MonthDay, monthDayOf, PLAIN_YEAR, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import { type Anchor, type BloomCurve, MOST_LATER_DAYS } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ChangeOf } from "#lib/domain/what-if";
import { goesByWarmth } from "#lib/plan/road/first-cut";
import { type Applied, type Misfit, unchangedSinceGone } from "./applied";

const MOST_DAYS_AFTER_PLANTING = 1000;
const MOST_STEMS_PER_PLANT = 1000;

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

/** The farm with first cuts so many days later (earlier, when negative), of every crop or of one. Frost stays where it is. */
export function shiftedSeason(now: Snapshot, change: ChangeOf<"season-shifted">): Applied {
  const { climate } = now.farm;
  return withCurves(now, change.cropId, (curve) => {
    const isByWarmth = climate !== null && goesByWarmth(curve, climate);
    const { moved, fits } = isByWarmth ? movedCut(curve, change.days) : movedAnchor(curve, change.days);
    return { curve: moved, misfit: fits ? undefined : { kind: "first-cut-held" } };
  });
}

/** A curve whose first cut warmth tells, cut so many days later: its known point stays what it is, or other planting days would move by other days. */
function movedCut(curve: BloomCurve, days: number): { moved: BloomCurve; fits: boolean } {
  const wanted = curve.laterDays + days;
  const laterDays = Math.min(MOST_LATER_DAYS, Math.max(-MOST_LATER_DAYS, wanted));
  return { moved: { ...curve, laterDays }, fits: laterDays === wanted };
}

function movedAnchor(curve: BloomCurve, days: number): { moved: BloomCurve; fits: boolean } {
  const { anchor, fits } = shiftedAnchor(curve.anchor, days);
  return { moved: { ...curve, anchor }, fits };
}

/** The farm with so many times the stems per plant, of every crop or of one. */
export function scaledYield(now: Snapshot, { factor, cropId }: ChangeOf<"yield-scaled">): Applied {
  return withCurves(now, cropId, (curve) => {
    const wanted = curve.stemsPerPlantByWeek.map((stems) => stems * factor);
    const held = wanted.map((stems) => Math.min(MOST_STEMS_PER_PLANT, stems));
    const fits = wanted.every((stems) => stems <= MOST_STEMS_PER_PLANT);
    const misfit = fits ? undefined : ({ kind: "yield-held", mostStems: MOST_STEMS_PER_PLANT } as const);
    return { curve: { ...curve, stemsPerPlantByWeek: held }, misfit };
  });
}

function withCurves(
  now: Snapshot,
  cropId: number | null,
  otherwise: (curve: BloomCurve) => { curve: BloomCurve; misfit?: Misfit },
): Applied {
  if (cropId !== null && !now.crops.some(({ id }) => id === cropId)) return unchangedSinceGone(now, "this crop");
  const changed = now.curves.map((curve) =>
    cropId === null || curve.cropId === cropId ? otherwise(curve) : { curve, misfit: undefined },
  );
  const misfit = changed.find((one) => one.misfit)?.misfit;
  return { snapshot: { ...now, curves: changed.map(({ curve }) => curve) }, misfit };
}

function shiftedAnchor(anchor: Anchor, days: number): { anchor: Anchor; fits: boolean } {
  if (anchor.kind === "days-after-planting") {
    const wanted = anchor.days + days;
    const held = Math.min(MOST_DAYS_AFTER_PLANTING, Math.max(0, wanted));
    return { anchor: { kind: "days-after-planting", days: held }, fits: held === wanted };
  }
  const { monthDay, fits } = shifted(anchor.firstCut, days);
  return { anchor: { kind: "day-of-year", firstCut: monthDay }, fits };
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
