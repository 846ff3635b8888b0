import type { WhatIf } from "#lib/domain/what-if";
import { Form } from "../ui/form.client";
import { SelectField, TextField } from "../ui/form-fields.client";
import { makeWhatIf } from "./actions";

/** A name is enough to begin; the changes come on its own page. */
export function NewWhatIf({ seasonYear, whatIfs }: { seasonYear: number; whatIfs: readonly WhatIf[] }) {
  const starts = [
    { value: "", label: "the farm as it stands" },
    ...whatIfs.map(({ id, name }) => ({ value: String(id), label: `the changes of ${name}` })),
  ];
  return (
    <Form action={makeWhatIf} submit="Make the what-if" hidden={{ seasonYear }} label="A new what-if">
      <div className="fields">
        <TextField name="name" label="Name" hint="For example: frost two weeks early, or two beds more kept." />
        {whatIfs.length > 0 && <SelectField name="fromId" label="Starting from" value="" options={starts} />}
      </div>
    </Form>
  );
}
