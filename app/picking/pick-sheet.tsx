import { inFull, toDay } from "#lib/domain/day";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { PickTable, totalsInWords } from "./pick-table";

/** One picking day on one sheet of its own. */
const DaySheet = ({ day }: { day: PickDay }) => (
  <section className="sheet page" aria-labelledby={`day-${day.cutDay}`}>
    <h2 id={`day-${day.cutDay}`}>{inFull(toDay(day.cutDay))}</h2>
    <p>{totalsInWords(day.lines)}</p>
    <PickTable days={[day]} forBooking={false} />
  </section>
);

/** All that is cut for one booking, day after day in one table, on as few sheets as it needs. */
function BookingSheet({ days }: { days: readonly PickDay[] }) {
  const [{ booking }] = days[0].lines;
  return (
    <section className="sheet page" aria-labelledby="booking-sheet">
      <h2 id="booking-sheet">
        {booking.client}, {inFull(booking.eventOn)}
      </h2>
      <p>{totalsInWords(days.flatMap(({ lines }) => lines))}</p>
      <PickTable days={days} forBooking={true} />
    </section>
  );
}

/** The sheets of a choice: one for a booking, one a day otherwise. */
export function PickSheets({ days, forBooking }: { days: readonly PickDay[]; forBooking: boolean }) {
  if (days.length === 0) return null;
  return forBooking ? <BookingSheet days={days} /> : days.map((day) => <DaySheet key={day.cutDay} day={day} />);
}
