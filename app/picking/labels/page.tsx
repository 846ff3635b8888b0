import type { Metadata } from "next";
import { byPickingDay } from "#lib/plan/road/pick-sheets";
import { loadFarm } from "../../load";
import { BucketLabels } from "../bucket-label";
import { choiceOf } from "../choice";
import { loadLines } from "../load-lines";
import { PaperActions } from "../paper-actions";

export const metadata: Metadata = { title: "Bucket labels" };

/** Labels for the buckets of a day, a week or a booking, as they come out of the printer. */
export default async function LabelsPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const choice = choiceOf(await searchParams);
  const lines = (choice && loadLines(choice)) ?? [];
  return (
    <>
      <h1 className="no-print">Bucket labels</h1>
      <p className="no-print soft">
        Ten to a page, 91 by 49 mm: cut along the dashes, punch the hole, tie to the bucket.
      </p>
      <PaperActions choice={choice} />
      {lines.length === 0 ? (
        <p>Nothing to pick, so no bucket to label.</p>
      ) : (
        <BucketLabels days={byPickingDay(lines)} farm={loadFarm().farm} />
      )}
    </>
  );
}
