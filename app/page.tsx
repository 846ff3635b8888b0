import type { Metadata } from "next";
import { z } from "zod";
import { toDayNumber } from "#lib/domain/day";
import { ROLES } from "#lib/domain/words";
import { strainsBetween } from "#lib/plan/road/capacity";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { weeksGone } from "#lib/plan/road/to-come";
import { unheldCrops } from "#lib/plan/road/unheld";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { unheldInWords } from "#lib/plan/words/unheld-words";
import { today } from "./clock";
import { SeasonLine } from "./frame/season-head";
import { seasonYear } from "./frame/season-year";
import { loadBand, loadPlan } from "./load";
import { BloomRows } from "./season/bloom-rows";
import { type Decision, decisionOf } from "./season/decision";
import { GapCards } from "./season/gap-cards";
import { NothingBooked } from "./season/nothing-booked";
import { SeasonRibbon, type Winter } from "./season/ribbon/season-ribbon";
import { RoleTabs } from "./season/role-tabs";
import { AlsoShort, SeasonSoFar } from "./season/season-figures";
import { SeasonHeatLine } from "./season/season-heat-line";
import { SeasonLead } from "./season/season-lead";
import { SeasonLessonPlate } from "./season/season-lesson";
import { SeasonStart } from "./season/season-start";
import { StrainList } from "./season/strain-list";
import { WeekTable } from "./season/week-table";
import { WeeksBehind } from "./season/weeks-behind";
import { ProblemList } from "./ui/problem-list";

export const metadata: Metadata = { title: "Season" };

const query = z.object({ role: z.enum(ROLES).catch("focal") });

/** The season: its answer, then the ribbon week by week, where stems are missing, and what blooms when. */
export default async function SeasonPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { role } = query.parse(await searchParams);
  const year = await seasonYear();
  const plan = loadPlan(year);
  const isBooked = bookingsOf(plan.match, year).length > 0;
  const decision = decisionOf(plan);
  const band = loadBand(year).map((roles) => roles[ROLES.indexOf(role)]);
  const gone = weeksGone(plan);
  const isOver = gone === plan.weeks.length;
  return (
    <>
      <SeasonLine seasonYear={year} back="/" farm={plan.snapshot.farm} />
      {plan.weeks.length === 0 && <SeasonStart plan={plan} />}
      {plan.weeks.length > 0 && !isBooked && <NothingBooked seasonYear={year} />}
      {isBooked && (
        <>
          <SeasonLead plan={plan} decision={decision} />
          {!isOver && (
            <section className="plate" aria-labelledby="weeks">
              <SeasonRibbon
                role={role}
                winters={wintersOf(plan, decision)}
                shown="stands"
                band={band}
                coming={decision.kind === "working" ? [DUG, CHOSEN] : []}
              >
                <h2 id="weeks">{`${role[0].toUpperCase()}${role.slice(1)} stems, week by week`}</h2>
                <RoleTabs role={role} />
              </SeasonRibbon>
              <WeekTable weeks={plan.weeks.slice(gone)} band={band.slice(gone)} role={role} />
            </section>
          )}
          <StrainList
            strains={strainsBetween(plan, toDayNumber(today()), Number.POSITIVE_INFINITY)}
            title="More than hands and room"
            isLinked
          />
          <WeeksBehind plan={plan} isOpen={isOver} />
          <GapCards plan={plan} role={role} chosen={decision.kind === "choice" ? decision.winters.tried : null} />
        </>
      )}
      <SeasonHeatLine snapshot={plan.snapshot} seasonYear={year} />
      <SeasonLessonPlate snapshot={plan.snapshot} seasonYear={year} today={today()} />
      {plan.weeks.length > 0 && (
        <div className="season-lower">
          {!isOver && <BloomRows plan={plan} role={role} />}
          <div className="stack">
            <AlsoShort plan={plan} role={role} />
            {isBooked && <SeasonSoFar plan={plan} />}
          </div>
        </div>
      )}
      <ProblemList
        title="Cut in vain: it does not keep until an event"
        problems={unheldCrops(plan.snapshot, plan.match).map((unheld) => unheldInWords(unheld, plan.snapshot.farm))}
      />
      <ProblemList title="The forecast is missing something" problems={plan.problems.map(barrenInWords)} />
    </>
  );
}

/** The winters that stand beside the farm as it is once a choice is known; their places are kept until then. */
const DUG = "Every bed dug";
const CHOSEN = "With these kept";

/** The winters that the ribbon switches between: the farm as it stands alone, until a choice is known. */
function wintersOf(plan: Plan, decision: Decision): Winter[] {
  const stands = { key: "stands", words: "As it stands", plan };
  if (decision.kind !== "choice") return [stands];
  const { dug, tried } = decision.winters;
  const all = [{ key: "dug", words: DUG, plan: dug }, stands];
  return decision.isDone ? all : [...all, { key: "choice", words: CHOSEN, plan: tried }];
}
