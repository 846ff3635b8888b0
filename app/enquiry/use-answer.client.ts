"use client";

import { useContext, useEffect, useState } from "react";
import type { Problem } from "#lib/domain/problem";
import { posted } from "../threads/posted.client";
import { FarmRevision } from "../ui/farm-revision.client";
import { jsonLines } from "../ui/json-lines.client";
import type { AnswerLine, OtherDayView } from "./answer/answer-lines";
import type { AnswerView } from "./answer/answer-view";
import type { Rung } from "./answer/rungs";
import { type EnquiryForm, isUnasked } from "./asked-enquiry";

/** What is known of the question so far. `isStale` while a newer answer is on its way; `isDone` when all is said. */
export type Answer = {
  readonly problems: readonly Problem[];
  readonly unanswerable: Extract<AnswerLine, { unanswerable: unknown }> | null;
  readonly view: AnswerView | null;
  readonly sentence: string;
  readonly weekdays: readonly string[];
  readonly rungs: readonly Rung[];
  readonly noBuyIn: string;
  readonly otherDays: readonly OtherDayView[];
  readonly isStale: boolean;
  readonly isDone: boolean;
  /** Why no answer came, in words; empty while all is well. */
  readonly trouble: string;
};

const NOTHING: Answer = {
  problems: [],
  unanswerable: null,
  view: null,
  sentence: "",
  weekdays: [],
  rungs: [],
  noBuyIn: "",
  otherDays: [],
  isStale: false,
  isDone: false,
  trouble: "",
};

/** Keystrokes that follow within this time are asked as one. */
const SETTLE_MS = 15;

/**
 * Asks whenever the question or the farm changes, and takes the answer line by line; the newest question wins, and the one before is no longer worked at.
 * @param first  what the page came with: the first line of the answer, where it was asked with a question
 */
export function useAnswer(form: EnquiryForm, first: AnswerLine | null): Answer {
  const revision = useContext(FarmRevision);
  const [answer, setAnswer] = useState<Answer>(() => (first ? withLine(NOTHING, first) : NOTHING));
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

/** The server says why it cannot answer; where it says nothing, it is not there. */
const inWords = (error: unknown): string =>
  error instanceof Refused ? error.message : "The farm’s server cannot be reached; the question is still here.";

class Refused extends Error {}

function withLine(before: Answer, line: AnswerLine): Answer {
  // What was answered before stays to be seen, greyed, until the question can be answered again.
  if ("problems" in line) return { ...before, problems: line.problems, trouble: "" };
  if ("unanswerable" in line) return { ...NOTHING, unanswerable: line, isDone: true };
  if ("answer" in line)
    return { ...NOTHING, ...{ view: line.answer, sentence: line.sentence, weekdays: line.weekdays } };
  if ("rung" in line) return { ...before, rungs: [...before.rungs, line.rung] };
  if ("otherDay" in line) return { ...before, otherDays: [...before.otherDays, line.otherDay] };
  if ("done" in line) return { ...before, isDone: true };
  return { ...before, ...line };
}
