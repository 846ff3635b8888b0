import type { Metadata } from "next";
import { countOf } from "#lib/plan/words/numbers";
import { differenceTitle } from "#lib/plan/words/supposed-words";
import { today } from "../clock";
import { SeasonLine } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { farmRevision, loadPlan } from "../load";
import { BareGround } from "../look/bare-ground";
import { COMPARED_AT_MOST, comparedOf } from "./compare-query";
import { comparedPlans } from "./compared/compared-plans";
import { ComparedTotals } from "./compared/compared-totals";
import { EveryWeek } from "./compared/every-week";
import { PairKey } from "./compared/pair-key";
import { AS_IT_STANDS } from "./compared/plan-columns";
import { Plate } from "./compared/plate";
import { PairMarks, pairUnit } from "./compared/ribbon-pair";
import { keptWhatIfs } from "./kept-what-ifs";
import { NewWhatIf } from "./new-what-if";
import { ShownWhatIfs } from "./shown-what-ifs";

export const metadata: Metadata = { title: "What if" };

/** The what-ifs of the season beside the farm as it stands: what each wins back or takes, the figures that change, and a plate for each. */
export default async function WhatIfsPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const year = await seasonYear();
  const now = loadPlan(year);
  const farm = now.snapshot;
  const whatIfs = keptWhatIfs().filter((whatIf) => whatIf.seasonYear === year);
  const { compared: shown, leftOutCount } = comparedOf(await searchParams, whatIfs);
  const { compared, supposed } = comparedPlans(now, shown);
  const unit = pairUnit(supposed.flatMap(({ touched }) => touched));
  const page = { farm, revision: farmRevision(), today: today(), unit };
  const plans = [AS_IT_STANDS, ...shown];
  const stems = supposed.flatMap(({ whatIf, difference }) =>
    whatIf.changes.length > 0 ? { whatIf, stems: difference.shortStems } : [],
  );
  return (
    <>
      <SeasonLine seasonYear={year} back="/what-if" farm={farm.farm} />
      {whatIfs.length === 0 ? (
        <NothingSupposed seasonYear={year} />
      ) : (
        <>
          <header className="what-if-head">
            <div>
              <h1>{stems.length === 0 ? `What if, in ${year}` : differenceTitle(stems, farm)}</h1>
              <p className="actions">
                <a className="button" href="#new">
                  Suppose something else
                </a>
              </p>
            </div>
            <ComparedTotals plans={plans} comparison={compared} />
          </header>
          {leftOutCount > 0 && (
            <p className="notice">
              The first {COMPARED_AT_MOST} are shown; there is no room for{" "}
              {countOf(leftOutCount, "more what-if", "more what-ifs")}.
            </p>
          )}
          <PairKey unit={unit} />
          <PairMarks />
          <div className="what-if-plates">
            {supposed.map((one) => (
              <Plate key={one.whatIf.id} supposed={one} page={page} />
            ))}
          </div>
          {shown.length > 0 && <EveryWeek plans={plans} weeks={compared.weeks} />}
          {whatIfs.length > shown.length && <ShownWhatIfs whatIfs={whatIfs} compared={shown} />}
          <section aria-labelledby="new" className="no-print">
            <h2 id="new">Suppose something else</h2>
            <NewWhatIf seasonYear={year} whatIfs={whatIfs} />
          </section>
        </>
      )}
    </>
  );
}

const NothingSupposed = ({ seasonYear }: { seasonYear: number }) => (
  <>
    <h1>What if frost came early, or two more beds stayed in the ground?</h1>
    <p className="lead">
      Suppose a bed kept, a late season, a booking gained or lost, and see which weeks of {seasonYear} change. Nothing
      of the farm changes until you adopt it.
    </p>
    <BareGround />
    <NewWhatIf seasonYear={seasonYear} whatIfs={[]} />
  </>
);
