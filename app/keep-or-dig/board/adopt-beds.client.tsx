"use client";

import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { TextField } from "../../ui/form-fields.client";
import { adoptBeds, saveAsWhatIf } from "../actions";
import type { BedRow } from "../planner-data";
import { bedNames } from "../questions/found-words";

type Props = {
  rows: readonly BedRow[];
  seasonYear: number;
  keptBedIds: readonly number[];
};

/** Writes the ticked beds to the farm, or keeps them as a what-if that writes nothing. */
export function AdoptBeds({ rows, seasonYear, keptBedIds }: Props) {
  const idsOf = (found: readonly BedRow[]) => found.map(({ id }) => id);
  const toKeep = idsOf(rows.filter(({ id, now }) => keptBedIds.includes(id) && now !== "kept"));
  const toDig = idsOf(rows.filter(({ id, now }) => !keptBedIds.includes(id) && now !== "dug"));
  const hidden = { seasonYear, keptBedIds: keptBedIds.join() };
  if (toKeep.length + toDig.length === 0)
    return (
      <p className="notice">
        The farm stands as ticked: there is nothing to adopt. <a href="/keep-or-dig/worksheet">The winter worksheet</a>{" "}
        says what to do when.
      </p>
    );
  return (
    <section aria-labelledby="adopt" className="card adopt-beds">
      <h2 id="adopt">Adopt these beds</h2>
      <p>
        {toKeep.length > 0 && <>From now on kept in the ground: {bedNames(rows, toKeep)}. </>}
        {toDig.length > 0 && <>From now on dug: {bedNames(rows, toDig)}. </>}
        Season, Picking and Buying then show the new bloom. It is one change, and Undo takes it back.
      </p>
      <Form
        action={adoptBeds}
        submit={`Adopt: ${countOf(keptBedIds.length, "bed")} kept`}
        hidden={hidden}
        label="Adopt these beds"
      />
      <details>
        <summary>Or keep them as a what-if, which writes nothing to the farm</summary>
        <Form action={saveAsWhatIf} submit="Save as a what-if" hidden={hidden} label="Save as a what-if" isQuiet>
          <div className="fields">
            <TextField name="name" label="Name" value={`Keep ${countOf(keptBedIds.length, "bed")}`} />
          </div>
        </Form>
      </details>
    </section>
  );
}
