import type { WhatIf } from "#lib/domain/what-if";
import { Form } from "../../ui/form.client";
import { deleteWhatIf } from "../actions";

/** Said once, after a what-if was adopted: what it supposes is now so, and would come on top of itself. */
export const Adopted = ({ whatIf }: { whatIf: WhatIf }) => (
  <div className="notice good">
    <p>
      <strong className="good-word">✓ Adopted.</strong> The farm is now as {whatIf.name} supposed; Undo at the top takes
      it back. The what-if is still kept, and a late season or another yield in it now counts from the new farm, a
      second time.
    </p>
    <Form
      action={deleteWhatIf}
      submit="Remove the what-if, it is done"
      hidden={{ whatIfId: whatIf.id }}
      label={`Remove ${whatIf.name}, now adopted`}
      isQuiet
    />
  </div>
);
