import type { Snapshot } from "#lib/domain/snapshot";
import { CarryOver } from "../beds/carry-over";
import { Empty } from "../ui/empty";

/** A season without a bed that could stay in the ground: what to do first. */
export function NoCandidates({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const hasPlantings = snapshot.plantings.some((planting) => planting.seasonYear === seasonYear);
  const earlier = snapshot.plantings.map((planting) => planting.seasonYear).filter((year) => year < seasonYear);
  const latest = earlier.length ? earlier.reduce((a, b) => Math.max(a, b)) : null;
  return (
    <Empty title={`No bed of ${seasonYear} could stay in the ground`}>
      <p>
        A bed is a candidate when it holds tender perennials, such as dahlias, with a bloom curve both for “dug and
        replanted in spring” and for “kept in the ground over winter”, and they stand in it the winter before: what is
        first planted in the spring of {seasonYear} cannot be kept yet. Clumps that do stand there have an earlier
        planting day, or were in the bed the season before.
      </p>
      {!hasPlantings && latest !== null && <CarryOver fromSeason={latest} toSeason={seasonYear} />}
      <p className="actions">
        <a className="button main" href="/beds">
          Plant dahlias in a bed
        </a>
        <a className="button" href="/farm/crops">
          Look at crops and bloom curves
        </a>
      </p>
    </Empty>
  );
}
