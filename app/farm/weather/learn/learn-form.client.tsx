"use client";

import { type ChangeEvent, useId, useState, useTransition } from "react";
import type { Units } from "#lib/domain/words";
import { answered } from "../../../ui/answered.client";
import type { Option } from "../../../ui/form-fields.client";
import { learnFirstCuts } from "./learn-actions";
import type { Lesson } from "./lesson";
import { LessonFound } from "./lesson-found";

type Asked = { readonly curve: string; readonly dates: string };

/** First cuts as they are typed or lie in a file, and what they teach of a curve. */
export function LearnForm({ choices, units }: { choices: readonly Option[]; units: Units }) {
  const [curve, setCurve] = useState("");
  const [dates, setDates] = useState("");
  const [found, setFound] = useState<{ readonly asked: Asked; readonly lesson: Lesson | null } | null>(null);
  const [isPending, startLooking] = useTransition();
  const id = useId();
  const choose = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file) setDates(await file.text());
    target.value = "";
  };
  const look = () =>
    startLooking(async () => {
      const form = new FormData();
      form.set("curve", curve);
      form.set("dates", dates);
      setFound({ asked: { curve, dates }, lesson: await answered(learnFirstCuts(null, form)) });
    });
  const isCurrent = found !== null && found.asked.curve === curve && found.asked.dates === dates;
  return (
    <>
      <div className="fields">
        <div className="field">
          <label htmlFor={`${id}-curve`}>Curve</label>
          <select id={`${id}-curve`} value={curve} onChange={({ target }) => setCurve(target.value)}>
            <option value="">Choose a curve</option>
            {choices.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label htmlFor={`${id}-file`}>A file of year and first_cut</label>
          <input id={`${id}-file`} type="file" accept=".csv,.tsv,.txt" onChange={choose} />
        </div>
        <div className="field wide">
          <label htmlFor={`${id}-dates`}>Or first cuts, one a line</label>
          <textarea
            id={`${id}-dates`}
            value={dates}
            rows={6}
            onChange={({ target }) => setDates(target.value)}
            aria-describedby={`${id}-hint`}
          />
          <p className="hint" id={`${id}-hint`}>
            As days, such as 2024-06-05.
          </p>
        </div>
      </div>
      <div className="actions">
        <button
          type="button"
          className={isCurrent ? undefined : "main"}
          disabled={isPending || !dates.trim() || !curve}
          onClick={look}
        >
          {isPending ? "Looking…" : "Look, change nothing"}
        </button>
      </div>
      <div aria-live="polite">
        {isCurrent && !isPending && <LessonFound lesson={found.lesson} asked={found.asked} units={units} />}
      </div>
    </>
  );
}
