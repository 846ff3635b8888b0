import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { addDays, isoWeekOf, mondayOfIsoWeek, toDayNumber, weekInWords, yearOf } from "#lib/domain/day";
import { isoWeekSchema } from "#lib/domain/day-schema";
import { bottleneckFinder } from "#lib/plan/road/bottleneck";
import { strainsBetween } from "#lib/plan/road/capacity";
import { stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { today } from "../../clock";
import { loadPlan } from "../../load";
import { CountedMarks } from "../../look/counted-row";
import { decisionOf } from "../../season/decision";
import { GapFold } from "../../season/gap-fold";
import { ringUnit } from "../../season/ring-unit";
import { StrainList } from "../../season/strain-list";
import { WeekBookings } from "../../season/week-bookings";
import { WeekLead } from "../../season/week-lead";

type Props = { params: Promise<{ week: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const week = isoWeekSchema.safeParse((await params).week);
  return { title: week.success ? weekInWords(mondayOfIsoWeek(week.data)) : "No such week" };
}

/** One week: what is short of what is needed, its bookings by role, its gaps with who has the stems and what could cover them. */
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
  const { snapshot, seasonYear } = plan;
  const bottleneckOf = bottleneckFinder(plan.match);
  const gaps = (week?.gapIndexes ?? [])
    .map((index) => plan.gaps[index])
    .sort((a, b) => b.shortStems - a.shortStems || a.needIndex - b.needIndex);
  const canKeep = keepingTime(snapshot, winterBeds(snapshot, seasonYear), seasonYear, today()) !== "over";
  const decision = decisionOf(plan);
  const unit = ringUnit(gaps[0]?.shortStems ?? 1);
  return (
    <>
      <CountedMarks />
      <nav className="row apart" aria-label="Weeks">
        <WeekLink plan={plan} monday={addDays(monday, -7)} before="← " />
        <a href="/">Season</a>
        <WeekLink plan={plan} monday={addDays(monday, 7)} after=" →" />
      </nav>
      {week ? (
        <WeekLead plan={plan} week={week} gaps={gaps} canKeep={canKeep} />
      ) : (
        <h1>{weekInWords(monday)}: nothing is asked and nothing blooms.</h1>
      )}
      <StrainList
        strains={strainsBetween(plan, toDayNumber(monday), toDayNumber(monday) + 6)}
        title="More than hands and room"
      />
      <section aria-labelledby="bookings">
        <h2 id="bookings">
          {week && week.bookingIds.length > 0 ? `${countOf(week.bookingIds.length, "booking")} this week` : "Bookings"}
        </h2>
        {week && week.bookingIds.length > 0 ? (
          <WeekBookings plan={plan} week={week} />
        ) : (
          <p>
            No event is booked. <a href="/bookings/new">Enter a booking</a>
          </p>
        )}
      </section>
      {gaps.length > 0 && (
        <section aria-labelledby="gaps">
          <h2 id="gaps">{gaps.length === 1 ? "The gap" : `${countOf(gaps.length, "gap")}, the largest first`}</h2>
          <p className="small">A ring is {countOf(unit, "stem")} short.</p>
          {gaps.map((gap, index) => (
            <GapFold
              key={gap.needIndex}
              gap={gap}
              plan={plan}
              bottleneck={bottleneckOf(gap.needIndex)}
              chosen={decision.kind === "choice" ? decision.winters.tried : null}
              isOpen={index === 0}
              stemsPerMark={unit}
            />
          ))}
        </section>
      )}
    </>
  );
}

type LinkProps = { plan: Plan; monday: ReturnType<typeof mondayOfIsoWeek>; before?: string; after?: string };

/** The week before or after, with what it is short of. */
function WeekLink({ plan, monday, before = "", after = "" }: LinkProps) {
  const week = plan.weeks.find((row) => row.monday === monday);
  const short = stemsShort((week?.gapIndexes ?? []).map((index) => plan.gaps[index]));
  return (
    <a href={`/weeks/${isoWeekOf(monday)}`}>
      {before}
      {weekInWords(monday)}
      {short > 0 && `, ${inWholes(short)} short`}
      {after}
    </a>
  );
}
