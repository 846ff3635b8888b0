"use client";

import { createContext, useContext, useEffect } from "react";
import type { FormState } from "./form-state";

type FormParts = { readonly formId: string; readonly state: FormState; readonly labels: Map<string, string> };

export const FormContext = createContext<FormParts | null>(null);

/** The part of a place that names the field: "flags[2]" is a matter of the field "flags". */
const isAt = (place: string, name: string): boolean => place === name || place.startsWith(`${name}[`);

/**
 * What a field must know of its form: its ids, the texts typed into it when the form was refused, and what is wrong with it. `label` is what
 * the list of problems calls the field.
 */
export function useField(name: string, label: string) {
  const form = useContext(FormContext);
  if (!form) throw new RangeError(`the field "${name}" stands outside a Form`);
  const { formId, state, labels } = form;
  useEffect(() => {
    labels.set(name, label);
  }, [labels, name, label]);
  const id = `${formId}-${name}`;
  return {
    id,
    problemId: `${id}-problem`,
    hintId: `${id}-hint`,
    typed: state.outcome === "refused" ? (state.typed[name] ?? []) : null,
    problem: state.problems.find(({ place }) => isAt(place, name))?.message,
  };
}
