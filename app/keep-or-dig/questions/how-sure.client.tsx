"use client";

import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { SeasonsDone } from "../../threads/start-sureness";
import { AskedWork } from "./asked-work";
import { SurenessFound } from "./sureness-found";
import { useWork } from "./use-work.client";

type Props = {
  question: { seasonYear: number; keptBedIds: readonly number[] };
  /** What varies in a sampled season, in words. */
  sampled: string;
};

/** Samples a thousand seasons with these beds kept and with all dug, and says how sure the ticks are: soon from the first, then ever more sharply. */
export function HowSure({ question, sampled }: Props) {
  const work = useWork<SeasonsDone, KeepSureness>("/keep-or-dig/sure");
  const known = work.answer ?? work.progress?.soFar ?? null;
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
        {known && <SurenessFound sureness={known} isSame={question.keptBedIds.length === 0} />}
      </AskedWork>
    </section>
  );
}
