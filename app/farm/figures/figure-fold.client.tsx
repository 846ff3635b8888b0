"use client";

import { type ReactNode, type ToggleEvent, useEffect, useRef } from "react";

type Props = {
  summary: ReactNode;
  /** What is saved, as text: when it has become another, the line is done with and closes. */
  saved: string;
  className?: string;
  children: ReactNode;
};

/** A line that opens into its form. One is open at a time; the field takes the focus, and the line takes it back once the figure is saved. */
export function FigureFold({ summary, saved, className, children }: Props) {
  const fold = useRef<HTMLDetailsElement>(null);
  const before = useRef(saved);
  useEffect(() => {
    if (before.current === saved) return;
    before.current = saved;
    if (fold.current?.open) close(fold.current);
  }, [saved]);
  const focusField = ({ currentTarget, newState }: ToggleEvent<HTMLDetailsElement>) => {
    if (newState === "open")
      currentTarget.querySelector<HTMLElement>(".field input, .field select, .field textarea")?.focus();
  };
  return (
    <details ref={fold} name="figure" className={className} onToggle={focusField}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}

/** Leaves a figure as it was: what was typed goes, and the line closes. */
export const LeaveIt = ({ words }: { words: string }) => (
  <button
    type="button"
    onClick={({ currentTarget }) => {
      currentTarget.form?.reset();
      // The form keeps what is typed; it is told that nothing is any more.
      currentTarget.form?.dispatchEvent(new Event("input", { bubbles: true }));
      const fold = currentTarget.closest("details");
      if (fold) close(fold);
    }}
  >
    {words}
  </button>
);

function close(fold: HTMLDetailsElement): void {
  fold.open = false;
  fold.querySelector("summary")?.focus();
}
