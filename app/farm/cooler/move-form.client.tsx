"use client";

import { FieldProblem } from "../../ui/field-problem";
import { Form } from "../../ui/form.client";
import { useField } from "../../ui/form-context.client";
import { StemCount } from "../../ui/stem-count.client";
import { moveStems } from "./cooler-actions";

type Lot = { varietyId: number; cutOn: string };

/** A number and two buttons: so many of a lot taken out, or thrown away. */
export const MoveForm = ({ varietyId, cutOn, name, stems }: Lot & { name: string; stems: number }) => (
  <Form action={moveStems} label={`Out of the cooler: ${name}`} hidden={{ varietyId, cutOn, bookingId: "" }} isQuiet>
    <StemCount name="stemCount" label={`Stems: ${name}`} first={stems} least={1}>
      {(count) => (
        <>
          <button type="submit" name="kind" value="taken out">
            {count === null ? "Take out" : `Take ${count} out`}
            <span className="visually-hidden">: {name}</span>
          </button>
          <button type="submit" name="kind" value="thrown away">
            {count === null ? "Throw away" : `Throw ${count} away`}
            <span className="visually-hidden">: {name}</span>
          </button>
        </>
      )}
    </StemCount>
    <Wrong />
  </Form>
);

function Wrong() {
  const { problemId, problem } = useField("stemCount", "Stems");
  return <FieldProblem id={problemId} message={problem} />;
}
