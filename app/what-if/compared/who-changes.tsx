import { inShort } from "#lib/domain/day";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { Supposed } from "./compared-plans";

type Changed = Supposed["bookings"][number];

const SHOWN_COUNT = 5;

/** The bookings that go short, or are served, otherwise than now: who loses most first, then who gains most. `knownIds` are those that the farm has. */
export function WhoChanges({ bookings, knownIds }: { bookings: readonly Changed[]; knownIds: ReadonlySet<number> }) {
  const worse = bookings.filter((row) => apart(row) > 0).sort((a, b) => apart(b) - apart(a));
  const better = bookings.filter((row) => apart(row) < 0).sort((a, b) => apart(a) - apart(b));
  const inOrOut = bookings.filter(({ before, after }) => before === null || after === null);
  return (
    <div className="who-changes">
      <Bookings title="Who would go short" rows={worse} knownIds={knownIds} />
      <Bookings title="Who would be served better" rows={better} knownIds={knownIds} />
      <Bookings title="In and out" rows={inOrOut} knownIds={knownIds} />
    </div>
  );
}

/** Stems short more than now; 0 for a booking that is only in one of them. */
const apart = ({ before, after }: Changed): number => (before === null || after === null ? 0 : after - before);

type ListProps = { title: string; rows: readonly Changed[]; knownIds: ReadonlySet<number> };

function Bookings({ title, rows, knownIds }: ListProps) {
  if (rows.length === 0) return null;
  const list = (of: readonly Changed[]) => (
    <ul className="leaders">
      {of.map((row) => (
        <li key={row.bookingId}>
          <span>
            {knownIds.has(row.bookingId) ? <a href={`/bookings/${row.bookingId}`}>{row.client}</a> : row.client},{" "}
            {inShort(row.eventOn)}
          </span>
          <span className="dots" />
          <BookingChange row={row} />
        </li>
      ))}
    </ul>
  );
  return (
    <section>
      <h3>{title}</h3>
      {list(rows.slice(0, SHOWN_COUNT))}
      {rows.length > SHOWN_COUNT && (
        <details>
          <summary>{countOf(rows.length - SHOWN_COUNT, "booking")} more</summary>
          {list(rows.slice(SHOWN_COUNT))}
        </details>
      )}
    </section>
  );
}

function BookingChange({ row }: { row: Changed }) {
  const { before, after } = row;
  if (after === null) return <span>not in it</span>;
  if (before === null) return <span>{after === 0 ? "new, covered" : `new, ${inWholes(after)} short`}</span>;
  const stems = apart(row);
  return (
    <b className={stems > 0 ? "short-word" : "good-word"}>
      {stems > 0 ? "+" : "−"}
      {inWholes(Math.abs(stems))}
      <span className="visually-hidden"> stems short</span>
    </b>
  );
}
