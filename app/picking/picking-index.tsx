import { inShort, isoWeekOf, toDay, withWeekday } from "#lib/domain/day";
import { placeOf } from "#lib/plan/road/pick-list";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import type { Plan } from "#lib/plan/road/plan";
import { Empty } from "../ui/empty";
import { countOf, inWholes } from "../ui/numbers";

/** Every picking day of the season with its stems, and every booking; the next day to pick first in sight. */
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
  const next = days.find((day) => day.cutDay >= today);
  const bookings = [...new Set(plan.match.needs.map((need) => need.booking))];
  return (
    <>
      <p className="actions">
        {next && (
          <a className="button main" href={`/picking?day=${toDay(next.cutDay)}`}>
            Next picking day: {withWeekday(toDay(next.cutDay))}
          </a>
        )}
        {next && (
          <a className="button" href={`/picking/print?week=${isoWeekOf(toDay(next.cutDay))}`}>
            Print its week
          </a>
        )}
        <a className="button" href="/picking/csv">
          Whole season as CSV
        </a>
        <a className="button" href="/picking/calendar">
          Calendar file
        </a>
      </p>
      <h2>By day</h2>
      <table>
        <caption className="visually-hidden">Picking days</caption>
        <thead>
          <tr>
            <th scope="col">Picking day</th>
            <th scope="col" className="number">
              Stems
            </th>
            <th scope="col" className="number">
              Beds
            </th>
            <th scope="col" className="number">
              Bookings
            </th>
          </tr>
        </thead>
        <tbody>
          {days.map(({ cutDay, lines }) => (
            <tr key={cutDay}>
              <th scope="row">
                <a href={`/picking?day=${toDay(cutDay)}`}>{withWeekday(toDay(cutDay))}</a>
              </th>
              <td className="number">{inWholes(pickTotals(lines).stems)}</td>
              <td className="number">{new Set(lines.map((line) => placeOf(line.origin))).size}</td>
              <td className="number">{new Set(lines.map((line) => line.booking.id)).size}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h2>By booking</h2>
      <ul className="cards">
        {bookings.map((booking) => (
          <li key={booking.id} className="card">
            <a href={`/picking?booking=${booking.id}`}>{booking.client}</a>
            <br />
            <span className="soft small">
              {inShort(booking.eventOn)},{" "}
              {countOf(pickTotals(plan.pickList.filter((line) => line.booking.id === booking.id)).stems, "stem")},{" "}
              <a href={`/weeks/${isoWeekOf(booking.eventOn)}`}>its week</a>
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
