import { Fragment } from "react";
import { addDays, type Day, inFull, isoWeekOf, mondayOf, weekInWords, withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { OpenDate } from "#lib/plan/road/open-dates";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";
import { aboutCount, aboutStems } from "./about-stems";

type Props = { date: OpenDate; bookings: readonly Booking[]; today: Day };

/** The answer to somebody on the phone: what is left that day, in which colours, and who has booked that week. */
export function DayAnswer({ date, bookings, today }: Props) {
  const { day, poorYearStems, promisedFocalStems, shortFocalStems } = date;
  const about = aboutStems(date);
  const sureStems = aboutCount(poorYearStems);
  return (
    <section className={about.stems > 0 ? "notice good" : "notice bad"} aria-labelledby="answer">
      <h2 id="answer">{inFull(day)}</h2>
      <p className="answer">
        {about.stems > 0 ? (
          <>
            {sureStems > 0 ? (
              <>
                <strong className="good-word">You can promise about {countOf(sureStems, "focal stem")}</strong>: a poor
                year, one in ten, leaves as many.
              </>
            ) : (
              <strong className="short-word">Promise none: a poor year, one in ten, leaves nothing.</strong>
            )}{" "}
            Likely about {inWholes(about.stems)}:{" "}
            {about.byColour.map(({ colour, stems }, index) => (
              <Fragment key={colour}>
                {index > 0 && ", "}
                <span className="unbroken">
                  {inWholes(stems)} <ColourWord colour={colour} />
                </span>
              </Fragment>
            ))}
            .
          </>
        ) : (
          <strong className="short-word">No focal stems left.</strong>
        )}{" "}
        {bookings.length === 0
          ? "Nothing is booked that week."
          : `${countOf(bookings.length, "booking")} that week already.`}
      </p>
      {shortFocalStems > 0 && (
        <p className="short-word">
          That week is short already: {inWholes(shortFocalStems)} of the {countOf(promisedFocalStems, "focal stem")}{" "}
          promised, for want of the colours or because others have a better claim.
        </p>
      )}
      {day < today && <p className="soft">This day is past.</p>}
      {bookings.length > 0 && (
        <ul className="reasons">
          {bookings.map(({ id, client, eventOn, status }) => (
            <li key={id}>
              {withWeekday(eventOn)}: <a href={`/bookings/${id}`}>{client}</a>, {status}
            </li>
          ))}
        </ul>
      )}
      <div className="actions">
        <a className="button main" href={`/bookings/new?on=${day}`}>
          Enter a booking for this day
        </a>
        <a className="button" href={`/dates?on=${addDays(day, -7)}`}>
          ← a week earlier
        </a>
        <a className="button" href={`/dates?on=${addDays(day, 7)}`}>
          a week later →
        </a>
        <a href={`/weeks/${isoWeekOf(day)}`}>{weekInWords(mondayOf(day))}</a>
      </div>
    </section>
  );
}
