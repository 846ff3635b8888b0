import { inShort, isoWeekOf, monthAndYear, toDay, withWeekday } from "#lib/domain/day";
import { placeOf } from "#lib/plan/road/pick-list";
import { byPickingDay, type PickDay, pickTotals } from "#lib/plan/road/pick-sheets";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { Empty } from "../ui/empty";
import { type Column, Table } from "../ui/table";

const COLUMNS: readonly Column<PickDay>[] = [
  {
    head: "Picking day",
    kind: "name",
    cell: ({ cutDay }) => <a href={`/picking?day=${toDay(cutDay)}`}>{withWeekday(toDay(cutDay))}</a>,
  },
  { head: "Stems", kind: "number", cell: ({ lines }) => inWholes(pickTotals(lines).stems) },
  { head: "Beds", kind: "number", cell: ({ lines }) => new Set(lines.map(({ stand }) => placeOf(stand))).size },
  { head: "Bookings", kind: "number", cell: ({ lines }) => new Set(lines.map(({ booking }) => booking.id)).size },
];

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
  const bookings = bookingsOf(plan.match, plan.seasonYear);
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
      {byMonth(days).map(({ month, ofMonth }) => (
        <details key={month} className="fold" open={next !== undefined && ofMonth.includes(next)}>
          <summary>
            {month}: {countOf(ofMonth.length, "picking day")}{" "}
            <small>{countOf(pickTotals(ofMonth.flatMap(({ lines }) => lines)).stems, "stem")}</small>
          </summary>
          <Table
            caption={`Picking days of ${month}`}
            isCaptionHidden
            columns={COLUMNS}
            rows={ofMonth}
            keyOf={({ cutDay }) => cutDay}
            isNarrow
          />
        </details>
      ))}
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

function byMonth(days: readonly PickDay[]): { month: string; ofMonth: PickDay[] }[] {
  const months = new Map<string, PickDay[]>();
  for (const day of days) {
    const month = monthAndYear(toDay(day.cutDay));
    months.set(month, [...(months.get(month) ?? []), day]);
  }
  return [...months].map(([month, ofMonth]) => ({ month, ofMonth }));
}
