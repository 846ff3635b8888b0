import type { Metadata } from "next";
import { byPickingDay } from "#lib/plan/road/pick-sheets";
import { Cautions } from "../../frame/cautions";
import { BucketCare } from "../bucket-care";
import { choiceOf } from "../choice";
import { loadLines } from "../load-lines";
import { PaperActions } from "../paper-actions";
import { PickPaper } from "../pick-paper";

export const metadata: Metadata = { title: "Pick list to print" };

/** The pick list as it comes out of the printer, day after day. */
export default async function PrintPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const choice = choiceOf(await searchParams);
  const lines = (choice && loadLines(choice)) ?? [];
  return (
    <>
      <h1 className="visually-hidden">Pick list to print</h1>
      <PaperActions choice={choice} />
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
