import type { Plan } from "#lib/plan/road/plan";
import { CarryOver } from "../beds/carry-over";
import { BareGround } from "../look/bare-ground";

/** A season with nothing in it yet: what to do first. */
export function SeasonStart({ plan }: { plan: Plan }) {
  const seasons = [...new Set(plan.snapshot.plantings.map((planting) => planting.seasonYear))].sort((a, b) => b - a);
  const earlier = seasons.find((season) => season < plan.seasonYear);
  return (
    <section className="season-lead" aria-labelledby="answer">
      <h1 id="answer">Nothing is planned for {plan.seasonYear} yet.</h1>
      <BareGround />
      <p className="lead">
        Say what grows in your beds, then enter your first booking: the short weeks show themselves.
      </p>
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
    </section>
  );
}
