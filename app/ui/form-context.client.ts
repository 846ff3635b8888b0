"use client";

import { createContext, useContext, useEffect } from "react";
import type { FormState } from "./form-state";

type FormParts = {
  readonly formId: string;
  readonly state: FormState;
  readonly labels: Map<string, string>;
  readonly isPending: boolean;
  /** Takes the problems away: what they speak of has moved. */
  readonly forget: () => void;
};

export const FormContext = createContext<FormParts | null>(null);

/** The part of a place that names the field: "flags[2]" is a matter of the field "flags". */
const isAt = (place: string, name: string): boolean => place === name || place.startsWith(`${name}[`);

/** The form that a part of it stands in. `what` names the part where there is none. */
export function useForm(what: string): FormParts {
  const form = useContext(FormContext);
  if (!form) throw new RangeError(`${what} stands outside a Form`);
  return form;
}

/**
 * What a field must know of its form: its ids, the texts typed into it when the form was refused, and what is wrong with it. `label` is what
 * the list of problems calls the field.
 */
export function useField(name: string, label: string) {
  const { formId, state, labels } = useForm(`the field "${name}"`);
  useEffect(() => {
    labels.set(name, label);
  }, [labels, name, label]);
  const id = `${formId}-${name}`;
  return {
    id,
    problemId: `${id}-problem`,
    hintId: `${id}-hint`,
    typed: state.outcome === "refused" && state.typed ? (state.typed[name] ?? []) : null,
    problem: state.problems.find(({ place }) => isAt(place, name))?.message,
  };
}
