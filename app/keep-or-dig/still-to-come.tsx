import type { Snapshot } from "#lib/domain/snapshot";
import { expectedBookings } from "#lib/plan/winter/expected-bookings";
import { countOf, inPercent } from "#lib/plan/words/numbers";

/** What is reckoned with beside the bookings there are, and where to say it: in autumn most of a season is not booked yet. */
export function StillToCome({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const count = expectedBookings(snapshot, seasonYear).length;
  return (
    <p className="still-to-come">
      {count === 0 ? (
        <>
          Only what is booked or asked for {seasonYear} is reckoned with. If more will come, say{" "}
          <a href="/farm#keeping">how many free Saturdays</a> will still be booked.
        </>
      ) : (
        <>
          Reckoned with beside the bookings: <strong>{countOf(count, "free Saturday")}</strong> still to be booked, each
          like the booking nearest to it in the year, at {inPercent(snapshot.farm.statusWeights.enquiry)} as an enquiry.{" "}
          <a href="/farm#keeping">Change that</a>
        </>
      )}
    </p>
  );
}
