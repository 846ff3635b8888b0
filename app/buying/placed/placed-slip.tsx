import type { ReactNode } from "react";
import { toDay, withWeekday } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { isOnTheWay, type PurchaseLine, type PurchaseSlip, purchaseTotals } from "#lib/plan/road/purchase-slips";
import { countOf, inMoney, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { arrivalInWords, flowerInWords, openingInWords, purchaseText } from "#lib/plan/words/purchase-words";
import { CopyButton } from "../../ui/copy-button.client";
import { MissedEvent } from "./missed-event";

export type PlacedSlipProps = {
  slip: PurchaseSlip;
  farm: Farm;
  /** A day number. */
  today: number;
  /** What can be done with a line, and under all of them. */
  actionOf: (line: PurchaseLine) => ReactNode;
  children?: ReactNode;
};

/** What one supplier brings on one day: flower, colour, bunches and price a line, how it stands, and the sum. */
export function PlacedSlip({ slip, farm, today, actionOf, children }: PlacedSlipProps) {
  const { supplier, day, lines } = slip;
  const { bunchCount, costCents, unpricedCount } = purchaseTotals(lines);
  const isLate = lines.some(isOnTheWay) && day < today;
  return (
    <section className="slip" aria-label={`${supplier}, ${withWeekday(toDay(day))}`}>
      <header>
        <h3>{supplier}</h3>
        <span className={isLate ? "state late" : "soft"}>
          {isLate ? "was to come" : lines.some(isOnTheWay) ? "comes" : "came"} <b>{withWeekday(toDay(day))}</b>
        </span>
      </header>
      <ul>
        {lines.map((line) => (
          <li key={line.purchase.id} className="slip-line">
            <svg className={`gl f-${line.variety.colour}`} width="26" height="26" aria-hidden="true">
              <use href={`#r-${line.crop.usualRole}`} />
            </svg>
            <span className="slip-what">
              <b>{flowerInWords(line)}</b>
              <small>{aboutLine(line, today)}</small>
              <MissedEvent line={line} farm={farm} />
              {actionOf(line)}
            </span>
            <span className="slip-bunches">
              <b>{inWholes(line.purchase.bunchCount)}</b> × {inWholes(line.purchase.bunchStems)}
            </span>
            <span className="slip-price">{line.costCents === null ? "no price" : inMoney(line.costCents)}</span>
          </li>
        ))}
      </ul>
      <footer>
        <CopyButton text={purchaseText(slip)} label="Copy the order" what={`of ${supplier}, ${toDay(day)}`} />
        <span>
          <b>{countOf(bunchCount, "bunch", "bunches")}</b>, {inRoundMoney(costCents)}
          {unpricedCount > 0 && ` and ${countOf(unpricedCount, "flower")} without a price`}
        </span>
      </footer>
      {children}
    </section>
  );
}

const aboutLine = (line: PurchaseLine, today: number): string =>
  [
    arrivalInWords(line, today),
    openingInWords(line.purchase.daysToOpen),
    line.booking === null ? "for anybody" : `for ${line.booking.client}`,
  ]
    .filter((part) => part !== "")
    .join("; ");
