import { inWholes } from "#lib/plan/words/numbers";
import { mayOpen } from "../people/allowed";
import { roleNow } from "../people/who";
import type { BookingLine } from "./booking-line";
import { sumOf } from "./booking-months";

/** What can be done here, and the season's bookings added up. */
export function BookingSide({ lines }: { lines: readonly BookingLine[] }) {
  const covered = lines.filter(({ needStems, shortStems }) => needStems > 0 && shortStems === 0);
  const figures: readonly (readonly [string, number])[] = [
    ["Booked", lines.length],
    ["Covered in full", covered.length],
    ["Stems asked", sumOf(lines, "needStems")],
    ["Stems short", sumOf(lines, "shortStems")],
  ];
  return (
    <div className="bookings-side">
      <a className="button main" href="/bookings/new">
        Enter a booking
      </a>
      <a className="button" href="/enquiry">
        Answer an enquiry
      </a>
      {mayOpen(roleNow(), "/orders") && (
        <a className="button" href="/orders">
          Standing orders
        </a>
      )}
      <ul className="leaders">
        {figures.map(([name, count]) => (
          <li key={name}>
            {name}
            <span className="dots" />
            <b>{inWholes(count)}</b>
          </li>
        ))}
      </ul>
    </div>
  );
}
