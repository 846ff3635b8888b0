"use client";

import { ROLES, type Role } from "#lib/domain/words";
import { FieldProblem } from "../../ui/field-problem";
import { ColourField } from "./colour-field.client";
import type { BookingForm, Choices } from "./draft";

type Props = {
  lines: BookingForm["stemLines"];
  choices: Choices;
  onChange: (lines: BookingForm["stemLines"]) => void;
  problemAt: (place: string) => string | undefined;
};

/** Stems asked for directly: a role, perhaps a named crop, colours, and how many. */
export function StemLines({ lines, choices, onChange, problemAt }: Props) {
  const put = (index: number, part: Partial<BookingForm["stemLines"][number]>) =>
    onChange(lines.map((line, place) => (place === index ? { ...line, ...part } : line)));
  return (
    <fieldset>
      <legend>Stems by name or role</legend>
      <ol className="lines">
        {lines.map((line, index) => {
          const stemProblem = problemAt(`stemLines[${index}].stemCount`);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
            <li key={index} className="stem-line">
              <div>
                <label htmlFor={`role-${index}`}>Role</label>
                <select
                  id={`role-${index}`}
                  value={line.role}
                  onChange={(event) => put(index, { role: event.target.value as Role })}
                >
                  {ROLES.map((role) => (
                    <option key={role}>{role}</option>
                  ))}
                </select>
              </div>
              <div>
                <label htmlFor={`stems-${index}`}>Stems</label>
                <input
                  id={`stems-${index}`}
                  inputMode="decimal"
                  autoComplete="off"
                  value={line.stemCount}
                  aria-invalid={stemProblem ? true : undefined}
                  aria-describedby={`stems-${index}-problem`}
                  onChange={(event) => put(index, { stemCount: event.target.value })}
                />
                <FieldProblem id={`stems-${index}-problem`} message={stemProblem} />
              </div>
              <div>
                <label htmlFor={`crop-${index}`}>Crop</label>
                <select
                  id={`crop-${index}`}
                  value={line.cropId ?? ""}
                  onChange={(event) =>
                    put(index, {
                      cropId: event.target.value ? Number(event.target.value) : null,
                      cropOnly: event.target.value !== "" && line.cropOnly,
                    })
                  }
                >
                  <option value="">any that can take the role</option>
                  {choices.crops
                    .filter((crop) => crop.roles.includes(line.role))
                    .map(({ id, name }) => (
                      <option key={id} value={id}>
                        {name}
                      </option>
                    ))}
                </select>
                <label className="check">
                  <input
                    type="checkbox"
                    checked={line.cropOnly}
                    disabled={line.cropId === null}
                    onChange={(event) => put(index, { cropOnly: event.target.checked })}
                  />
                  no other in its place
                </label>
                <FieldProblem id={`crop-${index}-problem`} message={problemAt(`stemLines[${index}].cropId`)} />
              </div>
              <div>
                <ColourField
                  label="Colours"
                  value={line.colours}
                  onChange={(colours) => put(index, { colours })}
                  problem={problemAt(`stemLines[${index}].colours`)}
                />
              </div>
              <button
                type="button"
                aria-label={`Remove stem line ${index + 1}`}
                onClick={() => onChange(lines.filter((_, place) => place !== index))}
              >
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
