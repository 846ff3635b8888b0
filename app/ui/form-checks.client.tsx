"use client";

import type { ReactNode } from "react";
import { FieldProblem } from "./field-problem";
import { useField } from "./form-context.client";
import { described, type Option } from "./form-fields.client";

/** Yes or no. */
export function CheckField({
  name,
  label,
  isChecked = false,
  hint,
}: {
  name: string;
  label: string;
  isChecked?: boolean;
  hint?: ReactNode;
}) {
  const field = useField(name, label);
  return (
    <div className="field">
      <label className="check">
        <input
          key={String(isChecked)}
          id={field.id}
          name={name}
          type="checkbox"
          value="yes"
          defaultChecked={field.typed ? field.typed.includes("yes") : isChecked}
          {...described(field, hint)}
        />
        {label}
      </label>
      {hint && (
        <p className="hint" id={field.hintId}>
          {hint}
        </p>
      )}
      <FieldProblem id={field.problemId} message={field.problem} />
    </div>
  );
}

type CheckGroupProps = {
  name: string;
  label: string;
  options: readonly Option[];
  values: readonly string[];
  hint?: ReactNode;
};

/** Any of several. */
export function CheckGroup({ name, label, options, values, hint }: CheckGroupProps) {
  const field = useField(name, label);
  const ticked = field.typed ?? values;
  return (
    <fieldset className="wide field" {...described(field, hint)}>
      <legend>{label}</legend>
      <div className="row">
        {options.map((option, index) => (
          <label key={option.value} className="check">
            <input
              key={values.join()}
              id={index === 0 ? field.id : undefined}
              type="checkbox"
              name={name}
              value={option.value}
              defaultChecked={ticked.includes(option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
      {hint && (
        <p className="hint" id={field.hintId}>
          {hint}
        </p>
      )}
      <FieldProblem id={field.problemId} message={field.problem} />
    </fieldset>
  );
}
