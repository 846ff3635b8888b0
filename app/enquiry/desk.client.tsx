"use client";

import { type ReactNode, useEffect, useState } from "react";
import { type Day, inFull, yearOf } from "#lib/domain/day";
import type { OwnColour } from "#lib/domain/writing";
import { mostLeftWords, nearestWords } from "#lib/plan/words/enquiry-words";
import { BareGround } from "../look/bare-ground";
import { CountedMarks } from "../look/counted-row";
import { isColourBegun } from "../ui/typed-colours";
import type { AnswerLine, OtherDayView } from "./answer/answer-lines";
import type { AnswerView } from "./answer/answer-view";
import type { Answer } from "./answer-state";
import { addressOf, type EnquiryForm, isUnasked } from "./asked-enquiry";
import { CallerBoard } from "./caller-board";
import { Holders } from "./holders";
import { Ladder } from "./ladder";
import { OtherDays } from "./other-days";
import { Question } from "./question.client";
import { useAnswer } from "./use-answer.client";
import { VerdictPlate } from "./verdict-plate";

type Props = {
  initial: EnquiryForm;
  /** The first lines of the answer to it. */
  first: readonly AnswerLine[];
  /** Until when an enquiry is held, unless she says otherwise. */
  holdUntil: string;
  /** The Saturdays of the season with what is left on each, for who has asked nothing yet. */
  saturdays: readonly OtherDayView[];
  seasonYear: number;
  ownColours: readonly OwnColour[];
  /** The way to the seasons beside it. */
  children: ReactNode;
};

/** The question and all that is said of it, as it is typed. */
export function EnquiryDesk({ initial, first, holdUntil, saturdays, seasonYear, ownColours, children }: Props) {
  const [form, setForm] = useState(initial);
  const answer = useAnswer(form, first);
  const set = (part: Partial<EnquiryForm>) => setForm((before) => ({ ...before, ...part }));
  useEffect(() => {
    // The address says the question, so that going back, or on to a bed and back, finds it again.
    if (!isUnasked(form)) window.history.replaceState(null, "", addressOf(form));
  }, [form]);
  const problemOf = (name: keyof EnquiryForm) =>
    form[name] === "" || isBeingTyped(form, name, ownColours)
      ? undefined
      : answer.problems.find(({ place }) => place === name)?.message;
  return (
    <div className="enquiry" data-state={stateOf(answer)}>
      <CountedMarks />
      {!answer.view && <h1 className="visually-hidden">Can you do it? An enquiry</h1>}
      <Question form={form} ownColours={ownColours} problemOf={problemOf} set={set} />
      <p id="question-problem" className="ask-problem" role="status">
        {answer.trouble ? (
          <span className="short-word">{answer.trouble}</span>
        ) : (
          <StillToSay form={form} answer={answer} ownColours={ownColours} />
        )}
      </p>
      {answer.unanswerable && <Unanswerable of={answer.unanswerable} />}
      {answer.view ? (
        <Answered answer={answer} form={form} holdUntil={holdUntil} set={set} />
      ) : saturdays.length > 0 ? (
        <OtherDays
          title={`Focal stems that the Saturdays of ${seasonYear} have left`}
          weekdays={saturdays.map(({ day }) => day)}
          days={saturdays}
          stemCount={0}
          asked={null}
          answer={mostLeftWords(saturdays)}
          choose={(eventOn) => set({ eventOn })}
        />
      ) : (
        <NothingLeft seasonYear={seasonYear} />
      )}
      {!answer.view && children}
    </div>
  );
}

/** Whether what is shown answers the question as it stands. */
const stateOf = ({ problems, isStale, isDone }: Answer): string => {
  if (problems.length > 0) return "refused";
  if (isStale) return "asking";
  return isDone ? "done" : "answering";
};

type AnsweredProps = Pick<Props, "holdUntil"> & {
  answer: Answer;
  form: EnquiryForm;
  set: (part: Partial<EnquiryForm>) => void;
};

/** The answer beside what is read to the caller, then what could be done, who has the rest, and other days. */
function Answered({ answer, form, holdUntil, set }: AnsweredProps) {
  const { view, sentence, offered, comingOffered, days, comingDays, isDone } = answer;
  if (!view) return null;
  return (
    <>
      <div className="cols enquiry-top">
        <VerdictPlate view={view} />
        <CallerBoard sentence={sentence} form={form} holdUntil={holdUntil} />
      </div>
      {view.verdict !== "yes" && offered && (
        <Ladder {...offered} isStale={comingOffered !== null} askWith={(colours) => set({ colours })} />
      )}
      <Holders view={view} />
      {days && (
        <OtherDays
          title={`The same on other ${weekdayInFull(days.view.eventOn)}s`}
          weekdays={days.weekdays}
          days={days.otherDays}
          stemCount={days.view.stemCount}
          asked={asDay(days.view)}
          answer={isDone ? nearestWords(days.otherDays, days.view.stemCount) : ""}
          isStale={comingDays !== null}
          choose={(eventOn) => set({ eventOn })}
        />
      )}
    </>
  );
}

const asDay = ({ eventOn, promisedStems, likelyStems, colours }: AnswerView): OtherDayView => ({
  day: eventOn,
  promisedStems,
  likelyStems,
  colours,
  booked: [],
});

/** A season without a stem to give: a string over bare ground. */
const NothingLeft = ({ seasonYear }: { seasonYear: number }) => (
  <section className="other-days" aria-labelledby="other-days">
    <h2 id="other-days">No Saturday of {seasonYear} has focal stems left</h2>
    <BareGround />
    <p className="actions">
      <a className="button" href="/beds">
        Plant the beds
      </a>
    </p>
  </section>
);

const weekdayInFull = (day: Day): string => inFull(day).split(" ")[0];

type StillToSayProps = Pick<Props, "ownColours"> & { form: EnquiryForm; answer: Answer };

/** What is wrong with what was typed, or else what is still missing. */
function StillToSay({ form, answer: { problems, isStale, view }, ownColours }: StillToSayProps) {
  if (isUnasked(form))
    return <>How many stems, in which colours, on which day? Leave the colours empty if any will do.</>;
  const typed = problems.filter(
    ({ place }) => form[place as keyof EnquiryForm] !== "" && !isBeingTyped(form, place, ownColours),
  );
  if (typed.length > 0)
    return (
      <span className="short-word">
        {typed.map(({ message }) => message).join("; ")}
        {view && ". The answer below is from before"}.
      </span>
    );
  const missing = problems.flatMap(({ place }) => MISSING[place] ?? []);
  if (missing.length > 0) return <>Still to say: {missing.join(" and ")}.</>;
  return <span className="visually-hidden">{isStale ? "Working it out" : "Answered"}</span>;
}

/** A year of which the first digits are there, or a colour of which the first letters are: no slip yet. */
const isBeingTyped = ({ colours, eventOn }: EnquiryForm, place: string, ownColours: readonly OwnColour[]): boolean =>
  place === "colours" ? isColourBegun(colours, ownColours) : place === "eventOn" && eventOn.startsWith("0");

const MISSING: Record<string, string> = { stemCount: "how many stems", eventOn: "the day of the event" };

const Unanswerable = ({ of: { unanswerable, eventOn } }: { of: NonNullable<Answer["unanswerable"]> }) =>
  unanswerable === "past" ? (
    <p className="notice">
      <strong>{inFull(eventOn)} is past.</strong> Ask for a day that is still to come.
    </p>
  ) : (
    <div className="notice">
      <p>
        <strong>Nothing is planted for {yearOf(eventOn)} yet,</strong> so nothing can be promised for {inFull(eventOn)}.
      </p>
      <p className="actions">
        <a className="button main" href="/beds">
          Plant the beds
        </a>
        <a className="button" href={`/bookings/new?on=${eventOn}`}>
          Enter a booking all the same
        </a>
      </p>
    </div>
  );
