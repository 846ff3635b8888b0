import { addDays, type Day, isoWeekOf, withWeekday, yearOf } from "#lib/domain/day";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { soonInWords } from "#lib/plan/words/cut-words";
import { loadPlan } from "../load";

/** Days ahead that a grower in the field thinks of. */
const DAYS_AHEAD = 7;

/** What is delivered within a week, and what falls short of it, each with the way to what could cover it. */
export function Soon({ now }: { now: Day }) {
  const { match, gaps } = loadPlan(yearOf(now));
  const soon = [...coverageByBooking(match, gaps).values()]
    .filter(({ booking: { eventOn } }) => eventOn >= now && eventOn <= addDays(now, DAYS_AHEAD))
    .sort((a, b) => (a.booking.eventOn < b.booking.eventOn ? -1 : 1));
  if (soon.length === 0) return null;
  return (
    <section aria-labelledby="soon">
      <h2 id="soon">This week’s events</h2>
      <ul className="done-rows">
        {soon.map(({ booking, needStems, shortStems }) => (
          <li key={booking.id}>
            <span>
              <a href={`/bookings/${booking.id}`}>{booking.client}</a>, {withWeekday(booking.eventOn)}:{" "}
              {soonInWords(needStems, shortStems)}
            </span>
            {shortStems > 0 && (
              <span className="row">
                <a href={`/weeks/${isoWeekOf(booking.eventOn)}`}>What could cover it</a>
                <a href="/buying">Buy in</a>
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
