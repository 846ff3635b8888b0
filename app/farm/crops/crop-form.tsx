import type { Crop } from "#lib/domain/crop";
import { shown } from "#lib/domain/measures";
import { ROLES, SHAPES } from "#lib/domain/words";
import { Form } from "../../ui/form.client";
import { CheckField, CheckGroup } from "../../ui/form-checks.client";
import { AreaField, NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import { OriginMark } from "../../ui/origin-mark";
import { saveCrop } from "./crop-actions";
import { CROP_NUMBERS } from "./crop-numbers";

const asOptions = (words: readonly string[]) => words.map((word) => ({ value: word, label: word }));

/** A crop, to add (no `crop`) or to change. Each number shows how sure we are of it. */
export const CropForm = ({ crop }: { crop?: Crop }) => (
  <Form
    action={saveCrop}
    submit={crop ? "Save the crop" : "Add the crop"}
    hidden={{ cropId: crop?.id ?? "" }}
    label={crop?.name ?? "A new crop"}
  >
    <div className="fields">
      <TextField name="name" label="Name" value={crop?.name} />
      <TextField name="scientific" label="Scientific name" value={crop?.scientific} />
      <SelectField name="shape" label="Shape of the flower" value={crop?.shape ?? "mass"} options={asOptions(SHAPES)} />
      <CheckGroup
        name="roles"
        label="Roles it can take"
        options={asOptions(ROLES)}
        values={crop?.roles ?? []}
        hint="A need for a role takes every variety whose crop has it."
      />
      <SelectField name="usualRole" label="Usual role" value={crop?.usualRole ?? "focal"} options={asOptions(ROLES)} />
      <TextField name="cutStage" label="Stage to cut at" value={crop?.cutStage} />
      <CheckField name="tender" label="Tender: the first frost ends it" isChecked={crop?.tender} />
      <CheckField
        name="overwinters"
        label="Can stay in the ground or be dug over winter"
        isChecked={crop?.overwinters}
      />
    </div>
    <fieldset>
      <legend>Numbers</legend>
      <p className="hint">A number that you change becomes your own.</p>
      <div className="fields">
        {CROP_NUMBERS.map(({ name, label, measure, hint }) => (
          <NumberField
            key={name}
            name={name}
            label={label}
            unit={measure.word}
            value={crop && shown(measure, crop[name].count)}
            hint={
              <>
                {hint}
                {crop && (
                  <span className="mark-line">
                    <OriginMark origin={crop[name]} />
                  </span>
                )}
              </>
            }
          />
        ))}
      </div>
    </fieldset>
    <AreaField
      name="cautions"
      label="Cautions, one a line"
      value={crop?.cautions.join("\n")}
      hint="Shown wherever its stems go into personals or near food. A plant without a caution is not proved safe."
    />
  </Form>
);
