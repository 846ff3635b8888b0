import type { Metadata } from "next";
import { inFull, mondayOfIsoWeek, toDay, toDayNumber, weekInWords } from "#lib/domain/day";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { byPickingDay, type PickChoice } from "#lib/plan/road/pick-sheets";
import { pickTextOfDay } from "#lib/plan/words/pick-text";
import { now as moment, today } from "../clock";
import { FieldList } from "../field/field-list.client";
import { listedBeds } from "../field/listed-beds";
import { Cautions } from "../frame/cautions";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadFarm, loadPlan } from "../load";
import { ShareButton } from "../ui/share-button.client";
import { BucketCare } from "./bucket-care";
import { choiceOf, queryOf } from "./choice";
import { loadLines } from "./load-lines";
import { PickSheets } from "./pick-sheet";
import { PickingIndex } from "./picking-index";

export const metadata: Metadata = { title: "Picking" };

/** What to cut, for whom: the index of days and bookings, or the list of the one chosen, ready to print. */
export default async function PickingPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const choice = choiceOf(await searchParams);
  const year = await seasonYear();
  if (!choice)
    return (
      <>
        <SeasonHead title={`Picking, season ${year}`} seasonYear={year} back="/picking" />
        <PickingIndex plan={loadPlan(year)} today={toDayNumber(today())} />
      </>
    );
  const lines = loadLines(choice);
  const days = byPickingDay(lines ?? []);
  return (
    <>
      <p className="crumb no-print">
        <a href="/picking">All picking days and bookings</a>
      </p>
      {days.length === 0 ? (
        <>
          <h1>Nothing to pick</h1>
          <p>
            {isEnquiry(choice) ? (
              <>
                Nothing is cut for an enquiry: hold or confirm it first.{" "}
                <a href={`/bookings/${"bookingId" in choice && choice.bookingId}`}>What it could have</a>
              </>
            ) : (
              <>
                No stems are matched for this {"bookingId" in choice ? "booking" : "day"}.{" "}
                <a href="/">See which weeks are short</a> and why.
              </>
            )}
          </p>
        </>
      ) : (
        <>
          <h1 className="no-print">
            {"day" in choice && `Pick list of ${inFull(choice.day as ReturnType<typeof toDay>)}`}
            {"week" in choice && `Pick lists, ${weekInWords(mondayOfIsoWeek(choice.week)).toLowerCase()}`}
            {"bookingId" in choice && `Pick list for ${days[0].lines[0].booking.client}`}
          </h1>
          <p className="actions">
            <a className="button main" href={`/picking/print?${queryOf(choice)}`}>
              Print view
            </a>
            <a className="button" href={`/picking/labels?${queryOf(choice)}`}>
              Bucket labels
            </a>
            <a className="button" href={`/picking/csv?${queryOf(choice)}`}>
              CSV file
            </a>
            <ShareButton title="Pick list" text={days.map(pickTextOfDay).join("\n\n")} label="Share" />
          </p>
          <Cautions crops={[...new Set((lines ?? []).map((line) => line.crop))]} />
          <FieldList
            madeAt={moment()}
            farmDay={today()}
            beds={bedsOf(lines ?? [])}
            cutDays={days.map(({ cutDay }) => toDay(cutDay))}
          >
            <PickSheets days={days} />
          </FieldList>
          <BucketCare />
        </>
      )}
    </>
  );
}

const bedsOf = (lines: readonly PickLine[]) =>
  listedBeds(
    lines.flatMap(({ stand }) =>
      stand.kind === "planting" ? [{ bedId: stand.planting.bed.id, place: placeOf(stand) }] : [],
    ),
  );

const isEnquiry = (choice: PickChoice): boolean =>
  "bookingId" in choice && loadFarm().bookings.some((row) => row.id === choice.bookingId && row.status === "enquiry");
