"use client";

import { type ChangeEvent, useId, useState, useTransition } from "react";
import type { Units } from "#lib/domain/words";
import { answered } from "../../../ui/answered.client";
import { Form } from "../../../ui/form.client";
import type { Option } from "../../../ui/form-fields.client";
import { keepTyped, learnFirstCuts } from "./learn-actions";
import type { Lesson } from "./lesson";
import { LessonFound } from "./lesson-found";

type Asked = { readonly curve: string; readonly dates: string };

/** A curve to choose: whether it counts from planting, and the first cuts that were kept or noted of it, each a line as it is typed. */
type Choice = Option & { readonly isPlanted: boolean; readonly onRecord: readonly string[] };

/** First cuts as they are typed or lie in a file, and what they teach of a curve. */
export function LearnForm({ choices, units }: { choices: readonly Choice[]; units: Units }) {
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
  const chosen = choices.find(({ value }) => value === curve);
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
            {chosen?.isPlanted
              ? "The day they were set out and the first cut, such as 2024-05-20 2024-07-22."
              : "As days, such as 2024-06-05."}
          </p>
          {chosen && chosen.onRecord.length > 0 && (
            <button type="button" className="quiet" onClick={() => setDates(chosen.onRecord.join("\n"))}>
              Use {chosen.onRecord.length === 1 ? "the first cut" : `the ${chosen.onRecord.length} first cuts`} on
              record
            </button>
          )}
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
        {chosen && dates.trim() !== "" && (
          <Form
            action={keepTyped}
            submit="Keep them for next year"
            label="Keep these first cuts"
            hidden={{ curve, dates }}
            isQuiet
          />
        )}
      </div>
      <div aria-live="polite">
        {isCurrent && !isPending && <LessonFound lesson={found.lesson} asked={found.asked} units={units} />}
      </div>
    </>
  );
}
