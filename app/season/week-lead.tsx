import { ROLES } from "#lib/domain/words";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { weeksBehind, weeksGone } from "#lib/plan/road/to-come";
import { weekColours } from "#lib/plan/road/week-colours";
import type { Week } from "#lib/plan/road/weeks";
import { dayInWords } from "#lib/plan/words/keep-or-dig-words";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { cutsInWords } from "#lib/plan/words/to-come-words";
import { CountedRow } from "../look/counted-row";
import { ringUnit } from "./ring-unit";

const FOCAL = ROLES.indexOf("focal");

/** What a week is short of, as its answer, with its focal stems counted beside it. `canKeep`: beds may still be kept for it. */
export function WeekLead({
  plan,
  week,
  gaps,
  canKeep,
}: {
  plan: Plan;
  week: Week;
  gaps: readonly Gap[];
  canKeep: boolean;
}) {
  const needStems = week.roles.reduce((sum, role) => sum + role.needStems, 0);
  const shortStems = week.roles.reduce((sum, role) => sum + role.shortStems, 0);
  const focal = week.roles[FOCAL];
  const costCents = plan.buying.filter(({ gap }) => gaps.includes(gap)).reduce((sum, line) => sum + line.costCents, 0);
  const covered = weekColours(plan, "focal")[plan.weeks.indexOf(week)].covered;
  const unit = ringUnit(focal.needStems);
  const isGone = plan.weeks.indexOf(week) < weeksGone(plan);
  const of = `the week of ${dayInWords(week.monday)}${isGone ? ", which has gone by" : ""}`;
  return (
    <section className="season-lead with-picture week-lead" aria-labelledby="answer">
      <div>
        <h1 id="answer">
          {shortStems > 0 ? (
            <>
              <span className="great short-great">{inWholes(shortStems)} short</span> in {of}, of{" "}
              {countOf(needStems, "stem")}
            </>
          ) : (
            <>
              <span className="great good-great">Covered</span>{" "}
              {needStems > 0 ? `every one of ${countOf(needStems, "stem")} in ${of}` : `nothing is asked in ${of}`}
            </>
          )}
        </h1>
        {isGone && <CutInWeek plan={plan} week={week} />}
        {focal.needStems > 0 && !isGone && (
          <p className="lead">
            {focal.shortStems > 0
              ? `${inWholes(focal.shortStems)} of ${countOf(focal.needStems, "focal stem")} are short; ${inWholes(focal.reachableStems)} are within reach of all who ask.`
              : `Its ${countOf(focal.needStems, "focal stem")} are covered.`}
          </p>
        )}
        {shortStems > 0 && !isGone && (
          <p className="actions">
            {canKeep && focal.shortStems > 0 && (
              <a className="button main" href="/keep-or-dig">
                See the beds that fill it
              </a>
            )}
            <a className="button" href="/buying">
              Buy in, {inRoundMoney(costCents)}
            </a>
          </p>
        )}
      </div>
      {focal.needStems > 0 && (
        <div className="plate">
          <CountedRow covered={covered} shortStems={focal.shortStems} stemsPerMark={unit} marksARow={12} />
          <p className="small">
            The focal stems of the week: one bloom is {countOf(unit, "stem")} covered, one ring {countOf(unit, "stem")}{" "}
            short.
          </p>
        </div>
      )}
    </section>
  );
}

/** What was cut in a week that has gone by. */
function CutInWeek({ plan, week }: { plan: Plan; week: Week }) {
  const gone = weeksBehind(plan).find((row) => row.week === week.week);
  return gone && <p className="lead">In it: {cutsInWords(gone)}.</p>;
}
