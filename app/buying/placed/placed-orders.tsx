import type { ReactNode } from "react";
import { addDays, type Day, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import {
  isOnTheWay,
  type PurchaseLine,
  type PurchaseSlip,
  purchaseLines,
  purchaseSlips,
  purchaseTotals,
} from "#lib/plan/road/purchase-slips";
import { countOf, inRoundMoney } from "#lib/plan/words/numbers";
import { flowerInWords, onTheWayInWords } from "#lib/plan/words/purchase-words";
import { Form } from "../../ui/form.client";
import { PrintButton } from "../../ui/print-button.client";
import { PlacedSlip, type PlacedSlipProps } from "./placed-slip";
import { takeBackReceived } from "./purchase-actions";
import { ReceiveForm } from "./receive-form";

/** Days for which what arrived stays in sight. */
const DAYS_BACK = 21;

/** What was ordered: on the way, by supplier and day, and what arrived lately; with what can be done with each, and the form for an order that no gap asked for. */
export function PlacedOrders({ snapshot, today }: { snapshot: Snapshot; today: Day }) {
  const now = toDayNumber(today);
  const lines = purchaseLines(snapshot);
  const coming = lines.filter(isOnTheWay);
  const arrived = lines.filter(
    ({ purchase }) => purchase.arrivedOn !== null && purchase.arrivedOn >= addDays(today, -DAYS_BACK),
  );
  const { costCents } = purchaseTotals(coming);
  const of = { farm: snapshot.farm, today: now };
  return (
    <section aria-labelledby="on-the-way">
      <h2 id="on-the-way">On the way</h2>
      <p className="soft">
        {coming.length === 0
          ? "Nothing is on the way. What you order above is written down with a tap, counts as arriving and leaves the list."
          : `${onTheWayInWords(coming, now)} ${inRoundMoney(costCents)} in all.`}
      </p>
      {lines.length > 0 && (
        <p className="row no-print">
          <a className="button" href="/buying/csv" download>
            Orders as CSV
          </a>
          <PrintButton />
        </p>
      )}
      <Slips
        lines={coming}
        {...of}
        actionOf={({ purchase, ...line }) => (
          <a className="no-print" href={`/buying/order?purchase=${purchase.id}`}>
            Change or cancel<span className="visually-hidden">: {flowerInWords(line)}</span>
          </a>
        )}
        under={(slip) => (
          <details className="slip-receive no-print" open={slip.day <= now}>
            <summary>What came</summary>
            <ReceiveForm slip={slip} />
          </details>
        )}
      />
      {arrived.length > 0 && (
        <details className="fold">
          <summary>
            Arrived: {countOf(arrived.length, "flower")} <small>in the last {DAYS_BACK} days</small>
          </summary>
          <Slips
            lines={arrived}
            {...of}
            actionOf={({ purchase, ...line }) => (
              <Form
                action={takeBackReceived}
                submit="Take back"
                label={`Take back: ${flowerInWords(line)} came from ${purchase.supplier}`}
                hidden={{ purchaseId: purchase.id }}
                isQuiet
              />
            )}
          />
        </details>
      )}
      <p className="no-print">
        <a href="/buying/order">Another order</a>, for stems that no booking is short of, or of a variety with a name.
      </p>
    </section>
  );
}

type SlipsProps = Omit<PlacedSlipProps, "slip" | "children"> & {
  lines: readonly PurchaseLine[];
  /** What stands under the lines of a slip. */
  under?: (slip: PurchaseSlip) => ReactNode;
};

const Slips = ({ lines, under, ...of }: SlipsProps) => (
  <div className="slips">
    {purchaseSlips(lines).map((slip) => (
      <PlacedSlip key={`${slip.supplier} ${slip.day}`} slip={slip} {...of}>
        {under?.(slip)}
      </PlacedSlip>
    ))}
  </div>
);
