import type { Crop } from "#lib/domain/records/crop";
import { formFields, type Manner } from "#lib/domain/records/form";
import { AS_ITS_CROP, OWN_TRAITS, VARIETY, type Variety } from "#lib/domain/records/variety";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { deleteVariety, saveVariety } from "./crop-actions";

type Props = { crop: Crop; varieties: readonly Variety[]; manner: Manner };

/** The varieties of a crop: to rename, to recolour, to remove, and one to add. */
export const VarietyRows = ({ crop, varieties, manner }: Props) => (
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
            <VarietyForm crop={crop} variety={variety} manner={manner} />
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
    <VarietyForm key={varieties.length} crop={crop} manner={manner} />
  </section>
);

function VarietyForm({ crop, variety, manner }: { crop: Crop; variety?: Variety; manner: Manner }) {
  const { name, colour } = formFields(VARIETY, variety ?? { colour: "white" }, manner);
  const own = formFields(OWN_TRAITS, variety ?? AS_ITS_CROP, manner);
  return (
    <Form
      action={saveVariety}
      submit={variety ? "Save the variety" : "Add the variety"}
      hidden={{ cropId: crop.id, varietyId: variety?.id ?? "" }}
      label={variety?.name ?? "A new variety"}
      isQuiet
    >
      <div className="fields">
        <RecordField {...name} label="Name" />
        <RecordField {...colour} />
      </div>
      <details>
        <summary>What it is otherwise than {crop.name}</summary>
        <RecordField {...own.roles} />
        <div className="fields">
          <RecordField {...own.headSize} />
          <RecordField {...own.stemLength} />
          <RecordField {...own.outOfWater} />
          <RecordField {...own.holdDays} />
          <RecordField {...own.stretchDays} />
        </div>
      </details>
    </Form>
  );
}
