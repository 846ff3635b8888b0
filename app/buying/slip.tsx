import { toDay, withWeekday } from "#lib/domain/day";
import type { BuyIn } from "#lib/plan/road/buying";
import { type BuyingSlip, buyingTotals } from "#lib/plan/road/buying-slips";
import { orderText } from "#lib/plan/words/buying-words";
import { coloursInWords } from "#lib/plan/words/colour-words";
import { countOf, inMoney, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { CopyButton } from "../ui/copy-button.client";
import { ShareButton } from "../ui/share-button.client";
import { StateSign } from "../ui/state-sign";

/** The slip of one day of arrival: for whom, then flower, colours, bunches and price a line, and the sum. `isLate`: the day to order by is over. */
export function Slip({ slip, isLate = false }: { slip: BuyingSlip; isLate?: boolean }) {
  const { arriveBy, orderBy, bookings, lines } = slip;
  const { bunchCount, costCents } = buyingTotals(lines);
  return (
    <section className="slip" aria-labelledby={`slip-${arriveBy}`}>
      <header>
        <h3 id={`slip-${arriveBy}`}>
          {bookings.map(({ id, client }, index) => (
            <span key={id}>
              {index > 0 && ", "}
              <a href={`/bookings/${id}`}>{client}</a>
            </span>
          ))}
        </h3>
        <span className="soft">
          arrives <b>{withWeekday(toDay(arriveBy))}</b>
        </span>
        {isLate ? (
          <span className="state late">
            <StateSign of="late" />
            order by {withWeekday(toDay(orderBy))}
          </span>
        ) : (
          <span className="soft">order by {withWeekday(toDay(orderBy))}</span>
        )}
      </header>
      <ul>
        {lines.map((line) => (
          <Line key={line.gap.needIndex} line={line} isShared={bookings.length > 1} />
        ))}
      </ul>
      <footer>
        <CopyButton
          text={orderText(slip)}
          label="Copy the order"
          what={`that arrives ${withWeekday(toDay(arriveBy))}`}
        />
        <a className="button no-print" href={`/buying/order?day=${toDay(arriveBy)}`}>
          It is ordered
          <span className="visually-hidden">: what arrives {withWeekday(toDay(arriveBy))}</span>
        </a>
        <ShareButton
          title="Order"
          text={orderText(slip)}
          label="Share"
          what={`the order that arrives ${withWeekday(toDay(arriveBy))}`}
        />
        <span>
          <b>{countOf(bunchCount, "bunch", "bunches")}</b>, {inRoundMoney(costCents)}
        </span>
      </footer>
    </section>
  );
}

const Line = ({ line, isShared }: { line: BuyIn; isShared: boolean }) => {
  const { gap, crop, colour, bunchCount, leftOverStems, costCents } = line;
  const { need } = gap;
  return (
    <li className="slip-line">
      <svg className={colour ? `gl f-${colour}` : "gl plain-sign"} width="26" height="26" aria-hidden="true">
        <use href={`#r-${need.role}`} />
      </svg>
      <span className="slip-what">
        <b>{crop.name}</b>
        <small>
          {colour ?? "any colour"}
          {need.colours.length > 1 && `, asked in ${coloursInWords(need)}`}
          {isShared && `, ${need.booking.client}`}
          {need.booking.status !== "confirmed" && `, ${need.booking.status}`}; {inWholes(gap.shortStems)} short
          {leftOverStems > 0 && `, ${inWholes(leftOverStems)} left over`}
        </small>
      </span>
      <span className="slip-bunches">
        <b>{inWholes(bunchCount)}</b> × {inWholes(crop.bunchStems.count)}
      </span>
      <span className="slip-price">
        {inMoney(costCents)}
        {crop.buyInCents.mark !== "from memory" && <small>{crop.buyInCents.mark}</small>}
      </span>
    </li>
  );
};
