import type { Metadata } from "next";

export const metadata: Metadata = { title: "Not found" };

/** An address that leads nowhere: a booking or bed that is gone, a week that no year has, a typing slip. */
export default function NotFound() {
  return (
    <>
      <h1>There is nothing at this address</h1>
      <p>
        The booking, bed or week may have been removed, or the address was mistyped. If something was removed by
        mistake, it can be brought back from <a href="/farm/history">the history of changes</a>.
      </p>
      <p className="actions">
        <a className="button main" href="/">
          The season
        </a>
        <a className="button" href="/bookings">
          All bookings
        </a>
        <a className="button" href="/beds">
          All beds
        </a>
      </p>
    </>
  );
}
