import { withWeekday } from "#lib/domain/day";
import type { ComparedBooking } from "#lib/plan/what-if/comparison";
import { countOf } from "../../ui/numbers";
import type { Column } from "./column";
import { Difference, SHORT } from "./difference-words";

type Props = { columns: readonly Column[]; bookings: readonly ComparedBooking[]; knownIds: ReadonlySet<number> };

/** The bookings that a what-if covers better or worse than now, adds or drops. `knownIds` are those that the farm has. */
export function ComparedBookings({ columns, bookings, knownIds }: Props) {
  const changed = bookings.filter(({ shortStems }) => shortStems.some((short) => short !== shortStems[0]));
  if (changed.length === 0) return <p>No booking is covered better or worse in any of them.</p>;
  return (
    <table className="cards-on-phone">
      <caption>Bookings that change</caption>
      <thead>
        <tr>
          <th scope="col">Booking</th>
          {columns.map(({ id, name }) => (
            <th scope="col" className="number" key={id}>
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {changed.map(({ bookingId, client, eventOn, shortStems }) => (
          <tr key={bookingId}>
            <th scope="row">
              {knownIds.has(bookingId) ? <a href={`/bookings/${bookingId}`}>{client}</a> : client}{" "}
              <span className="soft small">{withWeekday(eventOn)}</span>
            </th>
            {shortStems.map((short, index) => (
              <td className="number" data-label={columns[index].name} key={columns[index].id}>
                <Covered shortStems={short} />
                {index > 0 && short !== null && shortStems[0] !== null && (
                  <>
                    {" "}
                    <span className="beneath">
                      <Difference difference={short - shortStems[0]} sense={SHORT} />
                    </span>
                  </>
                )}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Covered({ shortStems }: { shortStems: number | null }) {
  if (shortStems === null) return <span className="soft">not in it</span>;
  if (shortStems === 0) return <span className="good-word">covered</span>;
  return <span className="short-word">{countOf(shortStems, "stem")} short</span>;
}
