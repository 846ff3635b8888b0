import type { WhatIf } from "#lib/domain/what-if";
import { Form } from "../ui/form.client";
import { TextField } from "../ui/form-fields.client";
import { deleteWhatIf, renameWhatIf } from "./actions";

/** Another name for a what-if, or away with it. */
export const RenameRemove = ({ whatIf }: { whatIf: WhatIf }) => (
  <details>
    <summary>
      Rename or remove<span className="visually-hidden"> {whatIf.name}</span>
    </summary>
    <Form
      action={renameWhatIf}
      submit="Rename"
      hidden={{ whatIfId: whatIf.id }}
      label={`Another name for ${whatIf.name}`}
      isQuiet
    >
      <TextField name="name" label="Name" value={whatIf.name} />
    </Form>
    <Form
      action={deleteWhatIf}
      submit="Remove this what-if"
      hidden={{ whatIfId: whatIf.id }}
      label={`Remove ${whatIf.name}`}
      isQuiet
    />
  </details>
);
