import type { Metadata } from "next";
import { toDayNumber, withWeekday } from "#lib/domain/day";
import type { Offer } from "#lib/plan/road/offers";
import { inWholes } from "#lib/plan/words/numbers";
import { buyersInWords, offersLead, offersText, whenInWords } from "#lib/plan/words/offer-words";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { ColourWord } from "../../ui/colour-words";
import { CopyButton } from "../../ui/copy-button.client";
import { PrintButton } from "../../ui/print-button.client";
import { type Column, Table } from "../../ui/table";
import { loadOffers } from "./load-offers";

export const metadata: Metadata = { title: "Offers" };

/** What can be offered to buyers today, sure of even in a poor year: to copy, to print, or as CSV. */
export default function OffersPage() {
  const day = today();
  const now = toDayNumber(day);
  const some = loadOffers();
  const buyers = buyersInWords(loadFarm().standingOrders, day);
  return (
    <>
      <p className="crumb no-print">
        <a href="/buying">Buying</a>
      </p>
      <h1>Offers, {withWeekday(day)}</h1>
      <p className="lead">{offersLead(some, now)}</p>
      <p className="soft">
        {buyers === null ? (
          <>
            Nobody buys every week yet: enter a <a href="/orders">standing order</a> for a market or a florist.
          </>
        ) : (
          `For ${buyers}: what their standing orders take is not in it.`
        )}
      </p>
      {some.length > 0 && (
        <>
          <p className="row no-print">
            <CopyButton text={offersText(some, now)} label="Copy the offers" />
            <PrintButton />
            <a className="button" href="/buying/offers/csv" download>
              As CSV
            </a>
          </p>
          <Table
            caption="Offers"
            isCaptionHidden
            isNarrow
            columns={COLUMNS}
            rows={some}
            keyOf={({ crop, colour, stemLength, readyDay }) => `${crop.id} ${colour} ${stemLength} ${readyDay}`}
          />
        </>
      )}
    </>
  );
}

const COLUMNS: readonly Column<Offer>[] = [
  {
    head: "Flower",
    kind: "name",
    cell: ({ crop, colour, stemLength, readyDay, keepsUntil }) => (
      <>
        {crop.name} <ColourWord colour={colour} />
        <br />
        <small>
          {stemLength && `${stemLength} stem, `}
          {whenInWords({ readyDay, keepsUntil })}
        </small>
      </>
    ),
  },
  {
    head: "Bunches",
    kind: "number",
    cell: ({ bunchCount, crop }) => `${inWholes(bunchCount)} × ${inWholes(crop.bunchStems.count)}`,
  },
  { head: "Stems", kind: "number", cell: ({ stems }) => inWholes(stems) },
];
