import { FARM, type Farm, FROST, STATUS_WEIGHTS } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { saveSettings } from "./settings-actions";
import { ZONES, zoneInWords } from "./zone-words";

/** The settings that every plan rests on. */
export function SettingsForm({ farm }: { farm: Farm }) {
  const top = formFields(FARM, farm, farm);
  const frost = formFields(FROST, farm.frost, { ...farm, root: "frost." });
  const weights = formFields(STATUS_WEIGHTS, farm.statusWeights, { ...farm, root: "statusWeights." });
  const frosts = [
    {
      title: "First frost of autumn",
      sense: "10 %: one year in ten has had frost by then, an early one. 90 %: nine in ten have.",
      fields: [frost.firstAutumnP10, frost.firstAutumnP50, frost.firstAutumnP90],
    },
    {
      title: "Last frost of spring",
      sense:
        "10 %: one year in ten still has frost after it, so it is the late date. Some printed tables run the other way round.",
      fields: [frost.lastSpringP10, frost.lastSpringP50, frost.lastSpringP90],
    },
  ];
  return (
    <Form action={saveSettings} submit="Save the settings" label="Settings">
      <div className="fields">
        <RecordField {...top.name} isWide />
        <RecordField {...top.zone} suggestions={ZONES} hint={zoneInWords(farm.zone, farm.units) ?? "For example 7a."} />
        {[
          top.units,
          top.decimalMark,
          top.dateOrder,
          top.pickingWeekdays,
          top.leadDays,
          top.orderDaysAhead,
          top.spareShare,
        ].map((field) => (
          <RecordField key={field.name} {...field} />
        ))}
        <RecordField {...top.ownColours} isWide />
      </div>
      {frosts.map(({ title, sense, fields }) => (
        <fieldset key={title}>
          <legend>{title}</legend>
          <p className="hint">{sense} Written month-day: 10-18 is the 18th of October.</p>
          <div className="fields">
            {fields.map((field) => (
              <RecordField key={field.name} {...field} />
            ))}
          </div>
        </fieldset>
      ))}
      <fieldset>
        <legend>How likely the stems of a booking are wanted</legend>
        <p className="hint">
          The weight of its claim: an uncovered stem costs its buy-in price times this, so when stems are scarce a
          confirmed booking comes before a held one and that before an enquiry. The numbers to start from are our own
          guess: put in how many of yours come true.
        </p>
        <div className="fields">
          {Object.values(weights).map((field) => (
            <RecordField key={field.name} {...field} />
          ))}
        </div>
      </fieldset>
    </Form>
  );
}
