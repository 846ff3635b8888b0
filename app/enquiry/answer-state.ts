import type { Problem } from "#lib/domain/problem";
import type { AnswerLine, OtherDayView } from "./answer/answer-lines";
import type { AnswerView } from "./answer/answer-view";
import type { Rung } from "./answer/rungs";

/** What could be done, of one answer. */
type Offered = { readonly view: AnswerView; readonly rungs: readonly Rung[]; readonly noBuyIn: string };
/** The same on other days, of one answer. */
type Days = {
  readonly view: AnswerView;
  readonly weekdays: readonly string[];
  readonly otherDays: readonly OtherDayView[];
};

/**
 * What is known of a question so far. What was said of the question before stays to be seen, greyed, until the new is whole: it is held in `comingOffered`
 * and `comingDays` meanwhile, so that nothing moves on the page.
 */
export type Answer = {
  readonly problems: readonly Problem[];
  readonly unanswerable: Extract<AnswerLine, { unanswerable: unknown }> | null;
  readonly view: AnswerView | null;
  readonly sentence: string;
  readonly offered: Offered | null;
  readonly comingOffered: Offered | null;
  readonly days: Days | null;
  readonly comingDays: Days | null;
  /** A newer answer is on its way. */
  readonly isStale: boolean;
  /** All is said. */
  readonly isDone: boolean;
  /** Why no answer came, in words; empty while all is well. */
  readonly trouble: string;
};

export const NOTHING: Answer = {
  problems: [],
  unanswerable: null,
  view: null,
  sentence: "",
  offered: null,
  comingOffered: null,
  days: null,
  comingDays: null,
  isStale: false,
  isDone: false,
  trouble: "",
};

/** The answer with one line more. */
export function withLine(before: Answer, line: AnswerLine): Answer {
  if ("problems" in line) return { ...before, problems: line.problems, trouble: "" };
  if ("unanswerable" in line) return { ...NOTHING, unanswerable: line, isDone: true };
  if ("answer" in line) return newlyAnswered(before, line);
  if ("rung" in line) return inOffered(before, ({ rungs }) => ({ rungs: [...rungs, line.rung] }));
  if ("noBuyIn" in line) return inOffered(before, () => ({ noBuyIn: line.noBuyIn }));
  if ("otherDay" in line) return inDays(before, line.otherDay);
  const { comingOffered, comingDays, offered, days } = before;
  if ("done" in line) return { ...before, days: comingDays ?? days, comingDays: null, isDone: true };
  // The sentence that is said anew comes when all that could be done is known.
  return { ...before, sentence: line.sentence, offered: comingOffered ?? offered, comingOffered: null };
}

function newlyAnswered(before: Answer, line: Extract<AnswerLine, { answer: unknown }>): Answer {
  const { answer: view, sentence, weekdays } = line;
  const offered: Offered = { view, rungs: [], noBuyIn: "" };
  const days: Days = { view, weekdays, otherDays: [] };
  const isFirst = before.offered === null;
  // A page comes with what could be done and without other days: these are then shown as they come.
  const hasDays = before.days !== null && before.days.otherDays.length > 0;
  return {
    ...NOTHING,
    view,
    sentence,
    offered: before.offered ?? offered,
    comingOffered: isFirst ? null : offered,
    days: hasDays ? before.days : days,
    comingDays: hasDays ? days : null,
  };
}

function inOffered(before: Answer, part: (offered: Offered) => Partial<Offered>): Answer {
  const { offered, comingOffered } = before;
  if (comingOffered) return { ...before, comingOffered: { ...comingOffered, ...part(comingOffered) } };
  return offered ? { ...before, offered: { ...offered, ...part(offered) } } : before;
}

function inDays(before: Answer, otherDay: OtherDayView): Answer {
  const { days, comingDays } = before;
  const withDay = (known: Days): Days => ({ ...known, otherDays: [...known.otherDays, otherDay] });
  if (comingDays) return { ...before, comingDays: withDay(comingDays) };
  return days ? { ...before, days: withDay(days) } : before;
}
