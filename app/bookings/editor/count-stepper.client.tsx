"use client";

import type { KeyboardEvent } from "react";
import { type DecimalMark, readNumber, writeNumber } from "#lib/domain/read-number";
import { CountInput } from "../../ui/count-input.client";
import { FieldProblem } from "../../ui/field-problem";
import { useField } from "../../ui/form-context.client";
import { described } from "../../ui/form-fields.client";

type Props = {
  name: string;
  /** What is counted. */
  what: string;
  /** What a screen reader calls it, and the list of problems. */
  label: string;
  listedAs: string;
  mark: DecimalMark;
  value: string;
  onChange: (typed: string) => void;
  /** Down from one, or left at nought. */
  onNone: () => void;
  onEnter?: () => void;
};

/** A count with one fewer and one more beside it. Up and down do the same from the keyboard, so that tabbing goes from count to count. */
export function CountStepper({ name, what, label, listedAs, mark, value, onChange, onNone, onEnter }: Props) {
  const field = useField(name, listedAs);
  const reading = readNumber(value.trim() || "0", mark);
  const step = (by: number) => {
    if (!reading.ok) return;
    const next = reading.value + by;
    if (next <= 0) onNone();
    else onChange(writeNumber(next, mark));
  };
  const keyed = (event: KeyboardEvent) => {
    if (event.key === "ArrowUp") step(1);
    else if (event.key === "ArrowDown") step(-1);
    else if (event.key === "Enter") onEnter?.();
    else return;
    event.preventDefault();
  };
  return (
    <div>
      <CountInput
        what={what}
        onStep={step}
        isKeyed
        id={field.id}
        name={name}
        inputMode="decimal"
        aria-label={label}
        value={value}
        onChange={({ target }) => onChange(target.value)}
        onBlur={() => {
          if (value.trim() !== "" && reading.ok && reading.value === 0) onNone();
        }}
        onKeyDown={keyed}
        {...described(field, null)}
      />
      <FieldProblem id={field.problemId} message={field.problem} />
    </div>
  );
}
