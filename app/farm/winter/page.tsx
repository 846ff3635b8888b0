import type { Metadata } from "next";
import { PERCENT, shown, shownOrEmpty } from "#lib/domain/measures";
import { loadFarm } from "../../load";
import { Form } from "../../ui/form.client";
import { NumberField } from "../../ui/form-fields.client";
import { FarmTabs } from "../farm-tabs";
import { winterFields } from "../settings/farm-values";
import { saveWinter } from "../settings/settings-actions";

export const metadata: Metadata = { title: "Winter costs" };

/** What keeping and digging cost, and what is at hand for it. */
export default function WinterPage() {
  const { farm } = loadFarm();
  return (
    <>
      <h1>Farm: winter costs</h1>
      <FarmTabs open="/farm/winter" />
      <p>
        The sums of <a href="/keep-or-dig">Keep or dig</a> rest on these. Where no source is named, the number to start
        from is <em>from memory</em>: put in your own.
      </p>
      <Form action={saveWinter} submit="Save the winter costs" label="Winter costs">
        <fieldset>
          <legend>Survival in the ground</legend>
          <div className="fields">
            <NumberField
              name="winter.winterSurvivalShare"
              label="Of a hundred clumps kept, alive in spring"
              unit="%"
              value={shown(PERCENT, farm.winter.winterSurvivalShare)}
              hint="No published figure was found. What do you expect of your ground and your winters? The answer moves with this number more than with any other; Keep or dig shows how."
              isWide
            />
          </div>
        </fieldset>
        {winterFields(farm.units).map(({ title, fields }) => (
          <fieldset key={title}>
            <legend>{title}</legend>
            {fields.every(({ isOpen }) => isOpen) && (
              <p className="hint">Leave a field empty for as much as is wanted.</p>
            )}
            <div className="fields">
              {fields.map(({ name, label, measure, hint }) => (
                <NumberField
                  key={name}
                  name={`winter.${name}`}
                  label={label}
                  unit={measure.word}
                  hint={hint}
                  value={shownOrEmpty(measure, farm.winter[name])}
                />
              ))}
            </div>
          </fieldset>
        ))}
      </Form>
    </>
  );
}
