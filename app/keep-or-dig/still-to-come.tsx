import type { Snapshot } from "#lib/domain/snapshot";
import { isExpected } from "#lib/plan/road/claim";
import { deliveriesOf } from "#lib/plan/road/orders";
import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { expectedInWords, expectedLine } from "#lib/plan/words/expected-words";
import { today } from "../clock";

/** What is reckoned with beside the bookings there are, and where to say it: in autumn most of a season is not booked yet. */
export function StillToCome({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const expected = withExpectedBookings(snapshot, seasonYear, today()).bookings.filter(isExpected);
  const words = expectedInWords(snapshot, expected);
  const isSold = deliveriesOf(snapshot.standingOrders, [seasonYear]).length > 0;
  return (
    <section className="still-to-come" aria-label="Still to come">
      <p>
        {words === null && snapshot.farm.winter.expectedFrom === "last season" ? (
          <>
            Only what is booked or asked for {seasonYear} is reckoned with: nothing of last season is still to come
            again. <a href="/farm#keeping">Change that</a>.
          </>
        ) : words === null ? (
          <>
            Only what is booked or asked for {seasonYear} is reckoned with. If more will come, say{" "}
            <a href="/farm#keeping">how many free Saturdays</a> will still be booked, or that it will be as last season.
          </>
        ) : (
          <>
            Reckoned with beside the bookings: {words} <a href="/farm#keeping">Change that</a>.
          </>
        )}
      </p>
      {expected.length > 0 && (
        <details>
          <summary>Which they are</summary>
          <ul>
            {expected.map((booking) => (
              <li key={booking.id}>{expectedLine(snapshot, booking)}</li>
            ))}
          </ul>
        </details>
      )}
      {isSold && (
        <p>
          Not in the sum: <a href="/orders">standing orders</a>. They take what bookings leave, and beside the net cost
          stands what they get with the beds as ticked: a kept bed that feeds them is worth more than it says here.
        </p>
      )}
    </section>
  );
}
