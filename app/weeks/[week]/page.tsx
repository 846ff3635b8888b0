import type { Metadata } from "next";
import { notFound } from "next/navigation";
import {
  addDays,
  inFull,
  inShort,
  isoWeekOf,
  isoWeekSchema,
  mondayOfIsoWeek,
  weekInWords,
  yearOf,
} from "#lib/domain/day";
import { cutFinder } from "#lib/plan/road/limiting-cut";
import { BookingRows } from "../../bookings/booking-rows";
import { loadPlan } from "../../load";
import { GapCard } from "../../season/gap-card";

import { RoleTable } from "../../season/role-table";

type Props = { params: Promise<{ week: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const week = isoWeekSchema.safeParse((await params).week);
  return { title: week.success ? weekInWords(mondayOfIsoWeek(week.data)) : "No such week" };
}

/** One week: its bookings, its gaps with their reasons, and what could cover them. */
export default async function WeekPage({ params }: Props) {
  const parsed = isoWeekSchema.safeParse((await params).week);
  if (!parsed.success) notFound();
  const monday = mondayOfIsoWeek(parsed.data);
  // A week that straddles New Year lies in two seasons: the one with an event in it is shown.
  const seasons = [...new Set([yearOf(monday), yearOf(addDays(monday, 6))])].map((year) => {
    const plan = loadPlan(year);
    return { plan, week: plan.weeks.find((row) => row.week === parsed.data) };
  });
  const { plan, week } = seasons.find(({ week }) => week && week.bookingIds.length > 0) ?? seasons[0];
  const cutOf = cutFinder(plan.match);
  const gaps = (week?.gapIndexes ?? []).map((index) => plan.gaps[index]);
  return (
    <>
      <p className="crumb row">
        <a href="/">Season</a>
        <a href={`/weeks/${isoWeekOf(addDays(monday, -7))}`}>← {weekInWords(addDays(monday, -7))}</a>
        <a href={`/weeks/${isoWeekOf(addDays(monday, 7))}`}>{weekInWords(addDays(monday, 7))} →</a>
      </p>
      <h1>{weekInWords(monday)}</h1>
      <p className="soft">
        ISO week {parsed.data}: {inShort(monday)} to {inFull(addDays(monday, 6))}
      </p>
      {week ? <RoleTable roles={week.roles} /> : <p>Nothing is asked and nothing blooms in this week.</p>}
      <h2>Bookings of the week</h2>
      {week && week.bookingIds.length > 0 ? (
        <BookingRows
          plan={plan}
          bookings={week.bookingIds.flatMap((id) => plan.snapshot.bookings.filter((booking) => booking.id === id))}
        />
      ) : (
        <p>
          No event is booked. <a href="/bookings/new">Enter a booking</a>
        </p>
      )}
      <h2>Gaps</h2>
      {gaps.length === 0 ? (
        <p className="good-word">Nothing is short.</p>
      ) : (
        <ul className="cards">
          {gaps.map((gap) => (
            <GapCard key={gap.needIndex} gap={gap} plan={plan} cut={cutOf(gap.needIndex)} />
          ))}
        </ul>
      )}
      {gaps.some((gap) => gap.need.role === "focal") && (
        <p>
          Beds kept in the ground over winter bloom weeks earlier:{" "}
          <a href="/keep-or-dig">see which beds would cover the gap</a>.
        </p>
      )}
    </>
  );
}
