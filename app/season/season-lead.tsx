import type { ReactNode } from "react";
import { inShort, isoWeekOf, toDay } from "#lib/domain/day";
import { stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { gapsAhead, seasonSums } from "#lib/plan/road/to-come";
import { coloursInWords } from "#lib/plan/words/colour-words";
import { coverInWords } from "#lib/plan/words/gap-words";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { rankedGaps, winteringInWords } from "#lib/plan/words/season-lead";
import { bedRows } from "../keep-or-dig/planner-data";
import { BareGround } from "../look/bare-ground";
import type { Decision } from "./decision";
import { FindChoice } from "./find-choice.client";
import { KeepLead } from "./keep-lead";

/** The answer that Season opens with: which beds to keep while that can be chosen, else the largest gap and what could be done about it still. */
export function SeasonLead({ plan, decision }: { plan: Plan; decision: Decision }) {
  if (decision.kind === "choice" && decision.kept.length > 0) return <KeepLead decision={decision} />;
  return (
    <GapLead plan={plan} isWorking={decision.kind === "working"}>
      {decision.kind === "no choice" && (
        <p className="lead">
          No choice of beds keeps to what the winter has at hand. Keep or dig says what it would take.
        </p>
      )}
      {decision.kind === "choice" && (
        <p className="lead">
          Best for these numbers: no bed pays to be kept over this winter, if{" "}
          {winteringInWords(bedRows(plan.snapshot, plan.seasonYear).filter(({ forbidden }) => forbidden.length === 0))}.{" "}
          <a href="/farm">Change them</a>
        </p>
      )}
    </GapLead>
  );
}

type LeadProps = { plan: Plan; isWorking: boolean; children: ReactNode };

/** The largest focal gap. `children` is what there is to say of the winter; while that is worked out, it says so in the place of the picture. */
function GapLead({ plan, isWorking, children }: LeadProps) {
  const ranked = rankedGaps(gapsAhead(plan), "focal");
  const [largest] = ranked;
  if (!largest)
    return (
      <CoveredLead plan={plan} isWorking={isWorking}>
        {children}
      </CoveredLead>
    );
  const bookingCount = new Set(ranked.map(({ need }) => need.booking.id)).size;
  const { need, shortStems } = largest;
  const day = toDay(need.eventDay);
  const buyIn = plan.buying.find(({ gap }) => gap === largest);
  const [firstWay] = coverInWords(largest);
  return (
    <section key="gap" className={isWorking ? "season-lead with-picture" : "season-lead"} aria-labelledby="answer">
      <div className="lead-words">
        <h1 id="answer">
          <span className="great short-great">{inWholes(stemsShort(ranked))} short</span>
          focal stems are missing from {countOf(bookingCount, "booking")} {ofOrAhead(plan)}.
        </h1>
        {children}
        <p className="lead">
          The largest gap is <b>{inWholes(shortStems)}</b> in {coloursInWords(need)} for{" "}
          <a href={`/bookings/${need.booking.id}`}>{need.booking.client}</a> on {inShort(day)}. {firstWay}
        </p>
        <p className="actions">
          <a className="button main" href={`/weeks/${isoWeekOf(day)}`}>
            See what could cover it
          </a>
          {buyIn && (
            <a className="button" href="/buying">
              Buy in, {inRoundMoney(buyIn.costCents)}
            </a>
          )}
        </p>
      </div>
      {isWorking && (
        <div className="plate waiting-plate">
          <FindChoice seasonYear={plan.seasonYear} />
          <BareGround />
        </div>
      )}
    </section>
  );
}

function CoveredLead({ plan, isWorking, children }: LeadProps) {
  const { ahead } = seasonSums(plan);
  return (
    <section className="season-lead" aria-labelledby="answer">
      <h1 id="answer">
        {ahead.bookingCount === 0 ? (
          `Every event of ${plan.seasonYear} has gone by.`
        ) : (
          <>
            <span className="great good-great">Covered</span>
            Every focal stem of {countOf(ahead.bookingCount, "booking")} {ofOrAhead(plan)} is covered from your beds.
          </>
        )}
      </h1>
      {isWorking && <FindChoice seasonYear={plan.seasonYear} />}
      {children}
      <p className="actions">
        <a className="button main" href="/picking">
          See what to pick
        </a>
      </p>
    </section>
  );
}

/** "of 2027", or once the first event has gone by "still to come". */
const ofOrAhead = (plan: Plan): string =>
  seasonSums(plan).behind.bookingCount === 0 ? `of ${plan.seasonYear}` : "still to come";
