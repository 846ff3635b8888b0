import type { Snapshot } from "#lib/domain/snapshot";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { chooseBeds, type WinterChoice } from "./choose-beds";
import type { PointsDone } from "./keep-curve";

/** The choice if every clump in the ground lived through the winter with this chance. */
export type SurvivalPoint = { readonly survivalShare: number; readonly choice: WinterChoice };

/**
 * The choice made again for each survival assumed, the plantings' own expectations set aside: no published figure was found, so a
 * grower should see how far the choice hangs on hers [K7]. Yields as it goes; send `true` to stop with the points that are done.
 * @param survivalShares  0 to 1
 * @throws RangeError if a share is not between 0 and 1
 */
export function* sweepSurvival(
  snapshot: Snapshot,
  seasonYear: number,
  solver: LinearSolver,
  survivalShares: readonly number[],
): Generator<PointsDone, readonly SurvivalPoint[], boolean | undefined> {
  const points: SurvivalPoint[] = [];
  for (const survivalShare of survivalShares) {
    if (!(survivalShare >= 0 && survivalShare <= 1))
      throw new RangeError(`survivalShares must lie between 0 and 1, got ${survivalShare}`);
    const choosing = chooseBeds(withSurvival(snapshot, survivalShare), seasonYear, solver);
    let step = choosing.next();
    while (!step.done) step = choosing.next(yield { doneCount: points.length, ofCount: survivalShares.length });
    const choice = step.value;
    if (choice.status === "stopped" || choice.status === "stopped early") return points;
    points.push({ survivalShare, choice });
  }
  return points;
}

/** The farm with one survival for all that winters in the ground. */
export function withSurvival(snapshot: Snapshot, survivalShare: number): Snapshot {
  const { farm } = snapshot;
  return {
    ...snapshot,
    farm: { ...farm, winter: { ...farm.winter, winterSurvivalShare: survivalShare } },
    plantings: snapshot.plantings.map((planting) => ({ ...planting, winterSurvivalShare: null })),
  };
}
