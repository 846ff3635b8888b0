import { withWeekday } from "#lib/domain/day";
import { coverageByBooking } from "#lib/plan/road/coverage";
import type { Plan } from "#lib/plan/road/plan";
import { ColourWords } from "../ui/colour-words";
import { CoverBar } from "../ui/cover-bar";
import { inWholes } from "../ui/numbers";

/** Bookings with their day, palette and coverage, in the order given. */
export function BookingRows({ plan, bookingIds }: { plan: Plan; bookingIds: readonly number[] }) {
  const coverage = coverageByBooking(plan.match, plan.gaps);
  const bookings = new Map(plan.snapshot.bookings.map((booking) => [booking.id, booking]));
  return (
    <table className="cards-on-phone">
      <thead>
        <tr>
          <th scope="col">Event</th>
          <th scope="col">Client</th>
          <th scope="col">Status</th>
          <th scope="col">Palette</th>
          <th scope="col" className="number">
            Needed, stems
          </th>
          <th scope="col">Coverage</th>
          <th scope="col">Paper</th>
        </tr>
      </thead>
      <tbody>
        {bookingIds.map((id) => {
          const booking = bookings.get(id);
          if (!booking) return null;
          const covered = coverage.get(id);
          return (
            <tr key={id} className={covered?.shortStems ? "short-row" : undefined}>
              <td data-label="Event">{withWeekday(booking.eventOn)}</td>
              <th scope="row">
                <a href={`/bookings/${id}`}>{booking.client}</a>
              </th>
              <td data-label="Status">
                <span className="tag">{booking.status}</span>
              </td>
              <td data-label="Palette">
                <ColourWords colours={booking.palette} />
              </td>
              <td className="number" data-label="Needed">
                {inWholes(covered?.needStems ?? 0)}
              </td>
              <td data-label="Coverage">
                {covered ? (
                  <CoverBar needStems={covered.needStems} shortStems={covered.shortStems} />
                ) : (
                  <span className="soft">asks for nothing</span>
                )}
              </td>
              <td data-label="Paper">
                <a href={`/picking?booking=${id}`} aria-label={`Pick list of ${booking.client}`}>
                  pick list
                </a>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
