import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { COLOURS } from "#lib/domain/words";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { SelectField, TextField } from "../../ui/form-fields.client";
import { deleteVariety, saveVariety } from "./crop-actions";

const COLOUR_OPTIONS = COLOURS.map((colour) => ({ value: colour, label: colour }));

/** The varieties of a crop: to rename, to recolour, to remove, and one to add. */
export const VarietyRows = ({ crop, varieties }: { crop: Crop; varieties: readonly Variety[] }) => (
  <section aria-labelledby="varieties">
    <h2 id="varieties">Varieties</h2>
    {varieties.length === 0 && <p>No variety yet: a planting is always of one.</p>}
    <ul className="plain-list">
      {varieties.map((variety) => (
        <li key={variety.id}>
          <details>
            <summary>
              {variety.name}, <ColourWord colour={variety.colour} />
            </summary>
            <VarietyForm crop={crop} variety={variety} />
            <Form
              action={deleteVariety}
              submit={`Remove ${variety.name}`}
              hidden={{ varietyId: variety.id }}
              label={`Remove ${variety.name}`}
              isQuiet
            />
          </details>
        </li>
      ))}
    </ul>
    <h3>Add a variety</h3>
    <VarietyForm key={varieties.length} crop={crop} />
  </section>
);

const VarietyForm = ({ crop, variety }: { crop: Crop; variety?: Variety }) => (
  <Form
    action={saveVariety}
    submit={variety ? "Save the variety" : "Add the variety"}
    hidden={{ cropId: crop.id, varietyId: variety?.id ?? "" }}
    label={variety?.name ?? "A new variety"}
    isQuiet
  >
    <div className="fields">
      <TextField name="name" label="Name" value={variety?.name} />
      <SelectField name="colour" label="Colour" value={variety?.colour ?? "white"} options={COLOUR_OPTIONS} />
    </div>
  </Form>
);
