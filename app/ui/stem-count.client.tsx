"use client";

import { useState } from "react";
import { CountInput, countIn } from "./count-input.client";
import { useField } from "./form-context.client";
import { described } from "./form-fields.client";

type Props = {
  name: string;
  /** What is counted, for a screen reader: "Stems cut: B1, Dahlia Maple Row". */
  label: string;
  first: number;
  least?: number;
  /** What follows the number: buttons that may say it. Null while no whole number is typed. */
  children: (count: number | null) => React.ReactNode;
};

/** A number of stems for a thumb: one fewer, one more, or typed. */
export function StemCount({ name, label, first, least = 0, children }: Props) {
  const [typed, setTyped] = useState(String(first));
  const field = useField(name, "Stems");
  const count = countIn(typed);
  return (
    <div className="cut-controls">
      <CountInput
        what={label}
        onStep={(by) => setTyped(String(Math.max(least, (count ?? first) + by)))}
        id={field.id}
        name={name}
        inputMode="numeric"
        aria-label={label}
        value={typed}
        onChange={({ target }) => setTyped(target.value)}
        {...described(field, null)}
      />
      {children(count)}
    </div>
  );
}
