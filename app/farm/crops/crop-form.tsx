import { PLAIN_STORE } from "#lib/domain/catalogue/stores";
import { CROP, CROP_NUMBERS, type Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { Form } from "../../ui/form.client";
import { OriginMark } from "../../ui/origin-mark";
import { RecordField } from "../../ui/record-field";
import { saveCrop } from "./crop-actions";

const NEW_CROP = { shape: "mass", usualRole: "focal", ...PLAIN_STORE } as const;

/** A crop, to add (no `crop`) or to change. Each number shows how sure we are of it. */
export function CropForm({ crop, farm }: { crop?: Crop; farm: Farm }) {
  const fields = formFields(CROP, crop ?? NEW_CROP, farm);
  const { name, scientific, shape, roles, usualRole, cutStage, tender, overwinters, cautions } = fields;
  const { headSize, stemLength, outOfWater, buyInMonths, buyInColours } = fields;
  const numbers = formFields(CROP_NUMBERS, crop ?? NEW_CROP, farm);
  return (
    <Form
      action={saveCrop}
      submit={crop ? "Save the crop" : "Add the crop"}
      hidden={{ cropId: crop?.id ?? "" }}
      label={crop?.name ?? "A new crop"}
    >
      <div className="fields">
        {[name, scientific, shape, roles, usualRole, cutStage, tender, overwinters].map((field) => (
          <RecordField key={field.name} {...field} isWide={field === cutStage} />
        ))}
      </div>
      <fieldset>
        <legend>Its stem</legend>
        <p className="hint">
          A line of a recipe may ask for these. {crop && <OriginMark origin={crop.traitsOrigin} />}
        </p>
        <div className="fields">
          {[headSize, stemLength, outOfWater].map((field) => (
            <RecordField key={field.name} {...field} />
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>Numbers</legend>
        <p className="hint">A number that you change becomes your own.</p>
        <div className="fields">
          {(Object.keys(numbers) as (keyof typeof numbers)[]).map((number) => (
            <RecordField
              key={number}
              {...numbers[number]}
              also={
                crop && (
                  <span className="mark-line">
                    <OriginMark origin={crop[number]} />
                  </span>
                )
              }
            />
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>To be had from others</legend>
        <p className="hint">
          A gap is bought in as a flower that is to be had in its month and colours.{" "}
          {crop && <OriginMark origin={crop.tradeOrigin} />}
        </p>
        <RecordField {...buyInMonths} />
        <RecordField {...buyInColours} />
      </fieldset>
      <RecordField {...cautions} />
    </Form>
  );
}
