"use client";

import { useRouter } from "next/navigation";
import { useEffect, useRef } from "react";
import type { ChoiceProgress, WinterChoice } from "#lib/plan/winter/choose-beds";
import { inRoundMoney, inWords } from "#lib/plan/words/numbers";
import { choosingInWords, closeness } from "../keep-or-dig/questions/choosing";
import { useWork } from "../keep-or-dig/questions/use-work.client";
import { WorkBar } from "../keep-or-dig/questions/work-bar";

/**
 * Asks the server which beds to keep, says how far that is, and has the page made again when it is known. It can be stopped and gone on with; leaving
 * the page lets the question go.
 */
export function FindChoice({ seasonYear }: { seasonYear: number }) {
  const router = useRouter();
  const work = useWork<ChoiceProgress, WinterChoice>("/keep-or-dig/choose", ({ status }) => {
    if (status === "optimal" || status === "infeasible") router.refresh();
  });
  const start = () => work.start({ question: "cheapest", seasonYear });
  const startAtFirst = useRef(start);
  useEffect(() => {
    startAtFirst.current();
  }, []);
  const { answer, problem } = work;
  if (work.isRunning)
    return (
      <WorkBar share={closeness(work.progress)} isStopping={work.isStopping} stop={work.stop} stopWords="Stop">
        Working out which beds to keep. {choosingInWords(work.progress)}
      </WorkBar>
    );
  const isStopped = answer?.status === "stopped" || answer?.status === "stopped early";
  if (!problem && !isStopped)
    return (
      <p className="lead working" role="status">
        Working out which beds to keep …
      </p>
    );
  return (
    <div className="notice" role="status">
      <p>{problem ? `Which beds to keep was not found: ${problem}` : bestSoFar(answer)}</p>
      <p className="actions">
        <button type="button" onClick={start}>
          {problem ? "Try again" : "Go on until it is proved"}
        </button>
        <a className="button" href="/keep-or-dig">
          Choose beds yourself
        </a>
      </p>
    </div>
  );
}

function bestSoFar(answer: WinterChoice | null): string {
  if (!answer || !("keptBedIds" in answer)) return "Stopped before any choice was found.";
  const { keptBedIds, totalCents, boundCents } = answer;
  return `Stopped before it was proved: the best so far keeps ${inWords(keptBedIds.length)} of the beds at ${inRoundMoney(totalCents)}; none can cost less than ${inRoundMoney(boundCents)}.`;
}
