import type { Metadata } from "next";
import { yearOf } from "#lib/domain/day";
import { type CropReview, type SeasonReview, seasonReview } from "#lib/plan/learning/review/season-review";
import { inWholes } from "#lib/plan/words/numbers";
import {
  orderMoneyInWords,
  seasonMoneyInWords,
  seasonReviewLead,
  soldShareInWords,
} from "#lib/plan/words/season-review-words";
import { today } from "../../clock";
import { SeasonHeadByAddress } from "../../frame/season-head";
import { loadPlan } from "../../load";
import { PrintButton } from "../../ui/print-button.client";
import { type Column, Table } from "../../ui/table";
import { seasonAsked } from "../review/season-asked";

export const metadata: Metadata = { title: "Season review" };

/** What became of all that the season has cut: used, thrown away, sold, left, crop by crop. */
export default async function SeasonReviewPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const year = seasonAsked(await searchParams);
  const review = seasonReview(loadPlan(year));
  const money = seasonMoneyInWords(review);
  return (
    <>
      <p className="crumb">
        <a href={`/bookings/review?season=${year}`}>Review</a>
      </p>
      <SeasonHeadByAddress title={`What became of ${year}`} seasonYear={year} path="/bookings/season" />
      <p className="lead">{seasonReviewLead(review, year < yearOf(today()))}</p>
      {money && <p>{money}</p>}
      {review.crops.length > 0 && (
        <>
          <div className="actions no-print">
            <PrintButton />
            <a className="button" href={`/bookings/season/csv?season=${year}`} download>
              CSV
            </a>
          </div>
          <Table
            caption="Stems by crop"
            isCaptionHidden
            columns={columnsOf(review)}
            rows={review.crops}
            keyOf={({ crop }) => crop.id}
          />
          <p className="no-print">
            <a href={`/farm/year-end/how-true?season=${year}`}>How true the forecasts of {year} were</a>
          </p>
          <p className="note">
            Good stems are counted. A picking day that nobody recorded counts as cut as planned, so that what nobody
            asked for was not cut; what events threw away is known where they are reviewed.
          </p>
        </>
      )}
    </>
  );
}

/** What orders took and brought is told where there were any. */
function columnsOf({ total }: SeasonReview): Column<CropReview>[] {
  const stems = (head: string, of: Exclude<keyof CropReview, "crop">): Column<CropReview> => ({
    head,
    kind: "number",
    cell: (row) => inWholes(row[of]),
    foot: inWholes(total[of]),
  });
  const hasOrders = total.orderStems > 0;
  return [
    { head: "Crop", kind: "name", cell: ({ crop }) => crop.name, foot: "All crops" },
    stems("Cut", "cutStems"),
    stems("Used at events", "usedStems"),
    ...(hasOrders ? [stems("Standing orders", "orderStems")] : []),
    stems("Thrown away", "thrownAwayStems"),
    stems("Left", "leftStems"),
    { head: "Sold or used", kind: "number", cell: soldShareInWords, foot: soldShareInWords(total) },
    ...(hasOrders
      ? [{ head: "Orders bring", kind: "number", cell: orderMoneyInWords, foot: orderMoneyInWords(total) } as const]
      : []),
  ];
}
