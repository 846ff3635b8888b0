import type { Metadata } from "next";
import { yearOf } from "#lib/domain/day";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { today } from "../clock";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan, loadPoorYears } from "../load";
import { Empty } from "../ui/empty";
import { ProblemList } from "../ui/problem-list";
import { askedDay } from "./asked-day";
import { DatesView } from "./dates-view";
import { DayForm } from "./day-form";

export const metadata: Metadata = { title: "Can I take this date?" };

/** What each day has left for one more event: any day asked for, and every Saturday of its season. */
export default async function DatesPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const asked = askedDay(await searchParams);
  const day = asked.kind === "day" ? asked.day : null;
  const year = day === null ? await seasonYear() : yearOf(day);
  const plan = loadPlan(year);
  return (
    <>
      <p className="crumb">
        <a href="/bookings">Bookings</a>
      </p>
      <SeasonHead title="Can I take this date?" seasonYear={year} back="/dates" />
      <DayForm asked={asked} />
      <ProblemList title="The forecast is missing something" problems={plan.problems.map(barrenInWords)} />
      {plan.weeks.length === 0 ? (
        <Empty title={`Nothing blooms and nothing is booked in ${year}`}>
          <p>Say what is planted for {year} first; then every Saturday shows what it has left.</p>
          <p className="actions">
            <a className="button main" href="/beds">
              Plant the beds
            </a>
            {day && (
              <a className="button" href={`/bookings/new?on=${day}`}>
                Enter a booking all the same
              </a>
            )}
          </p>
        </Empty>
      ) : (
        <DatesView plan={plan} asked={day} today={today()} poor={loadPoorYears(plan.seasonYear)} />
      )}
    </>
  );
}
