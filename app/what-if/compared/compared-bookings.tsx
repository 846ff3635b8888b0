import { withWeekday } from "#lib/domain/day";
import type { ComparedBooking } from "#lib/plan/what-if/comparison";
import { countOf } from "#lib/plan/words/numbers";
import { Table } from "../../ui/table";
import { SHORT } from "./difference-words";
import { type ComparedPlan, planColumns } from "./plan-columns";

type Props = { plans: readonly ComparedPlan[]; bookings: readonly ComparedBooking[]; knownIds: ReadonlySet<number> };

/** The bookings that a what-if covers better or worse than now, adds or drops. `knownIds` are those that the farm has. */
export function ComparedBookings({ plans, bookings, knownIds }: Props) {
  const changed = bookings.filter(({ shortStems }) => shortStems.some((short) => short !== shortStems[0]));
  if (changed.length === 0) return <p>No booking is covered better or worse in any of them.</p>;
  return (
    <Table
      caption="Bookings that change"
      columns={[
        {
          head: "Booking",
          kind: "name",
          cell: ({ bookingId, client, eventOn }) => (
            <>
              {knownIds.has(bookingId) ? <a href={`/bookings/${bookingId}`}>{client}</a> : client}{" "}
              <span className="soft small">{withWeekday(eventOn)}</span>
            </>
          ),
        },
        ...planColumns<ComparedBooking>(
          plans,
          ({ shortStems }, index) => <Covered shortStems={shortStems[index]} />,
          ({ shortStems: [first, ...others] }, index) => {
            const short = others[index - 1];
            return first === null || short === null ? null : { difference: short - first, sense: SHORT };
          },
        ),
      ]}
      rows={changed}
      keyOf={({ bookingId }) => bookingId}
    />
  );
}

function Covered({ shortStems }: { shortStems: number | null }) {
  if (shortStems === null) return <span className="soft">not in it</span>;
  if (shortStems === 0) return <span className="good-word">covered</span>;
  return <span className="short-word">{countOf(shortStems, "stem")} short</span>;
}
