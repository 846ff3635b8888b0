"use client";

import type { KeyboardEvent, ReactNode } from "react";
import { FieldProblem } from "./field-problem";
import { useField } from "./form-context.client";

type FieldProps = {
  name: string;
  label: string;
  unit?: string;
  hint?: ReactNode;
  value?: string;
  isWide?: boolean;
  /** What the list of problems calls the field, where its label alone would not tell it from others. */
  listedAs?: string;
  /** Where given, the value is kept by the caller and not by the page. */
  onChange?: (typed: string) => void;
};

type Field = ReturnType<typeof useField>;

/** What a control says to a screen reader of its field: whether it is wrong, and where its hint and problem stand. */
export const described = ({ problemId, hintId, problem }: Field, hint: ReactNode) => ({
  "aria-invalid": problem ? true : undefined,
  "aria-describedby": hint ? `${hintId} ${problemId}` : problemId,
});

/** A control's text: kept by the caller, or made anew when what the farm holds has changed and else kept by the page. */
const kept = (field: Field, value: string | undefined, onChange: FieldProps["onChange"]) =>
  onChange
    ? { value, onChange: (event: { target: { value: string } }) => onChange(event.target.value) }
    : { defaultValue: field.typed?.[0] ?? value };

/** A control with its label, hint and problem. */
function Frame({
  field,
  label,
  unit,
  hint,
  isWide,
  children,
}: Pick<FieldProps, "label" | "unit" | "hint" | "isWide"> & { field: Field; children: ReactNode }) {
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
  onEnter?: () => void;
};

/** A line of text. */
export function TextField(props: TextProps) {
  const { name, value = "", onChange, type = "text", inputMode, suggestions, listedAs, onEnter, ...frame } = props;
  const field = useField(name, listedAs ?? frame.label);
  const enter = (event: KeyboardEvent) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    onEnter?.();
  };
  return (
    <Frame field={field} {...frame}>
      <input
        key={onChange ? undefined : value}
        id={field.id}
        name={name}
        type={type}
        inputMode={inputMode}
        autoComplete="off"
        {...kept(field, value, onChange)}
        onKeyDown={onEnter && enter}
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

type SelectProps = FieldProps & {
  options: readonly Option[];
  /** Takes the focus when it comes to the screen. */
  isFirst?: boolean;
  /** Under the control, in the same field. */
  beneath?: ReactNode;
};

/** One of several; the first when nothing else is said. */
export function SelectField({ name, value, onChange, options, listedAs, isFirst, beneath, ...frame }: SelectProps) {
  const field = useField(name, listedAs ?? frame.label);
  return (
    <Frame field={field} {...frame}>
      <select
        key={onChange ? undefined : value}
        id={field.id}
        name={name}
        // biome-ignore lint/a11y/noAutofocus: only a line that was just asked for takes the focus, for typing on
        autoFocus={isFirst}
        {...kept(field, value, onChange)}
        {...described(field, frame.hint)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      {beneath}
    </Frame>
  );
}

/** Several lines of text. */
export function AreaField({ name, value = "", onChange, listedAs, ...frame }: FieldProps) {
  const field = useField(name, listedAs ?? frame.label);
  return (
    <Frame field={field} isWide {...frame}>
      <textarea
        key={onChange ? undefined : value}
        id={field.id}
        name={name}
        {...kept(field, value, onChange)}
        {...described(field, frame.hint)}
      />
    </Frame>
  );
}
