"use client";

import { createContext, type ReactNode, useContext, useEffect } from "react";
import type { CropOutcome, FiguresOutcome } from "#lib/plan/what-if/figures-taken";
import type { PointsDone } from "#lib/plan/winter/keep-curve";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { useWork } from "../../keep-or-dig/questions/use-work.client";
import { WorkBar } from "../../keep-or-dig/questions/work-bar";

/** What is known of the effects so far; null while they are worked out. */
const Known = createContext<FiguresOutcome | null>(null);

type Props = { seasonYear: number; lead: ReactNode; children: ReactNode };

/**
 * Asks what taking the figures would do to the season as soon as the page is there, shows how far the answer is, and hands it to the effects among the
 * children. Stopped, those that are done stay.
 */
export function Effects({ seasonYear, lead, children }: Props) {
  const { start, stop, ...work } = useWork<PointsDone, FiguresOutcome>("/farm/what-changed/effects");
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for each season, and again by the button
  useEffect(() => {
    void start({ seasonYear });
  }, [seasonYear]);
  const { answer, progress } = work;
  const isWhole = answer !== null && answer.shortAfterAll !== null;
  return (
    <Known value={answer}>
      <p className="lead">
        {lead}
        {isWhole && (
          <>
            {" "}
            With all of them taken, {seasonYear} is <strong>{inWholes(answer.shortAfterAll ?? 0)}</strong> stems short;
            as the farm stands, {inWholes(answer.shortBefore)}.
          </>
        )}
      </p>
      {work.isRunning && (
        <WorkBar
          share={progress && progress.doneCount / progress.ofCount}
          isStopping={work.isStopping}
          stop={stop}
          stopWords="Stop"
        >
          {progress
            ? `The season is planned with each of them: ${progress.doneCount} of ${countOf(progress.ofCount, "plan")}…`
            : "Planning the season with each of them…"}
        </WorkBar>
      )}
      {work.problem && (
        <p className="notice bad" role="alert">
          What they would do could not be worked out: {work.problem}
        </p>
      )}
      {!work.isRunning && !isWhole && (answer || work.problem) && (
        <p className="actions">
          <button type="button" onClick={() => void start({ seasonYear })}>
            Work out what they would do
          </button>
        </p>
      )}
      {children}
    </Known>
  );
}

/** What taking the figures of a crop would do to the season; nothing until it is known. */
export function CropEffect({ cropId }: { cropId: number }) {
  const outcome = useContext(Known)?.crops.find(({ changed }) => changed.crop.id === cropId);
  return outcome ? <Effect {...outcome} /> : null;
}

/** What taking the recipes would do to the season; nothing until it is known. */
export function RecipesEffect() {
  const outcome = useContext(Known)?.recipes;
  return outcome ? (
    <span className="effect">
      <Short before={outcome.shortBefore} after={outcome.shortAfter} />
    </span>
  ) : null;
}

function Effect({ before, after }: CropOutcome) {
  if (before.cutStems === 0 && after.cutStems === 0 && before.shortStems === after.shortStems)
    return <span className="effect">not grown this season: nothing moves</span>;
  const cut =
    before.cutStems === after.cutStems
      ? `${inWholes(after.cutStems)} stems cut, as before`
      : `${inWholes(before.cutStems)} stems cut now, ${inWholes(after.cutStems)} with the new figures`;
  return (
    <span className="effect">
      {cut}; <Short before={before.shortStems} after={after.shortStems} />
    </span>
  );
}

const Short = ({ before, after }: { before: number; after: number }) =>
  before === after ? (
    "no stem more or less is short"
  ) : (
    <>
      {inWholes(before)} stems short become <strong>{inWholes(after)}</strong>
    </>
  );
