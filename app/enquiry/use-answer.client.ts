"use client";

import { useContext, useEffect, useState } from "react";
import { posted } from "../threads/posted.client";
import { FarmRevision } from "../ui/farm-revision.client";
import { jsonLines } from "../ui/json-lines.client";
import type { AnswerLine } from "./answer/answer-lines";
import { type Answer, NOTHING, withLine } from "./answer-state";
import { type EnquiryForm, isUnasked } from "./asked-enquiry";

/** Keystrokes that follow within this time are asked as one. */
const SETTLE_MS = 15;

/**
 * Asks whenever the question or the farm changes, and takes the answer line by line; the newest question wins, and the one before is no longer worked at.
 * @param first  what the page came with: the first lines of the answer, where it was asked with a question
 */
export function useAnswer(form: EnquiryForm, first: readonly AnswerLine[]): Answer {
  const revision = useContext(FarmRevision);
  const [answer, setAnswer] = useState<Answer>(() => first.reduce(withLine, NOTHING));
  // biome-ignore lint/correctness/useExhaustiveDependencies: a write changes the answer, though the question does not name it
  useEffect(() => {
    if (isUnasked(form)) return setAnswer(NOTHING);
    const asking = new AbortController();
    setAnswer((before) => ({ ...before, isStale: true }));
    const timer = setTimeout(async () => {
      try {
        const response = await fetch("/enquiry/answer", posted(JSON.stringify({ form }), asking.signal));
        if (!response.ok) throw new Refused((await response.json()).problem);
        for await (const line of jsonLines<AnswerLine>(response)) setAnswer((before) => withLine(before, line));
      } catch (error) {
        if (!asking.signal.aborted) setAnswer((before) => ({ ...before, trouble: inWords(error) }));
      }
    }, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      asking.abort();
    };
  }, [form, revision]);
  return answer;
}

class Refused extends Error {}

/** The server says why it cannot answer; where it says nothing, it is not there. */
const inWords = (error: unknown): string =>
  error instanceof Refused ? error.message : "The farm’s server cannot be reached; the question is still here.";
