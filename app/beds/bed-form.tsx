import { BED_FLAGS, type Bed } from "#lib/domain/bed";
import { MEASURES, shown } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import { Form } from "../ui/form.client";
import { CheckGroup } from "../ui/form-checks.client";
import { AreaField, DayField, NumberField, TextField } from "../ui/form-fields.client";
import { saveBed } from "./actions";

const FLAG_OPTIONS = BED_FLAGS.map((flag) => ({ value: flag, label: flag }));

/** A bed, to add (no `bed`) or to change. */
export function BedForm({ bed, units }: { bed?: Bed; units: Units }) {
  const { length } = MEASURES[units];
  return (
    <Form
      action={saveBed}
      submit={bed ? "Save the bed" : "Add the bed"}
      hidden={{ bedId: bed?.id ?? "" }}
      label={bed ? `Bed ${bed.name}` : "A new bed"}
    >
      <div className="fields">
        <TextField name="name" label="Name" value={bed?.name} hint="Short, as on its stake: D4." />
        <NumberField
          name="lengthMetres"
          label="Length"
          unit={length.word}
          value={bed && shown(length, bed.lengthMetres)}
        />
        <NumberField
          name="widthMetres"
          label="Width"
          unit={length.word}
          value={bed && shown(length, bed.widthMetres)}
        />
        <CheckGroup
          name="flags"
          label="Reasons of the ground to dig over winter"
          hint="A bed with any of these is never proposed for keeping in the ground."
          options={FLAG_OPTIONS}
          values={bed?.flags ?? []}
        />
        <DayField name="noEntryFrom" label="Sprayed on" value={bed?.noEntryFrom ?? ""} />
        <DayField
          name="noEntryUntil"
          label="No entry until"
          value={bed?.noEntryUntil ?? ""}
          hint="The product’s label sets the interval, and local rules govern; we know neither. Nothing in this bed is listed for picking before that day."
        />
        <AreaField name="note" label="Note" value={bed?.note} />
      </div>
    </Form>
  );
}
