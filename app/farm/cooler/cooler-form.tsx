import { COOLER_LOT, type CoolerStock } from "#lib/domain/records/cooler-lot";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { Form } from "../../ui/form.client";
import type { Option } from "../../ui/form-fields.client";
import { RecordField } from "../../ui/record-field";
import { saveCoolerStock } from "./cooler-actions";

type Props = { choices: readonly Option[]; farm: Farm; label: string; stock?: CoolerStock };

const CHOOSE: Option = { value: "", label: "choose a variety" };

/** Stems in the cooler, to put in (no `stock`) or to change. */
export function CoolerForm({ choices, farm, label, stock }: Props) {
  const { varietyId, cutOn, stemCount } = formFields(COOLER_LOT, stock, farm);
  return (
    <Form
      action={saveCoolerStock}
      submit={stock ? "Save" : "Put them in"}
      hidden={{ stockId: stock?.id ?? "" }}
      label={label}
      isQuiet={stock !== undefined}
    >
      <div className="fields">
        <RecordField {...varietyId} choices={stock ? choices : [CHOOSE, ...choices]} />
        <RecordField {...cutOn} />
        <RecordField {...stemCount} />
      </div>
    </Form>
  );
}
