import { inShort } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { benchSplit } from "#lib/plan/road/bench-split";
import type { PickLine } from "#lib/plan/road/pick-list";
import { benchDaysInWords } from "#lib/plan/words/event-days-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";

/** How the day's stems are shared on the bench: a variety a line, with what each wedding has of it. */
type Props = { lines: readonly PickLine[]; farm: Farm; isOpen?: boolean };

export function Bench({ lines, farm, isOpen = false }: Props) {
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
      <ul className="small">
        {[...new Map(shares.flatMap(({ parts }) => parts).map(({ booking }) => [booking.id, booking])).values()].map(
          (booking) => {
            const days = benchDaysInWords(booking, farm);
            return days && <li key={booking.id}>{`${booking.client}: ${days}`}</li>;
          },
        )}
      </ul>
    </details>
  );
}
