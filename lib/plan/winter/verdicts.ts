import { type Day, mondayNumber, toDay } from "#lib/domain/day";
import type { FlowSolution } from "#lib/maths/flow-network";
import { keepsTo, type Selection } from "#lib/maths/switch-flow/problem";
import type { WinterBed } from "./beds";
import { keepCost } from "./costs";
import type { WinterFutures } from "./futures";
import { type LimitMet, limitMet } from "./limits";
import { fates, isFocalOf, selectionOf, type WinterSeason } from "./season";

/** Focal stems that keeping a bed rather than digging it covers in a week; below 0 in the weeks it takes them from. */
type WeekCovered = { readonly monday: Day; readonly focalStems: number };

/**
 * What the plan says of one bed, the rest of the choice as it is [K8]. `worthCents`: what the plan would lose if this bed went the other way;
 * below 0 when only a flag or a limit stands against it; it is `dig.cents` + `matchCents.dug` less `keep.cents` + `matchCents.kept`, or the other way about where the
 * bed is dug. `matchCents`: what the match costs with the bed in either future, stems short, poorer fits and age. `breakEvenShare`: the winter survival at which keeping and digging cost the
 * same, null when one is cheaper whatever lives.
 */
export type BedVerdict = WinterBed & {
  readonly isKept: boolean;
  readonly worthCents: number;
  readonly matchCents: { readonly dug: number; readonly kept: number };
  readonly breakEvenShare: number | null;
  readonly weeks: readonly WeekCovered[];
  readonly focalStems: number;
  /** Limits that the bed would break if it went the other way, and what that choice would take. */
  readonly wouldBreak: readonly LimitMet[];
};

/**
 * A verdict on every candidate bed, in order, one a step: a bed takes a dozen flows, and a large farm has hundreds of beds.
 * @throws RangeError if a bed kept is no candidate or has a flag
 */
export function* bedVerdicts(season: WinterSeason, keptBedIds: readonly number[]): Generator<BedVerdict> {
  const selection = selectionOf(season, keptBedIds);
  const isKept = fates(season, selection);
  for (const bed of season.futures.beds.keys()) yield verdict(season, selection, isKept, bed);
}

function verdict(season: WinterSeason, selection: Selection, isKept: Selection, bed: number): BedVerdict {
  const { futures } = season;
  const winterBed = futures.beds[bed];
  const dug = season.flowOf(isKept.with(bed, false));
  const kept = season.flowOf(isKept.with(bed, true));
  const keepLessDigCents = kept.totalCost + winterBed.keep.cents - dug.totalCost - winterBed.dig.cents;
  const weeks = weeksCovered(futures, dug, kept);
  const place = season.openBeds.indexOf(bed);
  const turned = place < 0 ? selection : selection.with(place, !selection[place]);
  return {
    ...winterBed,
    isKept: isKept[bed],
    worthCents: isKept[bed] ? -keepLessDigCents + 0 : keepLessDigCents,
    matchCents: { dug: dug.totalCost, kept: kept.totalCost },
    breakEvenShare: breakEven(season, isKept, bed, dug.totalCost + winterBed.dig.cents),
    weeks,
    focalStems: weeks.reduce((sum, { focalStems }) => sum + focalStems, 0),
    wouldBreak: season.limits
      .filter((limit) => !keepsTo([limit], turned))
      .map((limit) => limitMet(limit, futures.beds, fates(season, turned))),
  };
}

/** Halvings of the span in which the break-even lies: to a thousandth. */
const HALVINGS = 10;

/**
 * Where keeping at some survival comes to cost no more than digging; found by halving. More survivors mostly make keeping cheaper, not always: stems and
 * cents are rounded, so that one step up may cost a little. Then there are other such points, and one is given.
 */
function breakEven(season: WinterSeason, isKept: Selection, bed: number, digCents: number): number | null {
  const { beds, effectAt, snapshot } = season.futures;
  const rows = beds[bed].plantings.map((row) => row.kept.planting);
  const keptAll = isKept.with(bed, true);
  const isCheaperKept = (share: number): boolean => {
    const surviving = rows.map((planting) => ({ ...planting, winterSurvivalShare: share }));
    const flow = season.flowOf(keptAll, { bed, effect: effectAt(bed, share) });
    return flow.totalCost + keepCost(beds[bed].bed, surviving, snapshot.farm).cents <= digCents;
  };
  if (isCheaperKept(0) || !isCheaperKept(1)) return null;
  let dearer = 0;
  let cheaper = 1;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (dearer + cheaper) / 2;
    if (isCheaperKept(middle)) cheaper = middle;
    else dearer = middle;
  }
  return cheaper;
}

function weeksCovered(
  { needs, network, seasonYear }: WinterFutures,
  dug: FlowSolution,
  kept: FlowSolution,
): WeekCovered[] {
  const byMonday = new Map<number, number>();
  needs.forEach((need, index) => {
    const covers = network.unmetOf(index, dug) - network.unmetOf(index, kept);
    if (!isFocalOf(seasonYear, need) || covers === 0) return;
    const monday = mondayNumber(need.eventDay);
    byMonday.set(monday, (byMonday.get(monday) ?? 0) + covers);
  });
  return [...byMonday]
    .filter(([, focalStems]) => focalStems !== 0)
    .sort(([a], [b]) => a - b)
    .map(([monday, focalStems]) => ({ monday: toDay(monday), focalStems }));
}
