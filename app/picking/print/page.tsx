import type { Metadata } from "next";
import { byPickingDay } from "#lib/plan/road/pick-sheets";
import { Cautions } from "../../frame/cautions";
import { PrintButton } from "../../ui/print-button.client";
import { BucketCare } from "../bucket-care";
import { choiceOf, queryOf } from "../choice";
import { loadLines } from "../load-lines";
import { PickPaper } from "../pick-paper";

export const metadata: Metadata = { title: "Pick list to print" };

/** The pick list as it comes out of the printer, day after day. */
export default async function PrintPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const choice = choiceOf(await searchParams);
  const lines = (choice && loadLines(choice)) ?? [];
  return (
    <>
      <h1 className="visually-hidden">Pick list to print</h1>
      <div className="actions">
        <PrintButton />
        <a className="button" href={choice ? `/picking?${queryOf(choice)}` : "/picking"}>
          Back
        </a>
      </div>
      {lines.length === 0 && <p>Nothing to pick.</p>}
      {lines.length > 0 && (
        <>
          <PickPaper days={byPickingDay(lines)} />
          <BucketCare />
        </>
      )}
      <Cautions crops={[...new Set(lines.map((line) => line.crop))]} open />
    </>
  );
}
