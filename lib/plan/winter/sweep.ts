import { type BloomCurve, MOST_LATER_DAYS } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { KEPT } from "./beds";
import { chooseBeds, type WinterChoice } from "./choose-beds";
import type { PointsDone } from "./keep-curve";

/**
 * The numbers of kept beds for which no published figure was found: the share of clumps that lives, from 0 to 1; the first cut, in days later than the farm has
 * it (earlier, below 0); the stems, as a factor of the farm's.
 */
export type SweptBy = "survival" | "first cut" | "stems";

/** The choice if that number were another. */
export type SweepPoint = { readonly at: number; readonly choice: WinterChoice };

/**
 * The choice made again for other values of a number of kept beds, one value for all of them, so that a grower sees how far the choice hangs on hers [K7].
 * Yields as it goes; send `true` to stop with the points that are done.
 * @throws RangeError if a value is not one that the number can have
 */
export function* sweepKept(
  snapshot: Snapshot,
  seasonYear: number,
  solver: LinearSolver,
  by: SweptBy,
  values: readonly number[],
): Generator<PointsDone, readonly SweepPoint[], boolean | undefined> {
  const points: SweepPoint[] = [];
  for (const at of values) {
    const choosing = chooseBeds(withNumber(snapshot, by, at), seasonYear, solver);
    let step = choosing.next();
    while (!step.done) step = choosing.next(yield { doneCount: points.length, ofCount: values.length });
    const choice = step.value;
    if (choice.status === "stopped" || choice.status === "stopped early") return points;
    points.push({ at, choice });
  }
  return points;
}

/** The farm if a number of its kept beds were another. */
function withNumber(snapshot: Snapshot, by: SweptBy, at: number): Snapshot {
  if (by === "survival") return withSurvival(snapshot, at);
  if (by === "first cut") return withFirstCut(snapshot, at);
  return withStems(snapshot, at);
}

/** One survival for all that winters in the ground; the plantings' own expectations are set aside. */
function withSurvival(snapshot: Snapshot, survivalShare: number): Snapshot {
  if (!(survivalShare >= 0 && survivalShare <= 1))
    throw new RangeError(`survivalShare must lie between 0 and 1, got ${survivalShare}`);
  const { farm } = snapshot;
  return {
    ...snapshot,
    farm: { ...farm, winter: { ...farm.winter, winterSurvivalShare: survivalShare } },
    plantings: snapshot.plantings.map((planting) => ({ ...planting, winterSurvivalShare: null })),
  };
}

function withFirstCut(snapshot: Snapshot, laterDays: number): Snapshot {
  if (!Number.isInteger(laterDays)) throw new RangeError(`laterDays must be whole days, got ${laterDays}`);
  const held = (days: number) => Math.min(MOST_LATER_DAYS, Math.max(-MOST_LATER_DAYS, days));
  return withKeptCurves(snapshot, (curve) => ({ ...curve, laterDays: held(curve.laterDays + laterDays) }));
}

function withStems(snapshot: Snapshot, factor: number): Snapshot {
  if (!(factor >= 0 && Number.isFinite(factor))) throw new RangeError(`factor must be 0 or more, got ${factor}`);
  return withKeptCurves(snapshot, (curve) => ({
    ...curve,
    stemsPerPlantByWeek: curve.stemsPerPlantByWeek.map((stems) => stems * factor),
  }));
}

const withKeptCurves = (snapshot: Snapshot, changed: (curve: BloomCurve) => BloomCurve): Snapshot => ({
  ...snapshot,
  curves: snapshot.curves.map((curve) => (curve.treatment === KEPT ? changed(curve) : curve)),
});
