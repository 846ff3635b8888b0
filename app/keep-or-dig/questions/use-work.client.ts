"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { posted } from "../../threads/posted.client";
import type { StreamLine } from "../../threads/streamed";
import { jsonLines } from "../../ui/json-lines.client";

/** Work that a button starts: how far it is, what it answered, or what went wrong. */
export type WorkState<Progress, Answer> = {
  readonly isRunning: boolean;
  readonly isStopping: boolean;
  readonly progress: Progress | null;
  readonly answer: Answer | null;
  readonly problem: string | null;
};

const IDLE = { isRunning: false, isStopping: false, progress: null, answer: null, problem: null };

/**
 * Starts work at an address and reads its JSON lines as they come. `stop` asks for the best so far, which then comes as the answer. When the
 * page is left the work ends with it.
 */
export function useWork<Progress, Answer>(address: string, whenDone: (answer: Answer) => void = () => {}) {
  const [state, setState] = useState<WorkState<Progress, Answer>>(IDLE);
  const workId = useRef<number | null>(null);
  const reading = useRef<AbortController | null>(null);
  useEffect(() => () => reading.current?.abort(), []);

  const start = async (question: unknown) => {
    reading.current?.abort();
    const controller = new AbortController();
    reading.current = controller;
    workId.current = null;
    setState({ ...IDLE, isRunning: true });
    try {
      const response = await fetch(address, posted(JSON.stringify(question), controller.signal));
      let isAnswered = false;
      for await (const line of jsonLines<StreamLine<Progress, Answer>>(response)) {
        if ("workId" in line) workId.current = line.workId;
        else if ("progress" in line) setState((before) => ({ ...before, progress: line.progress }));
        else {
          isAnswered = true;
          if ("answer" in line) whenDone(line.answer);
          setState({ ...IDLE, ...line });
        }
      }
      if (!isAnswered) throw new Error("the stream ended before the answer");
    } catch {
      if (!controller.signal.aborted)
        setState({ ...IDLE, problem: "The farm’s server could not be reached to the end. Try again." });
    }
  };

  const stop = useCallback(async () => {
    // Before the work has a number nothing of it is done: the server ends what nobody reads.
    if (workId.current === null) {
      reading.current?.abort();
      setState(IDLE);
      return;
    }
    setState((before) => ({ ...before, isStopping: true }));
    await fetch("/keep-or-dig/stop", posted(JSON.stringify({ workId: workId.current }))).catch(() => null);
  }, []);

  return { ...state, start, stop };
}
