import { inShort } from "#lib/domain/day";
import { benchSplit } from "#lib/plan/road/bench-split";
import type { PickLine } from "#lib/plan/road/pick-list";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";

/** How the day's stems are shared on the bench: a variety a line, with what each wedding has of it. */
export function Bench({ lines, isOpen = false }: { lines: readonly PickLine[]; isOpen?: boolean }) {
  const shares = benchSplit(lines);
  if (shares.length === 0) return null;
  const stems = shares.reduce((sum, share) => sum + share.stems, 0);
  return (
    <details className="fold" open={isOpen}>
      <summary>
        On the bench: {countOf(shares.length, "variety", "varieties")} <small>{countOf(stems, "good stem")}</small>
      </summary>
      <ul className="done-rows">
        {shares.map(({ variety, crop, stems: ofVariety, parts }) => (
          <li key={variety.id}>
            <span>
              <b>
                {inWholes(ofVariety)} {crop.name} {variety.name}
              </b>
              , <ColourWord colour={variety.colour} />
              <br />
              {parts.map(({ booking, stems: ofBooking }, index) => (
                <span key={booking.id}>
                  {index > 0 && ", "}
                  {inWholes(ofBooking)} {booking.client}, {inShort(booking.eventOn)}
                </span>
              ))}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
