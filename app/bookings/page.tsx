import type { Metadata } from "next";
import { yearOf } from "#lib/domain/day";
import { countOf } from "#lib/plan/words/numbers";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { Empty } from "../ui/empty";
import { BookingRows } from "./booking-rows";

export const metadata: Metadata = { title: "Bookings" };

/** Every booking of the season with its coverage, in order of the event. Cancelled ones stand apart, so that they can be taken back. */
export default async function BookingsPage() {
  const year = await seasonYear();
  const plan = loadPlan(year);
  const ofSeason = plan.snapshot.bookings
    .filter((booking) => yearOf(booking.eventOn) === year)
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1));
  const live = ofSeason.filter((booking) => booking.status !== "cancelled");
  const cancelled = ofSeason.filter((booking) => booking.status === "cancelled");
  return (
    <>
      <SeasonHead title={`Bookings of ${year}`} seasonYear={year} back="/bookings" />
      {ofSeason.length === 0 ? (
        <Empty title="No bookings yet">
          <p>Enter the first one: pieces with their counts are enough, the recipes fill in the stems.</p>
          <p className="actions">
            <a className="button main" href="/bookings/new">
              Enter a booking
            </a>
            <a className="button" href="/farm#import">
              Bring in CSV files
            </a>
          </p>
        </Empty>
      ) : (
        <>
          <p className="actions">
            <a className="button main" href="/bookings/new">
              Enter a booking
            </a>
            <a className="button" href="/dates">
              Can I take this date?
            </a>
            <span className="soft">{countOf(live.length, "booking")}</span>
          </p>
          <BookingRows plan={plan} bookings={live} />
          {cancelled.length > 0 && (
            <>
              <h2>Cancelled</h2>
              <BookingRows plan={plan} bookings={cancelled} />
            </>
          )}
        </>
      )}
    </>
  );
}
