import { PERCENT, shown } from "#lib/domain/measures";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { PLANTING } from "#lib/domain/records/planting";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { MeantField } from "./meant-field.client";
import { savePlanting } from "./planting-actions";
import { PlantingChoice } from "./planting-choice.client";
import type { PlantingChoices } from "./planting-choices";

/** What a new planting starts from: our own guess, for the grower to overrule. */
const GUESSES = { aliveShare: 0.95 };

type Props = { row?: PlantingForecast; bedId: number; seasonYear: number; farm: Farm; choices: PlantingChoices };

/** A planting, to add (no `row`) or to change. */
export function PlantingForm({ row, bedId, seasonYear, farm, choices }: Props) {
  const planting = row?.planting;
  // What is set out now is in the first season of its life.
  const atFirst = { ageSeasons: 1, ...GUESSES };
  const fields = formFields(PLANTING, planting ?? atFirst, farm);
  const { plantedOn, sown, plantCount, ageSeasons, aliveShare, gradeOutShare, flags, winterSurvivalShare } = fields;
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
          winterSurvival={winterSurvivalShare.values[0] ?? ""}
          farmWinterSurvival={shown(PERCENT, farm.winter.winterSurvivalShare)}
        />
        {[plantedOn, sown, plantCount, ageSeasons, aliveShare, gradeOutShare, flags].map((field) => (
          <RecordField key={field.name} {...field} />
        ))}
        {planting && [fields.daysLate, fields.yieldFactor].map((field) => <RecordField key={field.name} {...field} />)}
      </div>
      <MeantField />
      {!planting && (
        <p className="hint">
          95 % alive is a starting point from memory, not a figure of your farm: overrule it with what you see. What is
          graded out is taken from the bloom curve until you write it.
        </p>
      )}
    </Form>
  );
}
