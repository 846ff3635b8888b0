import type { Metadata } from "next";
import { countOf } from "#lib/plan/words/numbers";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { loadPlan } from "../load";
import { Empty } from "../ui/empty";
import { COMPARED_AT_MOST, comparedOf } from "./compare-query";
import { SideBySide } from "./compared/side-by-side";
import { keptWhatIfs } from "./kept-what-ifs";
import { NewWhatIf } from "./new-what-if";
import { WhatIfList } from "./what-if-list";

export const metadata: Metadata = { title: "What if" };

/** The what-ifs of the season, and those that are ticked side by side with the farm as it stands. */
export default async function WhatIfsPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const year = await seasonYear();
  const plan = loadPlan(year);
  const whatIfs = keptWhatIfs().filter((whatIf) => whatIf.seasonYear === year);
  const { compared, leftOutCount } = comparedOf(await searchParams, whatIfs);
  return (
    <>
      <SeasonHead title={`What if, in ${year}`} seasonYear={year} back="/what-if" />
      <p>
        Suppose a bed kept, a frost come early, a booking gained or lost, and see the same weeks again. Nothing of the
        farm changes until you adopt it.
      </p>
      {whatIfs.length === 0 ? (
        <Empty title={`No what-if for ${year} yet`}>
          <p>Give the first one a name; what it supposes comes on the next page.</p>
          <NewWhatIf seasonYear={year} whatIfs={whatIfs} />
        </Empty>
      ) : (
        <>
          <WhatIfList whatIfs={whatIfs} compared={compared} farm={plan.snapshot} />
          {compared.length > 0 && (
            <section aria-labelledby="compared">
              <h2 id="compared">Side by side</h2>
              {leftOutCount > 0 && (
                <p className="notice">
                  The first {COMPARED_AT_MOST} are shown; there is no room for{" "}
                  {countOf(leftOutCount, "more what-if", "more what-ifs")}.
                </p>
              )}
              <SideBySide now={plan} whatIfs={compared} />
            </section>
          )}
          <section aria-labelledby="new">
            <h2 id="new">A new what-if</h2>
            <NewWhatIf seasonYear={year} whatIfs={whatIfs} />
          </section>
        </>
      )}
    </>
  );
}
