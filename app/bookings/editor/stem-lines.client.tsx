"use client";

import { ROLES, type Role } from "#lib/domain/words";
import { useForm } from "../../ui/form-context.client";
import { type Option, SelectField, TextField } from "../../ui/form-fields.client";
import { ColourField } from "./colour-field.client";
import type { BookingForm, Choices } from "./draft";

type Line = BookingForm["stemLines"][number];

type Props = {
  lines: BookingForm["stemLines"];
  choices: Choices;
  onChange: (lines: BookingForm["stemLines"]) => void;
};

const ROLE_OPTIONS = ROLES.map((role) => ({ value: role, label: role }));
const ANY_CROP: Option = { value: "", label: "any that can take the role" };

/** Stems asked for directly: a role, perhaps a named crop, colours, and how many. */
export function StemLines({ lines, choices, onChange }: Props) {
  const { forget } = useForm("the stem lines of a booking");
  const put = (index: number, part: Partial<Line>) =>
    onChange(lines.map((line, place) => (place === index ? { ...line, ...part } : line)));
  const remove = (index: number) => {
    forget();
    onChange(lines.toSpliced(index, 1));
  };
  return (
    <fieldset>
      <legend>Stems by name or role</legend>
      <ol className="lines">
        {lines.map((line, index) => {
          const place = `stemLines[${index}]`;
          const called = (label: string) => ({ label, listedAs: `Stem line ${index + 1}, ${label.toLowerCase()}` });
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
            <li key={index} className="stem-line">
              <SelectField
                name={`${place}.role`}
                {...called("Role")}
                options={ROLE_OPTIONS}
                value={line.role}
                onChange={(role) => put(index, { role: role as Role })}
              />
              <TextField
                name={`${place}.stemCount`}
                {...called("Stems")}
                inputMode="decimal"
                value={line.stemCount}
                onChange={(stemCount) => put(index, { stemCount })}
              />
              <SelectField
                name={`${place}.cropId`}
                {...called("Crop")}
                options={[ANY_CROP, ...cropsFor(choices, line.role)]}
                value={String(line.cropId ?? "")}
                onChange={(id) => put(index, { cropId: id ? Number(id) : null, cropOnly: id !== "" && line.cropOnly })}
                beneath={
                  <label className="check">
                    <input
                      type="checkbox"
                      checked={line.cropOnly}
                      disabled={line.cropId === null}
                      onChange={(event) => put(index, { cropOnly: event.target.checked })}
                    />
                    no other in its place
                  </label>
                }
              />
              <ColourField
                name={`${place}.colours`}
                {...called("Colours")}
                value={line.colours}
                onChange={(colours) => put(index, { colours })}
              />
              <button type="button" aria-label={`Remove stem line ${index + 1}`} onClick={() => remove(index)}>
                Remove
              </button>
            </li>
          );
        })}
      </ol>
      <button
        type="button"
        onClick={() =>
          onChange([...lines, { role: "focal", cropId: null, cropOnly: false, colours: "", stemCount: "" }])
        }
      >
        Add stems
      </button>
    </fieldset>
  );
}

const cropsFor = ({ crops }: Choices, role: Role): Option[] =>
  crops.filter(({ roles }) => roles.includes(role)).map(({ id, name }) => ({ value: String(id), label: name }));
