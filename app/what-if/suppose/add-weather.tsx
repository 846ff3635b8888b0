import { dayInYear } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { DayField, NumberField, SelectField } from "../../ui/form-fields.client";
import { AddForm } from "./add-form";
import { cropOptions } from "./choices";

const DIRECTIONS = [
  { value: "late", label: "late" },
  { value: "early", label: "early" },
];

/** Frost, an early or late season, a poor or a rich one. */
export function AddWeather({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const crops = cropOptions(farm);
  return (
    <div className="cards">
      <AddForm whatIf={whatIf} kind="frost-moved" title="The first frost comes on another day" submit="Add the frost">
        <DayField
          name="firstFrost"
          label="First frost"
          value={dayInYear(farm.farm.frost.firstAutumnP50, whatIf.seasonYear)}
          hint="The early and the late date of your farm move with it."
        />
      </AddForm>
      <AddForm whatIf={whatIf} kind="season-shifted" title="The season is late or early" submit="Add the shift">
        <NumberField name="days" label="First cuts come" unit="days" value="10" />
        <SelectField name="direction" label="Late or early" value="late" options={DIRECTIONS} />
        <SelectField name="cropId" label="Of" value="" options={crops} />
      </AddForm>
      <AddForm whatIf={whatIf} kind="yield-scaled" title="More or fewer stems" submit="Add the yield">
        <NumberField name="factor" label="Yield" unit="% of the usual" value="80" />
        <SelectField name="cropId" label="Of" value="" options={crops} />
      </AddForm>
    </div>
  );
}
