import { BED, type Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { Form } from "../ui/form.client";
import { RecordField } from "../ui/record-field";
import { saveBed } from "./actions";

/** A bed, to add (no `bed`) or to change. */
export const BedForm = ({ bed, farm }: { bed?: Bed; farm: Farm }) => (
  <Form
    action={saveBed}
    submit={bed ? "Save the bed" : "Add the bed"}
    hidden={{ bedId: bed?.id ?? "" }}
    label={bed ? `Bed ${bed.name}` : "A new bed"}
  >
    <div className="fields">
      {Object.values(formFields(BED, bed, farm)).map((field) => (
        <RecordField key={field.name} {...field} />
      ))}
    </div>
  </Form>
);
