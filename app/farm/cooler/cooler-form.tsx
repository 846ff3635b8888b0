import type { CoolerStock } from "#lib/domain/bed";
import type { Day } from "#lib/domain/day";
import { Form } from "../../ui/form.client";
import { DayField, NumberField, type Option, SelectField } from "../../ui/form-fields.client";
import { saveCoolerStock } from "./cooler-actions";

type Props = { choices: readonly Option[]; today: Day; label: string; stock?: CoolerStock };

/** Stems in the cooler, to put in (no `stock`) or to change. */
export const CoolerForm = ({ choices, today, label, stock }: Props) => (
  <Form
    action={saveCoolerStock}
    submit={stock ? "Save" : "Put them in"}
    hidden={{ stockId: stock?.id ?? "" }}
    label={label}
    isQuiet={stock !== undefined}
  >
    <div className="fields">
      <SelectField
        name="varietyId"
        label="Variety"
        value={stock ? String(stock.varietyId) : undefined}
        options={choices}
      />
      <DayField name="cutOn" label="Cut on" value={stock?.cutOn ?? today} />
      <NumberField name="stemCount" label="Stems" value={stock && String(stock.stemCount)} />
    </div>
  </Form>
);
