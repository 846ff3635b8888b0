import type { Metadata } from "next";
import { addDays } from "#lib/domain/day";
import { openDates } from "#lib/plan/road/open-dates";
import { today } from "../clock";
import { SeasonLine } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadFarm, loadPlan, loadPoorYears } from "../load";
import { type AnswerLine, answerLines, type OtherDayView } from "./answer/answer-lines";
import { type EnquiryForm, formIn, isUnasked, readEnquiry } from "./asked-enquiry";
import { EnquiryDesk } from "./desk.client";
import { HeldLine } from "./held-line";
import { weekBookings } from "./week-bookings";

export const metadata: Metadata = { title: "Enquiry" };

/** The question of somebody on the phone: filled in, it answers as it is typed. Before that, what each Saturday of the season has left. */
export default async function EnquiryPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const asked = await searchParams;
  const form = formIn(asked);
  const year = await seasonYear();
  const { farm, bookings } = loadFarm();
  return (
    <>
      <HeldLine id={asked.held} bookings={bookings} />
      <EnquiryDesk
        key={String(asked.held)}
        initial={form}
        first={isUnasked(form) ? [] : firstLines(form)}
        holdUntil={addDays(today(), farm.holdDays)}
        saturdays={saturdaysLeft(year)}
        seasonYear={year}
        ownColours={farm.ownColours}
      >
        <SeasonLine farm={farm} seasonYear={year} back="/enquiry" />
      </EnquiryDesk>
    </>
  );
}

/** The answer and what could be done, so that they stand there before any script and nothing moves when the scripts come; other days follow. */
function firstLines(form: EnquiryForm): AnswerLine[] {
  const read = readEnquiry(form, loadFarm().farm);
  if (!read.ok) return [{ problems: read.problems }];
  const lines: AnswerLine[] = [];
  for (const line of answerLines(read.parsed, today())) {
    if ("otherDay" in line || "done" in line) break;
    lines.push(line);
  }
  return lines;
}

/** What each Saturday still to come has left, promised in poor years and likely. */
function saturdaysLeft(year: number): OtherDayView[] {
  const plan = loadPlan(year);
  const bookingsOf = weekBookings(plan.snapshot, today());
  const ahead = openDates(plan, loadPoorYears(year)).filter(({ day }) => day >= today());
  return ahead
    .slice(0, ahead.findLastIndex(({ focalStems }) => focalStems > 0) + 1)
    .map(({ day, poorYearStems, focalStems, byColour }) => ({
      day,
      promisedStems: poorYearStems,
      likelyStems: focalStems,
      colours: byColour.map((row) => ({ ...row, isKept: false })),
      booked: bookingsOf(day).map(({ client }) => client),
    }));
}
