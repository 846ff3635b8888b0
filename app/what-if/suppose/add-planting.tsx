import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { TREATMENT_WORDS, TREATMENTS } from "#lib/domain/words";
import { DayField, NumberField, SelectField } from "../../ui/form-fields.client";
import { AddForm } from "./add-form";
import { bedOptions, plantingOptions, varietyOptions } from "./choices";

const TREATMENT_OPTIONS = TREATMENTS.map((value) => ({ value, label: TREATMENT_WORDS[value] }));

/** A planting gained, moved or left out. */
export function AddPlanting({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const beds = bedOptions(farm);
  const plantings = plantingOptions(farm, whatIf.seasonYear);
  const varieties = varietyOptions(farm);
  if (beds.length === 0 || varieties.length === 0)
    return (
      <p className="soft">
        Nothing can be planted yet: <a href="/beds">add a bed</a> and a planting first.
      </p>
    );
  return (
    <>
      <AddForm whatIf={whatIf} kind="planting-added" title="One planting more" submit="Add the planting">
        <SelectField name="planting.varietyId" label="Variety" options={varieties} />
        <SelectField
          name="planting.treatment"
          label="How it is grown"
          options={TREATMENT_OPTIONS}
          hint="Without a bloom curve for it the planting gives nothing, and the problems below say so."
        />
        <SelectField name="planting.bedId" label="Bed" options={beds} />
        <DayField name="planting.plantedOn" label="Planted or sown on" value={`${whatIf.seasonYear}-05-10`} />
        <NumberField name="planting.plantCount" label="Plants" value="100" />
        <NumberField
          name="planting.aliveShare"
          label="Alive at first cut"
          unit="%"
          value="95"
          hint="From memory, not a figure of your farm."
        />
        <NumberField
          name="planting.gradeOutShare"
          label="Graded out"
          unit="%"
          hint="Left empty, as the bloom curve says, season by season."
        />
      </AddForm>
      {plantings.length > 0 && (
        <div className="cards">
          <AddForm whatIf={whatIf} kind="planting-moved" title="A planting moves" submit="Add the move">
            <SelectField name="plantingId" label="Planting" options={plantings} />
            <DayField name="plantedOn" label="Planted on" hint="Left empty, the day stays." />
            <SelectField
              name="bedId"
              label="In bed"
              value=""
              options={[{ value: "", label: "the same bed" }, ...beds]}
            />
          </AddForm>
          <AddForm whatIf={whatIf} kind="planting-removed" title="A planting is left out" submit="Add the loss">
            <SelectField name="plantingId" label="Planting" options={plantings} />
          </AddForm>
        </div>
      )}
    </>
  );
}
