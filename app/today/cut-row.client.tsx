"use client";

import { useState } from "react";
import { FieldProblem } from "../ui/field-problem";
import { Form } from "../ui/form.client";
import { useField } from "../ui/form-context.client";
import { described } from "../ui/form-fields.client";
import { saveCut } from "./today-actions";

type Props = {
  cutOn: string;
  bedId: number;
  varietyId: number;
  /** What the row is called: its bed, crop and variety. */
  name: string;
  stemsToCut: number;
  /** By booking, in the order in which they are served. */
  asked: readonly (readonly [bookingId: number, stemsToCut: number])[];
};

/** One tap where it came as asked; fewer, more or none otherwise. */
export const CutRow = ({ cutOn, bedId, varietyId, name, stemsToCut, asked }: Props) => (
  <Form
    action={saveCut}
    label={`Record ${name}`}
    hidden={{ cutOn, bedId, varietyId, asked: JSON.stringify(asked) }}
    isQuiet
  >
    <Count name={name} stemsToCut={stemsToCut} />
  </Form>
);

function Count({ name, stemsToCut }: Pick<Props, "name" | "stemsToCut">) {
  const [typed, setTyped] = useState(String(stemsToCut));
  const field = useField("stemsCut", "Stems cut");
  const count = /^\d{1,7}$/.test(typed.trim()) ? Number(typed) : null;
  const step = (by: number) => setTyped(String(Math.max(0, (count ?? stemsToCut) + by)));
  return (
    <>
      <div className="cut-controls">
        <span className="step">
          <button type="button" aria-label={`One fewer: ${name}`} onClick={() => step(-1)}>
            −
          </button>
          <input
            id={field.id}
            name="stemsCut"
            inputMode="numeric"
            autoComplete="off"
            aria-label={`Stems cut: ${name}`}
            value={typed}
            onChange={({ target }) => setTyped(target.value)}
            {...described(field, null)}
          />
          <button type="button" aria-label={`One more: ${name}`} onClick={() => step(1)}>
            +
          </button>
        </span>
        <button type="submit" className="main">
          {count === null ? "Save" : `Save ${count}`}
        </button>
        <button type="submit" name="none" value="yes">
          None left
        </button>
      </div>
      <FieldProblem id={field.problemId} message={field.problem} />
    </>
  );
}
