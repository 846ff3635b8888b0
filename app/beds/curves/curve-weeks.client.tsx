"use client";

import { useState } from "react";
import { type DecimalMark, readNumber } from "#lib/domain/read-number";
import { FieldProblem } from "../../ui/field-problem";
import { useField } from "../../ui/form-context.client";

const NAME = "stemsPerPlantByWeek";

/** Stems per plant, a box for each week from the first cut. */
export function CurveWeeks({ weeks: initial, mark }: { weeks: readonly string[]; mark?: DecimalMark }) {
  const field = useField(NAME, "Stems per plant, week by week");
  const [weeks, setWeeks] = useState<readonly string[]>(field.typed ?? initial);
  const sum = weeks.reduce((stems, week) => {
    const read = readNumber(week.trim(), mark);
    return stems + (read.ok ? read.value : 0);
  }, 0);
  return (
    <fieldset className="wide field">
      <legend>Stems per plant, week by week from the first cut</legend>
      <div className="week-inputs">
        {weeks.map((week, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the week
          <div key={index}>
            <label htmlFor={`${field.id}-${index}`} className="small">
              <span className="visually-hidden">Stems per plant, </span>week {index + 1}
            </label>
            <input
              id={index === 0 ? field.id : `${field.id}-${index}`}
              aria-label={`Stems per plant, week ${index + 1}`}
              name={NAME}
              inputMode="decimal"
              autoComplete="off"
              value={week}
              aria-invalid={field.problem ? true : undefined}
              aria-describedby={field.problemId}
              onChange={({ target }) =>
                setWeeks(weeks.map((before, place) => (place === index ? target.value : before)))
              }
            />
          </div>
        ))}
      </div>
      <p className="hint">{sum.toFixed(1)} stems per plant in the season, before frost and picking losses.</p>
      <FieldProblem id={field.problemId} message={field.problem} />
      <div className="actions">
        <button type="button" onClick={() => setWeeks([...weeks, ""])} disabled={weeks.length >= 52}>
          Add a week
        </button>
        <button type="button" onClick={() => setWeeks(weeks.slice(0, -1))} disabled={weeks.length < 2}>
          Take the last week off
        </button>
      </div>
    </fieldset>
  );
}
