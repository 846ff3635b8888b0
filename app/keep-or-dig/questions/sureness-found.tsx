import { withWeekday } from "#lib/domain/day";
import type { ObservedChance } from "#lib/maths/observed-chance";
import type { BookingSureness, KeepSureness } from "#lib/plan/chance/keep-sureness";
import { countOf, inPercent, inRoundMoney, inTenths, inWholes } from "../../ui/numbers";

/** Events of early summer, which beds kept in the ground are kept for. */
const isEarlySummer = (eventOn: string): boolean => ["06", "07"].includes(eventOn.slice(5, 7));

/** "87 % ± 1.1 %": a chance as observed, with its standard error. */
const chanceInWords = ({ share, standardError }: ObservedChance): string =>
  `${inPercent(share)} ± ${inTenths(standardError * 100)} %`;

/** What the sampled seasons say. `isSame`: nothing is kept, so there is nothing to beat. */
export function SurenessFound({ sureness, isSame }: { sureness: KeepSureness; isSame: boolean }) {
  const { seasonCount, cheaperChance, sameChance, differenceCents, focalShortStems } = sureness;
  const early = sureness.bookings.filter(({ eventOn }) => isEarlySummer(eventOn));
  const shown = early.length > 0 ? early : sureness.bookings;
  return (
    <>
      <p className="notice" role="status">
        {isSame ? (
          <>No bed is ticked: these are {countOf(seasonCount, "season")} with every bed dug.</>
        ) : (
          <>
            In <strong>{chanceInWords(cheaperChance)}</strong> of {countOf(seasonCount, "sampled season")} these beds
            cost less than digging all
            {sameChance.share > 0 && <>, and in {inPercent(sameChance.share)} the same</>}. On average the season costs{" "}
            <strong>{inRoundMoney(Math.abs(differenceCents))}</strong> {differenceCents <= 0 ? "less" : "more"} (±{" "}
            {inRoundMoney(sureness.differenceStandardErrorCents)} standard error).
          </>
        )}
      </p>
      <table>
        <caption>Focal stems short in the season</caption>
        <thead>
          <tr>
            <th scope="col">Beds</th>
            <th scope="col" className="number">
              Low
            </th>
            <th scope="col" className="number">
              Likely
            </th>
            <th scope="col" className="number">
              High
            </th>
          </tr>
        </thead>
        <tbody>
          {focalShortStems.map(({ low, likely, high }, index) => (
            <tr key={index === 0 ? "dug" : "kept"}>
              <th scope="row">{index === 0 ? "Every bed dug" : "As ticked"}</th>
              <td className="number">{inWholes(low)}</td>
              <td className="number">{inWholes(likely)}</td>
              <td className="number">{inWholes(high)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">One season in ten stays below low, one in ten goes above high.</p>
      <BookingChances bookings={shown} isEarly={early.length > 0} />
    </>
  );
}

const BookingChances = ({ bookings, isEarly }: { bookings: readonly BookingSureness[]; isEarly: boolean }) => (
  <table className="cards-on-phone">
    <caption>Chance that a booking is covered{isEarly ? ", June and July" : ""}</caption>
    <thead>
      <tr>
        <th scope="col">Event</th>
        <th scope="col">Booking</th>
        <th scope="col" className="number">
          Focal, every bed dug
        </th>
        <th scope="col" className="number">
          Focal, as ticked
        </th>
        <th scope="col" className="number">
          Every stem, every bed dug
        </th>
        <th scope="col" className="number">
          Every stem, as ticked
        </th>
      </tr>
    </thead>
    <tbody>
      {bookings.map(({ bookingId, client, eventOn, covered, focalCovered }) => (
        <tr key={bookingId}>
          <td data-label="Event">{withWeekday(eventOn)}</td>
          <th scope="row">
            <a href={`/bookings/${bookingId}`}>{client}</a>
          </th>
          <ChancePair chances={focalCovered} of="Focal" />
          <ChancePair chances={covered} of="Every stem" />
        </tr>
      ))}
    </tbody>
  </table>
);

const ChancePair = ({ chances, of }: { chances: BookingSureness["focalCovered"]; of: string }) => (
  <>
    <td className="number" data-label={`${of}, every bed dug`}>
      {chances ? chanceInWords(chances[0]) : "asks for none"}
    </td>
    <td className="number" data-label={`${of}, as ticked`}>
      {chances ? <Change before={chances[0]} after={chances[1]} /> : "asks for none"}
    </td>
  </>
);

const Change = ({ before, after }: { before: ObservedChance; after: ObservedChance }) => (
  <>
    <strong>{chanceInWords(after)}</strong>
    {isClearly(before, after) && (
      <span className={after.share > before.share ? "good-word" : "short-word"}>
        {after.share > before.share ? " better" : " worse"}
      </span>
    )}
  </>
);

/** Further apart than twice their standard errors together. */
const isClearly = (before: ObservedChance, after: ObservedChance): boolean =>
  Math.abs(after.share - before.share) > 2 * Math.hypot(before.standardError, after.standardError);
