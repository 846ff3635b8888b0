import { inFull, inShort, toDay } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { isDelivery } from "#lib/plan/road/orders";
import { placeOf } from "#lib/plan/road/pick-list";
import { bookingsOfLines, type PickPlace, type PickRow, pickPlaces } from "#lib/plan/road/pick-rows";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { bunchesInWords } from "#lib/plan/words/bunch-words";
import { inWholes } from "#lib/plan/words/numbers";
import { sprayOf } from "../field/spray-of";
import { UnlessClosed } from "../field/unless-closed.client";
import { LinkIfTheirs } from "../people/link-if-theirs";
import { ColourWord } from "../ui/colour-words";
import { Tie } from "./tie";
import { totalsInWords } from "./totals-in-words";

/** What to cut day by day, bed by bed, as it is walked. */
export const PickSheets = ({ days }: { days: readonly PickDay[] }) =>
  days.map((day) => <DaySheet key={day.cutDay} day={day} />);

function DaySheet({ day: { cutDay, lines } }: { day: PickDay }) {
  const bookings = bookingsOfLines(lines);
  return (
    <section className="pick-day" aria-labelledby={`day-${cutDay}`}>
      <h2 id={`day-${cutDay}`}>{inFull(toDay(cutDay))}</h2>
      <p>{totalsInWords(lines)}</p>
      <ul className="ties">
        {bookings.map((booking, index) => (
          <li key={booking.id}>
            <Tie index={index} />{" "}
            <LinkIfTheirs href={isDelivery(booking) ? "/orders" : `/bookings/${booking.id}`}>
              {booking.client}
            </LinkIfTheirs>
            , {inShort(booking.eventOn)}
          </li>
        ))}
      </ul>
      <ol className="pick-places">
        {pickPlaces(lines).map((place) => (
          <li key={placeOf(place.stand)} className="card">
            <Place place={place} bookings={bookings} cutOn={toDay(cutDay)} />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** A bed with what is cut in it: each crop once with its stage, a line for each variety. */
const Place = ({
  place: { stand, crops },
  bookings,
  cutOn,
}: {
  place: PickPlace;
  bookings: readonly Booking[];
  cutOn: string;
}) => (
  <>
    <h3 className="row apart">
      {stand.kind === "planting" ? (
        <LinkIfTheirs href={`/beds/${stand.planting.bed.id}`} className="bed-tag">
          {placeOf(stand)}
        </LinkIfTheirs>
      ) : (
        "Cooler"
      )}
      <small>{inWholes(crops.flat().reduce((sum, { stemsToCut }) => sum + stemsToCut, 0))} to cut</small>
    </h3>
    {stand.kind === "planting" ? (
      <UnlessClosed
        bedId={stand.planting.bed.id}
        name={placeOf(stand)}
        spray={sprayOf(stand.planting.bed)}
        cutOn={cutOn}
      >
        <Crops of={{ stand, crops }} bookings={bookings} />
      </UnlessClosed>
    ) : (
      <Crops of={{ stand, crops }} bookings={bookings} />
    )}
  </>
);

const Crops = ({ of: { stand, crops }, bookings }: { of: PickPlace; bookings: readonly Booking[] }) =>
  crops.map((rows) => (
    <div key={rows[0].crop.id}>
      <p className="note">
        <b>{rows[0].crop.name}.</b>{" "}
        {stand.kind === "cooler" ? "Cut already: take it out." : `${rows[0].crop.cutStage}.`}
      </p>
      <ul>
        {rows.map((row) => (
          <Line key={row.variety.id} row={row} bookings={bookings} />
        ))}
      </ul>
    </div>
  ));

const Line = ({
  row: { variety, crop, stems, stemsToCut, stretchedStems, stemsOfBooking },
  bookings,
}: {
  row: PickRow;
  bookings: readonly Booking[];
}) => (
  <li className="cut-line">
    <span>
      <b>{variety.name}</b> <ColourWord colour={variety.colour} />
      <small className="pick-for">
        {bookings.map((booking, index) => {
          const forBooking = stemsOfBooking.get(booking.id);
          return forBooking ? (
            <span key={booking.id}>
              <Tie index={index} /> {inWholes(forBooking)}
            </span>
          ) : null;
        })}
        <span>{keptInWords(stems, crop.bunchStems.count)}</span>
        {stretchedStems > 0 && <span className="short-word">{inWholes(stretchedStems)} held at a stretch</span>}
      </small>
    </span>
    <span className="pick-count">
      <span className="visually-hidden">cut </span>
      {inWholes(stemsToCut)}
    </span>
  </li>
);

/** "keep 23: 2 × 10 + 3", "keep 4 loose" */
const keptInWords = (stems: number, bunchStems: number): string =>
  stems < bunchStems
    ? `keep ${bunchesInWords(stems, bunchStems)}`
    : `keep ${inWholes(stems)}: ${bunchesInWords(stems, bunchStems)}`;
