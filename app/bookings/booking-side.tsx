import { inWholes } from "#lib/plan/words/numbers";
import { mayOpen } from "../people/allowed";
import { roleNow } from "../people/who";
import type { BookingLine } from "./booking-line";
import { sumOf } from "./booking-months";

type Props = { readonly toCome: readonly BookingLine[]; readonly done: readonly BookingLine[] };

/** What can be done here, and the bookings still to come added up; how many are done. */
export function BookingSide({ toCome: lines, done }: Props) {
  const covered = lines.filter(({ needStems, shortStems }) => needStems > 0 && shortStems === 0);
  const figures: readonly (readonly [string, number])[] = [
    [done.length > 0 ? "Still to come" : "Booked", lines.length],
    ["Covered in full", covered.length],
    ["Stems asked", sumOf(lines, "needStems")],
    ["Stems short", sumOf(lines, "shortStems")],
    ...(done.length > 0 ? [["Gone by", done.length] as const] : []),
  ];
  return (
    <div className="bookings-side">
      <a className="button main" href="/bookings/new">
        Enter a booking
      </a>
      <a className="button" href="/enquiry">
        Answer an enquiry
      </a>
      <a className="button" href="/bookings/review">
        Review past events
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
