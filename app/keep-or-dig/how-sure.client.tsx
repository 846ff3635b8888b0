"use client";

import type { KeepSureness } from "#lib/plan/keep-sureness";
import { countOf, inWholes } from "../ui/numbers";
import type { PointsDone } from "../work/jobs";
import { SurenessFound } from "./sureness-found";
import { useWork } from "./use-work.client";
import { WorkBar } from "./work-bar";

/** Samples a thousand seasons with these beds kept and with all dug, and says how sure the ticks are. */
export function HowSure({ question }: { question: { seasonYear: number; keptBedIds: readonly number[] } }) {
  const work = useWork<PointsDone, KeepSureness>("/keep-or-dig/sure");
  return (
    <section aria-labelledby="sure">
      <h2 id="sure">How sure are we</h2>
      <p>
        First cuts, yields, winters, stores and frost vary. A thousand seasons are sampled from their spreads, the same
        ones with these beds kept and with every bed dug.
      </p>
      {!work.isRunning && (
        <p className="actions">
          <button type="button" onClick={() => work.start(question)}>
            Sample 1,000 seasons
          </button>
        </p>
      )}
      {work.isRunning && (
        <WorkBar
          share={work.progress ? work.progress.doneCount / work.progress.ofCount : null}
          isStopping={work.isStopping}
          stop={work.stop}
          stopWords="Stop and sum up what is done"
        >
          {work.progress
            ? `${inWholes(work.progress.doneCount)} of ${countOf(work.progress.ofCount, "season")} sampled…`
            : "Making the season ready on two threads…"}
        </WorkBar>
      )}
      {work.problem && (
        <p className="notice bad" role="alert">
          Not sampled: {work.problem}
        </p>
      )}
      {work.answer && <SurenessFound sureness={work.answer} isSame={question.keptBedIds.length === 0} />}
    </section>
  );
}
