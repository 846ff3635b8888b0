import { wallClock } from "#db/journal/wall-time";
import { addDays, type Day, withWeekday, yearOf } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { soonInWords } from "#lib/plan/words/cut-words";
import { eventDaysInWords } from "#lib/plan/words/event-days-words";
import { now as moment } from "../clock";
import { loadPlan } from "../load";
import { Shortfall } from "./shortfall";

/** Days ahead that a grower in the field thinks of. */
const DAYS_AHEAD = 7;

/** What is delivered within a week, and what falls short of it, each with what could cover it. */
export function Soon({ now }: { now: Day }) {
  const plan = loadPlan(yearOf(now));
  const { match, gaps } = plan.work;
  const soon = [...coverageByBooking(match, gaps).values()]
    .filter(({ booking: { eventOn } }) => eventOn >= now && eventOn <= addDays(now, DAYS_AHEAD))
    .sort((a, b) => (a.booking.eventOn < b.booking.eventOn ? -1 : 1));
  if (soon.length === 0) return null;
  const worst = soon.find(({ shortStems }) => shortStems > 0)?.booking;
  return (
    <section aria-labelledby="soon">
      <h2 id="soon">This week’s events</h2>
      <p className="small">
        As of {wallClock(moment())}. What is short is what no bed, no cooler and no day left can give: sprayed beds are
        left out until their day, and the label and local rules govern.
      </p>
      <ul className="done-rows">
        {soon.map(({ booking, needs, needStems, shortStems }) => (
          <li key={booking.id}>
            <span>
              <a href={`/bookings/${booking.id}`}>{booking.client}</a>,{" "}
              {booking.eventOn === now ? <b>today</b> : withWeekday(booking.eventOn)}:{" "}
              {soonInWords(needStems, shortStems)}
              <br />
              <small>{eventDaysInWords(booking.eventOn, eventDaysOf(plan.snapshot.farm, booking))}</small>
            </span>
            {shortStems > 0 && (
              <Shortfall plan={plan} gaps={needs.flatMap(({ gap }) => gap ?? [])} isOpen={booking === worst} />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
