import { WEEKDAYS } from "#lib/domain/day";
import type { Farm, FrostDates } from "#lib/domain/farm";
import { PERCENT, shown } from "#lib/domain/measures";
import { Form } from "../../ui/form.client";
import { CheckGroup } from "../../ui/form-checks.client";
import { NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import { UNIT_OPTIONS } from "./farm-values";
import { saveSettings } from "./settings-actions";
import { ZONES, zoneInWords } from "./zone-words";

const WEEKDAY_OPTIONS = WEEKDAYS.map((label, index) => ({ value: String(index + 1), label }));

const FROST: { title: string; sense: string; fields: { name: keyof FrostDates; label: string }[] }[] = [
  {
    title: "First frost of autumn",
    sense: "10 %: one year in ten has had frost by then, an early one. 90 %: nine in ten have.",
    fields: [
      { name: "firstAutumnP10", label: "10 %, early" },
      { name: "firstAutumnP50", label: "50 %, reckoned with" },
      { name: "firstAutumnP90", label: "90 %, late" },
    ],
  },
  {
    title: "Last frost of spring",
    sense:
      "10 %: one year in ten still has frost after it, so it is the late date. Some printed tables run the other way round.",
    fields: [
      { name: "lastSpringP10", label: "10 %, late" },
      { name: "lastSpringP50", label: "50 %" },
      { name: "lastSpringP90", label: "90 %, early" },
    ],
  },
];

const WEIGHTS = [
  { status: "confirmed", label: "Confirmed" },
  { status: "held", label: "Held" },
  { status: "enquiry", label: "Enquiry" },
] as const;

/** The settings that every plan rests on. */
export function SettingsForm({ farm }: { farm: Farm }) {
  const days = (count: number) => String(count);
  return (
    <Form action={saveSettings} submit="Save the settings" label="Settings">
      <div className="fields">
        <TextField name="name" label="Name of the farm" value={farm.name} isWide />
        <TextField
          name="zone"
          label="Hardiness zone"
          value={farm.zone}
          suggestions={ZONES}
          hint={zoneInWords(farm.zone, farm.units) ?? "For example 7a."}
        />
        <SelectField name="units" label="Units shown" value={farm.units} options={UNIT_OPTIONS} />
        <CheckGroup
          name="pickingWeekdays"
          label="Picking days"
          options={WEEKDAY_OPTIONS}
          values={farm.pickingWeekdays.map(String)}
          hint="A bloom that opens between them waits in the field for the next, as long as its crop allows."
        />
        <NumberField
          name="leadDays"
          label="Lead"
          unit="days"
          value={days(farm.leadDays)}
          hint="From the last cut to the event, for conditioning and design."
        />
        <NumberField name="orderDaysAhead" label="Order buy-ins ahead" unit="days" value={days(farm.orderDaysAhead)} />
        <NumberField
          name="spareShare"
          label="Spare of a new booking"
          unit="%"
          value={shown(PERCENT, farm.spareShare)}
          hint="Added for breakage."
        />
      </div>
      {FROST.map(({ title, sense, fields }) => (
        <fieldset key={title}>
          <legend>{title}</legend>
          <p className="hint">{sense} Written month-day: 10-18 is the 18th of October.</p>
          <div className="fields">
            {fields.map(({ name, label }) => (
              <TextField key={name} name={`frost.${name}`} label={label} value={farm.frost[name]} />
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
          {WEIGHTS.map(({ status, label }) => (
            <NumberField
              key={status}
              name={`statusWeights.${status}`}
              label={label}
              unit="%"
              value={shown(PERCENT, farm.statusWeights[status])}
            />
          ))}
        </div>
      </fieldset>
    </Form>
  );
}
