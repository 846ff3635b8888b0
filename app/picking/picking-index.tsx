import { isoWeekOf, toDay, toDayNumber, withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { byPickingDay, type PickDay, pickTotals } from "#lib/plan/road/pick-sheets";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { byMonth } from "../ui/by-month";
import { Empty } from "../ui/empty";

/** Every picking day of the season with its stems, and every booking, a line each; the next day first, what is over and later months folded. */
export function PickingIndex({ plan, today }: { plan: Plan; today: number }) {
  const days = byPickingDay(plan.pickList);
  if (days.length === 0)
    return (
      <Empty title="Nothing to pick yet">
        <p>
          The pick list fills itself from bookings and beds: enter both, and each picking day shows what to cut for
          whom.
        </p>
        <a className="button main" href="/bookings/new">
          Enter a booking
        </a>
      </Empty>
    );
  const done = days.filter(({ cutDay }) => cutDay < today);
  const ahead = days.filter(({ cutDay }) => cutDay >= today);
  return (
    <>
      <Ways next={ahead[0]} />
      <div className="cols picking-index">
        <section aria-labelledby="by-day">
          <h2 id="by-day">By day</h2>
          {done.length > 0 && <Days title="Gone by" days={done} />}
          {byMonth(ahead, ({ cutDay }) => cutDay).map(({ month, rows }, index) => (
            <Days key={month} title={month} days={rows} isOpen={index === 0} />
          ))}
        </section>
        <Bookings plan={plan} today={today} />
      </div>
    </>
  );
}

const Ways = ({ next }: { next: PickDay | undefined }) => (
  <div className="actions">
    {next && (
      <>
        <a className="button main" href={`/picking?day=${toDay(next.cutDay)}`}>
          Next picking day: {withWeekday(toDay(next.cutDay))}
        </a>
        <a className="button" href={`/picking/print?week=${isoWeekOf(toDay(next.cutDay))}`}>
          Print its week
        </a>
        <a className="button" href={`/picking/labels?day=${toDay(next.cutDay)}`}>
          Its bucket labels
        </a>
      </>
    )}
    <a className="button" href="/picking/csv">
      Whole season as CSV
    </a>
    <a className="button" href="/picking/calendar">
      Calendar file
    </a>
  </div>
);

type DaysProps = { title: string; days: readonly PickDay[]; isOpen?: boolean };

const Days = ({ title, days, isOpen }: DaysProps) => (
  <details className="fold" open={isOpen}>
    <summary>
      {title}: {countOf(days.length, "picking day")}{" "}
      <small>{countOf(stemsOf(days.flatMap(({ lines }) => lines)), "stem")}</small>
    </summary>
    <ul className="index-lines">
      {days.map(({ cutDay, lines }) => (
        <li key={cutDay}>
          <a href={`/picking?day=${toDay(cutDay)}`}>{withWeekday(toDay(cutDay))}</a>
          <small>
            {countOf(new Set(lines.map(({ stand }) => placeOf(stand))).size, "bed")},{" "}
            {countOf(new Set(lines.map(({ booking }) => booking.id)).size, "booking")}
          </small>
          <b>{inWholes(stemsOf(lines))}</b>
        </li>
      ))}
    </ul>
  </details>
);

/** The bookings that are over in one fold, those ahead by month, the next month open. */
function Bookings({ plan, today }: { plan: Plan; today: number }) {
  const bookings = bookingsOf(plan.work.match, plan.seasonYear);
  const stemsFor = new Map<number, number>();
  for (const { booking, stems } of plan.pickList) stemsFor.set(booking.id, (stemsFor.get(booking.id) ?? 0) + stems);
  const done = bookings.filter(({ eventOn }) => toDayNumber(eventOn) < today);
  const ahead = bookings.filter(({ eventOn }) => toDayNumber(eventOn) >= today);
  return (
    <section aria-labelledby="by-booking">
      <h2 id="by-booking">By booking</h2>
      {done.length > 0 && <BookingFold title="Gone by" bookings={done} stemsFor={stemsFor} />}
      {byMonth(ahead, ({ eventOn }) => toDayNumber(eventOn)).map(({ month, rows }, index) => (
        <BookingFold key={month} title={month} bookings={rows} stemsFor={stemsFor} isOpen={index === 0} />
      ))}
    </section>
  );
}

type BookingFoldProps = {
  title: string;
  bookings: readonly Booking[];
  stemsFor: ReadonlyMap<number, number>;
  isOpen?: boolean;
};

function BookingFold({ title, bookings, stemsFor, isOpen }: BookingFoldProps) {
  const stemsOfOne = (id: number) => stemsFor.get(id) ?? 0;
  return (
    <details className="fold" open={isOpen}>
      <summary>
        {title}: {countOf(bookings.length, "booking")}{" "}
        <small>
          {countOf(
            bookings.reduce((sum, { id }) => sum + stemsOfOne(id), 0),
            "stem",
          )}
        </small>
      </summary>
      <ul className="index-lines">
        {bookings.map(({ id, client, eventOn }) => (
          <li key={id}>
            <a href={`/picking?booking=${id}`}>{client}</a>
            <small>{withWeekday(eventOn)}</small>
            <b>{inWholes(stemsOfOne(id))}</b>
          </li>
        ))}
      </ul>
    </details>
  );
}

const stemsOf = (lines: readonly PickLine[]): number => pickTotals(lines).stems;
