import { type Day, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { isOnTheWay, type PurchaseSlip, purchaseLines, purchaseSlips } from "#lib/plan/road/purchase-slips";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { arrivalInWords, flowerInWords, openingInWords } from "#lib/plan/words/purchase-words";
import { ReceiveForm } from "./receive-form";

/** Days ahead that a receiver thinks of. */
const DAYS_AHEAD = 7;

/** What suppliers bring today and in the days ahead, for whoever receives it: without prices, what is due with its form. Nothing when nothing is. */
export function Arrivals({ snapshot, today }: { snapshot: Snapshot; today: Day }) {
  const now = toDayNumber(today);
  const slips = purchaseSlips(purchaseLines(snapshot).filter(isOnTheWay)).filter(({ day }) => day <= now + DAYS_AHEAD);
  if (slips.length === 0) return null;
  return (
    <section aria-labelledby="arrivals">
      <h2 id="arrivals">To arrive</h2>
      <ul className="cut-rows">
        {slips.map((slip) => (
          <li key={`${slip.supplier} ${slip.day}`} className="card">
            <h3>{slip.supplier}</h3>
            <ul className="done-rows">
              {slip.lines.map((line) => (
                <li key={line.purchase.id}>
                  <span>
                    <b>{inWholes(line.orderedStems)}</b> {flowerInWords(line)}
                  </span>
                  <small>
                    {[arrivalInWords(line, now), openingInWords(line.purchase.daysToOpen)]
                      .filter((part) => part !== "")
                      .join("; ")}
                  </small>
                </li>
              ))}
            </ul>
            {slip.day <= now && <ReceiveForm slip={slip} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What is due today or was due before, on one line for the day's screen, with the way to where it is received. */
export function ArrivalsDue({ snapshot, today }: { snapshot: Snapshot; today: Day }) {
  const now = toDayNumber(today);
  const due = purchaseSlips(purchaseLines(snapshot).filter(isOnTheWay)).filter(({ day }) => day <= now);
  if (due.length === 0) return null;
  const flowers = due.reduce((sum, { lines }) => sum + lines.length, 0);
  return (
    <p className="notice">
      <b>{countOf(flowers, "flower")}</b> to arrive from {suppliersOf(due)}. <a href="/farm/cooler">Receive them</a>
    </p>
  );
}

const suppliersOf = (slips: readonly PurchaseSlip[]): string =>
  [...new Set(slips.map(({ supplier }) => supplier))].join(", ");
