import type { Snapshot } from "#lib/domain/snapshot";
import { withoutLapsed } from "#lib/plan/road/lapsed";
import { deliveriesOf } from "#lib/plan/road/orders";
import { expectedBookings } from "#lib/plan/winter/expected-bookings";
import { countOf, inPercent } from "#lib/plan/words/numbers";
import { today } from "../clock";

/** What is reckoned with beside the bookings there are, and where to say it: in autumn most of a season is not booked yet. */
export function StillToCome({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const count = expectedBookings(withoutLapsed(snapshot, today()), seasonYear).length;
  const isSold = deliveriesOf(snapshot.standingOrders, [seasonYear]).length > 0;
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
          <a href="/farm#keeping">Change that</a>.
        </>
      )}
      {isSold && (
        <>
          {" "}
          Not in the sum: <a href="/orders">standing orders</a>. They take what bookings leave, so a kept bed may be
          worth more than it says here.
        </>
      )}
    </p>
  );
}
