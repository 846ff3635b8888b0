"use client";

import {
  type FormEvent,
  type ReactNode,
  startTransition,
  useActionState,
  useEffect,
  useId,
  useRef,
  useState,
} from "react";
import { FormContext } from "./form-context.client";
import { type FormAction, FRESH } from "./form-state";

type Props = {
  action: FormAction;
  submit: string;
  hidden?: Readonly<Record<string, string | number>>;
  children?: ReactNode;
  /** Beside the button. */
  beside?: ReactNode;
  /** What a screen reader calls the form. */
  label?: string;
  isQuiet?: boolean;
};

/**
 * A form that a server action takes or refuses. When it is refused nothing was written: each problem stands beside its field and in a list
 * at the top, the first wrong field takes the focus, and what was typed stays.
 */
export function Form({ action, submit, hidden = {}, children, beside, label, isQuiet = false }: Props) {
  const [state, dispatch, isPending] = useActionState(action, FRESH);
  const [labels] = useState(() => new Map<string, string>());
  const form = useRef<HTMLFormElement>(null);
  const formId = useId();
  useEffect(() => {
    if (state.outcome !== "refused") return;
    const wrong = form.current?.querySelector<HTMLElement>("[aria-invalid=true]");
    (wrong ?? form.current?.querySelector<HTMLElement>("[role=alert]"))?.focus();
  }, [state]);
  /** Sent by hand, since a form that React sends is emptied afterwards. */
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const filled = new FormData(event.currentTarget);
    startTransition(() => dispatch(filled));
  };
  return (
    <FormContext value={{ formId, state, labels }}>
      <form ref={form} action={dispatch} onSubmit={send} noValidate aria-label={label} className="kit">
        {Object.entries(hidden).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        {state.outcome === "refused" && <Refusal formId={formId} labels={labels} problems={state.problems} />}
        {children}
        <div className="actions">
          <button type="submit" className={isQuiet ? undefined : "main"} disabled={isPending}>
            {isPending ? "Saving…" : submit}
          </button>
          {beside}
          <span role="status" className="good-word">
            {state.outcome === "saved" && !isPending && "✓ Saved"}
          </span>
        </div>
      </form>
    </FormContext>
  );
}

type RefusalProps = {
  formId: string;
  labels: Map<string, string>;
  problems: readonly { place: string; message: string }[];
};

const Refusal = ({ formId, labels, problems }: RefusalProps) => (
  <div className="notice bad" role="alert" tabIndex={-1}>
    <p>
      <strong>Not saved.</strong> {problems.length === 1 ? "One thing" : `${problems.length} things`} to mend; what you
      typed is still here.
    </p>
    <ul>
      {problems.map(({ place, message }) => {
        const name = place.replace(/\[.*$/, "");
        const label = labels.get(place) ?? labels.get(name);
        return (
          <li key={`${place}: ${message}`}>
            {label ? (
              <>
                <a href={`#${formId}-${labels.has(place) ? place : name}`}>{label}</a>: {message}
              </>
            ) : (
              message
            )}
          </li>
        );
      })}
    </ul>
  </div>
);
