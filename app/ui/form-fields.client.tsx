"use client";

import type { ReactNode } from "react";
import { FieldProblem } from "./field-problem";
import { useField } from "./form-context.client";

type FieldProps = {
  name: string;
  label: string;
  unit?: string;
  hint?: ReactNode;
  value?: string;
  isWide?: boolean;
};

type Field = ReturnType<typeof useField>;

/** What a control says to a screen reader of its field: whether it is wrong, and where its hint and problem stand. */
export const described = ({ problemId, hintId, problem }: Field, hint: ReactNode) => ({
  "aria-invalid": problem ? true : undefined,
  "aria-describedby": hint ? `${hintId} ${problemId}` : problemId,
});

function Frame({
  field,
  label,
  unit,
  hint,
  isWide,
  children,
}: Omit<FieldProps, "name"> & { field: Field; children: ReactNode }) {
  return (
    <div className={isWide ? "field wide" : "field"}>
      <label htmlFor={field.id}>
        {label} {unit && <span className="unit">{unit}</span>}
      </label>
      {children}
      <div>
        {hint && (
          <p className="hint" id={field.hintId}>
            {hint}
          </p>
        )}
        <FieldProblem id={field.problemId} message={field.problem} />
      </div>
    </div>
  );
}

type TextProps = FieldProps & {
  type?: "text" | "date";
  inputMode?: "text" | "decimal" | "numeric";
  suggestions?: readonly string[];
};

/** A line of text. It is made anew when what the farm holds has changed, and keeps what is typed otherwise. */
export function TextField({ name, value = "", type = "text", inputMode, suggestions, ...frame }: TextProps) {
  const field = useField(name, frame.label);
  return (
    <Frame field={field} {...frame}>
      <input
        key={value}
        id={field.id}
        name={name}
        type={type}
        inputMode={inputMode}
        autoComplete="off"
        defaultValue={field.typed?.[0] ?? value}
        list={suggestions && `${field.id}-list`}
        {...described(field, frame.hint)}
      />
      {suggestions && (
        <datalist id={`${field.id}-list`}>
          {suggestions.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
    </Frame>
  );
}

/** A number, typed as text so that a slip stays on the screen to be mended. */
export const NumberField = (props: FieldProps) => <TextField {...props} inputMode="decimal" />;

/** A calendar day. */
export const DayField = (props: FieldProps) => <TextField {...props} type="date" />;

export type Option = { readonly value: string; readonly label: string };

/** One of several; the first when nothing else is said. */
export function SelectField({ name, value, options, ...frame }: FieldProps & { options: readonly Option[] }) {
  const field = useField(name, frame.label);
  return (
    <Frame field={field} {...frame}>
      <select
        key={value}
        id={field.id}
        name={name}
        defaultValue={field.typed?.[0] ?? value}
        {...described(field, frame.hint)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </Frame>
  );
}

/** Several lines of text. */
export function AreaField({ name, value = "", ...frame }: FieldProps) {
  const field = useField(name, frame.label);
  return (
    <Frame field={field} isWide {...frame}>
      <textarea
        key={value}
        id={field.id}
        name={name}
        defaultValue={field.typed?.[0] ?? value}
        {...described(field, frame.hint)}
      />
    </Frame>
  );
}
