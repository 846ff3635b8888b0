import { ROLES } from "#lib/domain/words";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { weekColours } from "#lib/plan/road/week-colours";
import type { Week } from "#lib/plan/road/weeks";
import { dayInWords } from "#lib/plan/words/keep-or-dig-words";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
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
  const of = `the week of ${dayInWords(week.monday)}`;
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
        {focal.needStems > 0 && (
          <p className="lead">
            {focal.shortStems > 0
              ? `${inWholes(focal.shortStems)} of ${countOf(focal.needStems, "focal stem")} are short; ${inWholes(focal.reachableStems)} are within reach of all who ask.`
              : `Its ${countOf(focal.needStems, "focal stem")} are covered.`}
          </p>
        )}
        {shortStems > 0 && (
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
