"use client";

import { useState } from "react";
import { COLOURS, TREATMENT_WORDS, TREATMENTS, type Treatment } from "#lib/domain/words";
import { FieldProblem } from "../../ui/field-problem";
import { useField } from "../../ui/form-context.client";
import { NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import type { PlantingChoices } from "./planting-choices";

type Props = {
  choices: PlantingChoices;
  cropId?: number;
  varietyId?: number;
  treatment?: Treatment;
  winterSurvival: string;
  farmWinterSurvival: string;
};

const COLOUR_OPTIONS = COLOURS.map((colour) => ({ value: colour, label: colour }));

/** Crop, then variety of that crop or a new one, then how it is grown. What overwinters is asked for its survival too. */
export function PlantingChoice({ choices, winterSurvival, farmWinterSurvival, ...initial }: Props) {
  const [cropId, setCropId] = useState(String(initial.cropId ?? choices[0]?.id ?? ""));
  const crop = choices.find(({ id }) => String(id) === cropId);
  const first = crop?.varieties[0];
  const [variety, setVariety] = useState(String(initial.varietyId ?? first?.id ?? "new"));
  const [treatment, setTreatment] = useState<string>(initial.treatment ?? crop?.treatments[0] ?? "field");
  const cropField = useField("cropId", "Crop");
  const varietyField = useField("varietyId", "Variety");
  const treatmentField = useField("treatment", "How it is grown");
  const chooseCrop = (value: string) => {
    const next = choices.find(({ id }) => String(id) === value);
    setCropId(value);
    setVariety(String(next?.varieties[0]?.id ?? "new"));
    if (next && !next.treatments.some((grown) => grown === treatment)) setTreatment(next.treatments[0] ?? "field");
  };
  return (
    <>
      <div className="field">
        <label htmlFor={cropField.id}>Crop</label>
        <select id={cropField.id} name="cropId" value={cropId} onChange={({ target }) => chooseCrop(target.value)}>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
        <FieldProblem id={cropField.problemId} message={cropField.problem} />
      </div>
      <div className="field">
        <label htmlFor={varietyField.id}>Variety</label>
        <select
          id={varietyField.id}
          name="varietyId"
          value={variety}
          onChange={({ target }) => setVariety(target.value)}
          aria-invalid={varietyField.problem ? true : undefined}
          aria-describedby={varietyField.problemId}
        >
          {crop?.varieties.map(({ id, name, colour }) => (
            <option key={id} value={id}>
              {name} ({colour})
            </option>
          ))}
          <option value="new">a new variety…</option>
        </select>
        <FieldProblem id={varietyField.problemId} message={varietyField.problem} />
      </div>
      {variety === "new" && (
        <>
          <TextField name="newVariety.name" label="Name of the new variety" />
          <SelectField name="newVariety.colour" label="Its colour" options={COLOUR_OPTIONS} />
        </>
      )}
      <div className="field">
        <label htmlFor={treatmentField.id}>How it is grown</label>
        <select
          id={treatmentField.id}
          name="treatment"
          value={treatment}
          onChange={({ target }) => setTreatment(target.value)}
          aria-invalid={treatmentField.problem ? true : undefined}
          aria-describedby={treatmentField.problemId}
        >
          {TREATMENTS.map((grown) => (
            <option key={grown} value={grown}>
              {TREATMENT_WORDS[grown]}
              {crop?.treatments.some((known) => known === grown) ? "" : " (no bloom curve yet)"}
            </option>
          ))}
        </select>
        <FieldProblem id={treatmentField.problemId} message={treatmentField.problem} />
      </div>
      {crop?.overwinters && (
        <NumberField
          name="winterSurvivalShare"
          label="Winter survival in the ground"
          unit="%"
          value={winterSurvival}
          hint={`No published figure: your own number. Left empty, the farm’s ${farmWinterSurvival} % is taken.`}
        />
      )}
    </>
  );
}
