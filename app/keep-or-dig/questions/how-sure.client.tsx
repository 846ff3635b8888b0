"use client";

import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import type { PointsDone } from "#lib/plan/winter/keep-curve";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { AskedWork } from "./asked-work";
import { SurenessFound } from "./sureness-found";
import { useWork } from "./use-work.client";

type Props = {
  question: { seasonYear: number; keptBedIds: readonly number[] };
  /** What varies in a sampled season, in words. */
  sampled: string;
};

/** Samples a thousand seasons with these beds kept and with all dug, and says how sure the ticks are. */
export function HowSure({ question, sampled }: Props) {
  const work = useWork<PointsDone, KeepSureness>("/keep-or-dig/sure");
  return (
    <section aria-labelledby="sure" className="card">
      <h2 id="sure">How sure are we</h2>
      <p>{sampled}</p>
      <AskedWork
        work={work}
        start={() => work.start(question)}
        startWords="Sample 1,000 seasons"
        stopWords="Stop and sum up what is done"
        makingReady="Making the season ready on two threads…"
        inWords={({ doneCount, ofCount }) => `${inWholes(doneCount)} of ${countOf(ofCount, "season")} sampled…`}
        failedWords="Not sampled"
      >
        {work.answer && <SurenessFound sureness={work.answer} isSame={question.keptBedIds.length === 0} />}
      </AskedWork>
    </section>
  );
}
