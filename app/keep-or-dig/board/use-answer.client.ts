"use client";

import { useEffect, useRef, useState } from "react";
import { posted } from "../../threads/posted.client";

/** The server's last word. `isStale` while a newer answer is on its way; `problem` says why there is none. */
export type Answered<Answer> = {
  readonly answer: Answer;
  readonly isStale: boolean;
  readonly problem: string | null;
};

const UNREACHED = "The farm’s server cannot be reached. Your ticks are still here.";

/**
 * Asks an address whenever the question changes; the newest question wins. The answer that is there at first stands for the first question
 * unless it is null. `settleMs`: questions that follow within this time are asked as one.
 */
export function useAnswer<Answer>(
  address: string,
  question: string,
  first: Answer,
  settleMs: number,
): Answered<Answer> {
  const [answered, setAnswered] = useState<Answered<Answer>>({ answer: first, isStale: first === null, problem: null });
  const known = useRef(first === null ? null : question);
  useEffect(() => {
    if (known.current === question) return;
    known.current = question;
    const asking = new AbortController();
    setAnswered((before) => ({ ...before, isStale: true }));
    const timer = setTimeout(async () => {
      try {
        const response = await fetch(address, posted(question, asking.signal));
        const said: { answer?: Answer; problem?: string } = await response.json();
        setAnswered((before) => ({
          answer: said.answer ?? before.answer,
          isStale: said.answer === undefined,
          problem: said.problem ?? null,
        }));
      } catch {
        if (!asking.signal.aborted) setAnswered((before) => ({ ...before, problem: UNREACHED }));
      }
    }, settleMs);
    return () => {
      clearTimeout(timer);
      asking.abort();
      known.current = null;
    };
  }, [address, question, settleMs]);
  return answered;
}
