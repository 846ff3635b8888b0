import { inShort } from "#lib/domain/day";
import type { Plan } from "#lib/plan/road/plan";
import type { HeldStems, StemHolder } from "#lib/plan/road/stem-holders";
import { countOf, inWholes } from "#lib/plan/words/numbers";

/** Bookings named before the rest is summed, and lots of stems named of each. */
const NAMED_COUNT = 6;
const LOTS_NAMED = 3;

type Props = { plan: Plan; holders: readonly StemHolder[]; own: StemHolder["booking"] };

/** Who has the stems that a gap asks for: the booking, its stems by variety and bed, and how many. */
export function HolderLines({ plan, holders, own }: Props) {
  const rest = holders.slice(NAMED_COUNT);
  return (
    <ul className="holders">
      {holders.slice(0, NAMED_COUNT).map(({ booking, stems, held }) => (
        <li key={booking.id}>
          {booking === own ? (
            <b>this booking</b>
          ) : (
            <span>
              going to <a href={`/bookings/${booking.id}`}>{booking.client}</a>{" "}
              <small>{inShort(booking.eventOn)}</small>
            </span>
          )}
          <span className="small">
            {held
              .slice(0, LOTS_NAMED)
              .map((lot) => lotInWords(plan, lot))
              .join("; ")}
            {held.length > LOTS_NAMED && ` and ${countOf(held.length - LOTS_NAMED, "more lot")}`}
          </span>
          <b className="number">{inWholes(stems)}</b>
        </li>
      ))}
      {rest.length > 0 && (
        <li>
          <span>{countOf(rest.length, "other booking")}</span>
          <span />
          <b className="number">{inWholes(rest.reduce((sum, { stems }) => sum + stems, 0))}</b>
        </li>
      )}
    </ul>
  );
}

/** "4 Peony Heron Cream, bed Orchard 1" */
function lotInWords({ match }: Plan, { supplyIndex, stand, stems }: HeldStems): string {
  const { variety, crop } = match.supplies[supplyIndex];
  const from = stand.kind === "planting" ? `bed ${stand.planting.bed.name}` : "the cooler";
  return `${inWholes(stems)} ${crop.name} ${variety.name}, ${from}`;
}
