import { inShort } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import { lostStems, type MovedBooking } from "#lib/plan/road/moved-promises";
import { countOf } from "#lib/plan/words/numbers";
import { isToTell, movedInWords } from "#lib/plan/words/today-words";
import { loadFarm } from "../load";
import { StateSign } from "../ui/state-sign";
import { movedSinceYesterday } from "./since-yesterday";

/** Whose stems moved since yesterday, and who has to be told. */
export function Moved() {
  const moved = movedSinceYesterday();
  if (moved === null)
    return (
      <p className="small">
        More was written since yesterday than is kept: what moved since then cannot be told.{" "}
        <a href="/bookings">Bookings</a> say what is short.
      </p>
    );
  if (moved.length === 0) return null;
  const toTell = moved.filter(isToTell);
  const lost = moved.filter((one) => !isToTell(one) && lostStems(one) >= 0);
  const gained = moved.filter((one) => !isToTell(one) && lostStems(one) < 0);
  return (
    <section aria-labelledby="moved">
      <h2 id="moved">Moved since yesterday</h2>
      {toTell.length > 0 && (
        <p className="state short told">
          <StateSign of="short" />
          <span>
            Tell {toTell.length === 1 ? "this client" : "these clients"}, or find other stems: promised ones are gone.
          </span>
        </p>
      )}
      <MovedRows rows={[...toTell, ...lost]} />
      {gained.length > 0 && (
        <details className="fold">
          <summary>{countOf(gained.length, "booking")} with more stems than yesterday</summary>
          <MovedRows rows={gained} />
        </details>
      )}
    </section>
  );
}

function MovedRows({ rows }: { rows: readonly MovedBooking[] }) {
  const crops = new ById("crop", loadFarm().crops);
  return (
    <ul className="done-rows">
      {rows.map((row) => (
        <li key={row.booking.id}>
          <span>
            <a href={`/bookings/${row.booking.id}`}>{row.booking.client}</a>, {inShort(row.booking.eventOn)}:{" "}
            {movedInWords(row, (id) => crops.get(id).name)}.
          </span>
        </li>
      ))}
    </ul>
  );
}
