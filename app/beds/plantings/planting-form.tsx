import { PLANTING_FLAGS } from "#lib/domain/bed";
import type { Farm } from "#lib/domain/farm";
import { PERCENT, PLAIN, shown, shownOrEmpty } from "#lib/domain/measures";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { Form } from "../../ui/form.client";
import { CheckGroup } from "../../ui/form-checks.client";
import { DayField, NumberField } from "../../ui/form-fields.client";
import { savePlanting } from "./planting-actions";
import { PlantingChoice } from "./planting-choice.client";
import type { PlantingChoices } from "./planting-choices";

const FLAG_OPTIONS = PLANTING_FLAGS.map((flag) => ({ value: flag, label: flag }));

/** What a new planting starts from: our own guesses, for the grower to overrule. */
const ALIVE_AT_FIRST = 0.95;
const GRADED_OUT_AT_FIRST = 0.1;

type Props = { row?: PlantingForecast; bedId: number; seasonYear: number; farm: Farm; choices: PlantingChoices };

/** A planting, to add (no `row`) or to change. */
export function PlantingForm({ row, bedId, seasonYear, farm, choices }: Props) {
  const planting = row?.planting;
  return (
    <Form
      action={savePlanting}
      submit={planting ? "Save the planting" : "Add the planting"}
      hidden={{ plantingId: planting?.id ?? "", bedId, seasonYear }}
      label={row ? `${row.crop.name} ${row.variety.name}` : "A new planting"}
    >
      <div className="fields">
        <PlantingChoice
          key={JSON.stringify(planting)}
          choices={choices}
          cropId={row?.crop.id}
          varietyId={row?.variety.id}
          treatment={planting?.treatment}
          winterSurvival={shownOrEmpty(PERCENT, planting?.winterSurvivalShare ?? null)}
          farmWinterSurvival={shown(PERCENT, farm.winter.winterSurvivalShare)}
        />
        <DayField name="plantedOn" label="Planted or sown on" value={planting?.plantedOn ?? `${seasonYear}-05-10`} />
        <NumberField
          name="plantCount"
          label="Plants"
          value={planting && shown(PLAIN, planting.plantCount)}
          hint="Set out, or left in."
        />
        <NumberField
          name="aliveShare"
          label="Alive at first cut"
          unit="%"
          value={shown(PERCENT, planting?.aliveShare ?? ALIVE_AT_FIRST)}
        />
        <NumberField
          name="gradeOutShare"
          label="Graded out"
          unit="%"
          value={shown(PERCENT, planting?.gradeOutShare ?? GRADED_OUT_AT_FIRST)}
          hint="Cut stems that are not fit to use."
        />
        <CheckGroup
          name="flags"
          label="Reasons of the plants to dig over winter"
          options={FLAG_OPTIONS}
          values={planting?.flags ?? []}
        />
      </div>
      {!planting && (
        <p className="hint">
          95 % alive and 10 % graded out are starting points from memory, not figures of your farm: overrule them with
          what you see.
        </p>
      )}
    </Form>
  );
}
