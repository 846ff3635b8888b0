"use client";

import type { ComponentProps } from "react";

type Props = ComponentProps<"input"> & {
  /** What is counted, for a screen reader: "B1, Dahlia Maple Row". */
  what: string;
  onStep: (by: 1 | -1) => void;
  /** Tab goes past the buttons, where keys in the field do the same. */
  isKeyed?: boolean;
};

/** A number for a thumb: one fewer, one more, or typed. */
export function CountInput({ what, onStep, isKeyed = false, ...input }: Props) {
  const tabIndex = isKeyed ? -1 : undefined;
  return (
    <span className="step">
      <button type="button" tabIndex={tabIndex} aria-label={`One fewer: ${what}`} onClick={() => onStep(-1)}>
        −
      </button>
      <input autoComplete="off" {...input} />
      <button type="button" tabIndex={tabIndex} aria-label={`One more: ${what}`} onClick={() => onStep(1)}>
        +
      </button>
    </span>
  );
}

/** No record holds more stems. */
const MOST_STEMS = 1_000_000;

/** A count as it is typed; null when it is no whole number, or more than any record holds. */
export function countIn(typed: string): number | null {
  const stems = /^\d{1,7}$/.test(typed.trim()) ? Number(typed) : Number.NaN;
  return stems <= MOST_STEMS ? stems : null;
}
