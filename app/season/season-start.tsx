import type { Plan } from "#lib/plan/road/plan";
import { CarryOver } from "../beds/carry-over";
import { Empty } from "../ui/empty";

/** A season with nothing in it yet: what to do first. */
export function SeasonStart({ plan }: { plan: Plan }) {
  const seasons = [...new Set(plan.snapshot.plantings.map((planting) => planting.seasonYear))].sort((a, b) => b - a);
  const earlier = seasons.find((season) => season < plan.seasonYear);
  return (
    <Empty title={`Nothing is planned for ${plan.seasonYear} yet`}>
      <p>Say what grows in your beds, then enter your first booking: the short weeks show themselves.</p>
      {earlier !== undefined && <CarryOver fromSeason={earlier} toSeason={plan.seasonYear} />}
      <p className="actions">
        <a className="button main" href="/beds">
          Plan the beds
        </a>
        <a className="button" href="/bookings/new">
          Enter a booking
        </a>
        <a className="button" href="/farm/files#import">
          Bring in CSV files
        </a>
      </p>
    </Empty>
  );
}
