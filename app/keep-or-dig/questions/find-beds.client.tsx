"use client";

import type { ReactNode } from "react";
import type { Units } from "#lib/domain/words";
import type { ChoiceProgress, WinterChoice } from "#lib/plan/winter/choose-beds";
import type { FewestBeds, FewestProgress } from "#lib/plan/winter/fewest-beds";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { BedRow } from "../planner-data";
import { choosingInWords, closeness } from "./choosing";
import { ChoiceFound, FewestFound, Ticks } from "./found-words";
import { useWork } from "./use-work.client";
import { WorkBar } from "./work-bar";

type Props = {
  seasonYear: number;
  rows: readonly BedRow[];
  units: Units;
  keptBedIds: readonly number[];
  choose: (ids: readonly number[]) => void;
  /** Other buttons that set the ticks, in the same row. */
  children: ReactNode;
};

/** Lets the tool choose: the cheapest beds, or the fewest that close the focal gaps. What is found sets the ticks. */
export function FindBeds({ seasonYear, rows, units, keptBedIds, choose, children }: Props) {
  const cheapest = useWork<ChoiceProgress, WinterChoice>("/keep-or-dig/choose", (choice) => {
    if ("keptBedIds" in choice) choose(choice.keptBedIds);
  });
  const fewest = useWork<FewestProgress, FewestBeds>("/keep-or-dig/choose", (found) => {
    if (found.status !== "infeasible") choose(found.keptBedIds);
  });
  const ticksAt = (ids: readonly number[]) => <Ticks ids={ids} keptBedIds={keptBedIds} choose={choose} />;
  const isBusy = cheapest.isRunning || fewest.isRunning;
  return (
    <section aria-label="Let the tool choose" className="find-beds">
      <p className="actions">
        <button
          type="button"
          className="main"
          disabled={isBusy}
          onClick={() => cheapest.start({ question: "cheapest", seasonYear })}
        >
          Find the best beds
        </button>
        <button type="button" disabled={isBusy} onClick={() => fewest.start({ question: "fewest", seasonYear })}>
          Fewest that close the gaps
        </button>
        {children}
      </p>
      {cheapest.isRunning && (
        <WorkBar
          share={closeness(cheapest.progress)}
          isStopping={cheapest.isStopping}
          stop={cheapest.stop}
          stopWords="Stop and keep the best so far"
        >
          {choosingInWords(cheapest.progress)}
        </WorkBar>
      )}
      {fewest.isRunning && (
        <WorkBar
          share={null}
          isStopping={fewest.isStopping}
          stop={fewest.stop}
          stopWords="Stop and keep the best so far"
        >
          {fewestInWords(fewest.progress)}
        </WorkBar>
      )}
      {cheapest.problem && <Failed problem={cheapest.problem} />}
      {fewest.problem && <Failed problem={fewest.problem} />}
      {cheapest.answer && (
        <ChoiceFound
          choice={cheapest.answer}
          rows={rows}
          units={units}
          ticks={"keptBedIds" in cheapest.answer && ticksAt(cheapest.answer.keptBedIds)}
        />
      )}
      {fewest.answer && <FewestFound found={fewest.answer} rows={rows} ticks={ticksAt(fewest.answer.keptBedIds)} />}
    </section>
  );
}

const Failed = ({ problem }: { problem: string }) => (
  <p className="notice bad" role="alert">
    Not found: {problem}
  </p>
);

function fewestInWords(progress: FewestProgress | null): string {
  if (!progress) return "Laying out both futures of every bed…";
  const { focalShortStems, boundShortStems, keptCount, boundKeptCount } = progress;
  if (focalShortStems === null) return "No choice yet…";
  const least =
    boundShortStems < focalShortStems
      ? `no choice leaves fewer than ${inWholes(boundShortStems)}`
      : `no choice leaves fewer, nor as few with less than ${countOf(boundKeptCount, "bed")}`;
  return `So far ${inWholes(focalShortStems)} focal stems short with ${countOf(keptCount ?? 0, "bed")}; ${least}.`;
}
