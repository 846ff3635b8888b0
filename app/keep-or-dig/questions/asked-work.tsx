import type { ReactNode } from "react";
import type { PointsDone } from "#lib/plan/winter/keep-curve";
import type { WorkState } from "./use-work.client";
import { WorkBar } from "./work-bar";

type Props<Progress extends PointsDone> = {
  work: WorkState<Progress, unknown> & { readonly stop: () => void };
  start: () => void;
  startWords: string;
  stopWords: string;
  /** What is being done, before the first point and then with how far it is. */
  makingReady: string;
  inWords: (done: Progress) => string;
  /** "Not drawn", said before what went wrong. */
  failedWords: string;
  children: ReactNode;
};

/** Work that is counted in points: the button that starts it, then its bar, then what came of it. */
export const AskedWork = <Progress extends PointsDone>(props: Props<Progress>) => {
  const { work, start, startWords, stopWords, makingReady, inWords, failedWords, children } = props;
  return (
    <>
      {work.isRunning ? (
        <WorkBar
          share={work.progress && work.progress.doneCount / work.progress.ofCount}
          isStopping={work.isStopping}
          stop={work.stop}
          stopWords={stopWords}
        >
          {work.progress ? inWords(work.progress) : makingReady}
        </WorkBar>
      ) : (
        <p className="actions">
          <button type="button" onClick={start}>
            {startWords}
          </button>
        </p>
      )}
      {work.problem && (
        <p className="notice bad" role="alert">
          {failedWords}: {work.problem}
        </p>
      )}
      {children}
    </>
  );
};
