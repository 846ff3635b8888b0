import type { Metadata } from "next";
import { z } from "zod";
import { yearOf } from "#lib/domain/day";
import { bookingColours } from "#lib/plan/road/booking-colours";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { asksForStems, isLapsed } from "#lib/plan/road/lapsed";
import type { Plan } from "#lib/plan/road/plan";
import { today } from "../clock";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { CountedMarks } from "../look/counted-row";
import { FlowerHeads } from "../look/flower-heads";
import { mayOpen } from "../people/allowed";
import { roleNow } from "../people/who";
import { Empty } from "../ui/empty";
import type { BookingLine } from "./booking-line";
import { BookingMonths } from "./booking-months";
import { BookingSide } from "./booking-side";
import { CountsDue } from "./final-count/counts-due";
import { LapseNews } from "./lapses/lapse-news";
import { LapsedBookings } from "./lapses/lapsed-bookings";
import { NextEvent } from "./next-event";
import { PromiseNews } from "./promises/promise-news";
import { ofShow, SHOWS, ShowFilter } from "./show-filter";

export const metadata: Metadata = { title: "Bookings" };

const query = z.object({ show: z.enum(SHOWS).catch("all") });

/** The next event, then every booking of the season month by month, a line each. Months that are over, bookings that lapsed and cancelled ones are folded. */
export default async function BookingsPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { show } = query.parse(await searchParams);
  const year = await seasonYear();
  const now = today();
  const plan = loadPlan(year);
  const lines = linesOf(plan);
  const live = lines.filter(({ booking }) => asksForStems(booking, now));
  const lapsed = lines.filter(({ booking }) => isLapsed(booking, now));
  const toCome = live.filter(({ booking }) => booking.eventOn >= now);
  const done = live.filter(({ booking }) => booking.eventOn < now);
  return (
    <>
      <CountedMarks />
      <FlowerHeads />
      <SeasonHead title={`Bookings of ${year}`} seasonYear={year} back="/bookings" />
      {lines.length === 0 ? (
        <Empty title="No bookings yet">
          <p>Enter the first one: pieces with their counts are enough, the recipes fill in the stems.</p>
          <p className="actions">
            <a className="button main" href="/bookings/new">
              Enter a booking
            </a>
            {mayOpen(roleNow(), "/farm/files") && (
              <a className="button" href="/farm/files#import">
                Bring in CSV files
              </a>
            )}
          </p>
        </Empty>
      ) : (
        <>
          <div className="cols bookings-top">
            <NextEvent lines={toCome} today={now} />
            <BookingSide toCome={toCome} done={done} />
          </div>
          <PromiseNews plan={plan} today={now} />
          {year === yearOf(now) && <CountsDue snapshot={plan.snapshot} today={now} />}
          <LapseNews snapshot={plan.snapshot} seasonYear={year} today={now} />
          <ShowFilter show={show} lines={toCome} />
          <p className="note">
            One bloom is twenty stems, one ring twenty short; then the stems asked and what is short.
          </p>
          <BookingMonths lines={done} title="gone by" />
          <BookingMonths lines={toCome.filter(ofShow(show))} />
          <LapsedBookings lines={lapsed} today={now} />
          <BookingMonths lines={lines.filter(({ booking }) => booking.status === "cancelled")} title="cancelled" />
        </>
      )}
    </>
  );
}

/** The season's bookings with what they ask and get, in order of the event. */
function linesOf(plan: Plan): BookingLine[] {
  const coverage = coverageByBooking(plan.match, plan.gaps);
  const colours = bookingColours(plan.match);
  return plan.snapshot.bookings
    .filter(({ eventOn }) => yearOf(eventOn) === plan.seasonYear)
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1))
    .map((booking) => ({
      booking,
      needStems: coverage.get(booking.id)?.needStems ?? 0,
      shortStems: coverage.get(booking.id)?.shortStems ?? 0,
      colours: colours.get(booking.id) ?? [],
    }));
}
