import type { ReactNode } from "react";
import type { FormField } from "#lib/domain/records/form";
import { CheckField, CheckGroup } from "./form-checks.client";
import { AreaField, DayField, NumberField, type Option, SelectField, TextField } from "./form-fields.client";

type Props = FormField & {
  isWide?: boolean;
  suggestions?: readonly string[];
  also?: ReactNode;
  choices?: readonly Option[];
};

/** The control of a record's field, whatever is typed or chosen in it. `choices` stand for the rows that an id can name; `also` follows the hint. */
export function RecordField({ values, options, input, also, choices, ...field }: Props) {
  const hint = also ? (
    <>
      {field.hint}
      {also}
    </>
  ) : (
    field.hint
  );
  const frame = { ...field, hint, value: values[0] };
  if (choices) return <SelectField {...frame} options={choices} />;
  switch (input) {
    case "number":
      return <NumberField {...frame} />;
    case "day":
      return <DayField {...frame} />;
    case "area":
    case "lines":
      return <AreaField {...frame} />;
    case "choice":
      return <SelectField {...frame} options={options} />;
    case "several":
      return <CheckGroup {...frame} options={options} values={values} />;
    case "yes-no":
      return <CheckField {...frame} isChecked={values[0] === "yes"} />;
    case "hidden":
      return <input type="hidden" name={field.name} value={values[0] ?? ""} />;
    case "text":
      return <TextField {...frame} />;
  }
}
