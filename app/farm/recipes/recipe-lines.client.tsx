"use client";

import { useState } from "react";
import { type DecimalMark, writeNumber } from "#lib/domain/read-number";
import type { RecipeLine } from "#lib/domain/records/recipe";
import { LINE_COLOURS, LINE_COLOURS_WORDS, ROLES, STEM_ASKS } from "#lib/domain/words";
import { FieldProblem } from "../../ui/field-problem";
import { CheckGroup } from "../../ui/form-checks.client";
import { useField } from "../../ui/form-context.client";
import { NumberField, SelectField } from "../../ui/form-fields.client";

type Line = {
  readonly key: number;
  readonly role: string;
  readonly stems: string;
  readonly colours: string;
  readonly asks: readonly string[];
};

const ROLE_OPTIONS = ROLES.map((role) => ({ value: role, label: role }));
const ASK_OPTIONS = STEM_ASKS.map((ask) => ({ value: ask, label: ask }));
const COLOUR_OPTIONS = LINE_COLOURS.map((colours) => ({ value: colours, label: LINE_COLOURS_WORDS[colours] }));

/** The lines of a recipe: stems of a role in one piece. Fractions are meant: half a stem serves every second piece. */
export function RecipeLines({ lines: initial, mark }: { lines: readonly RecipeLine[]; mark: DecimalMark }) {
  const field = useField("lines", "Lines");
  const [lines, setLines] = useState<readonly Line[]>(
    initial.map(({ role, stemsPerPiece, colours, asks }, key) => ({
      key,
      role,
      stems: writeNumber(stemsPerPiece, mark),
      colours,
      asks,
    })),
  );
  const add = () => {
    const unused = ROLES.find((role) => !lines.some((line) => line.role === role)) ?? "focal";
    const key = lines.reduce((most, line) => Math.max(most, line.key + 1), 0);
    setLines([...lines, { key, role: unused, stems: "", colours: "palette", asks: [] }]);
  };
  return (
    <fieldset>
      <legend>Stems in one piece</legend>
      <ol className="lines">
        {lines.map((line, index) => (
          <li key={line.key} className="recipe-line">
            <SelectField
              name={`lines[${index}].role`}
              label={`Line ${index + 1}, role`}
              value={line.role}
              options={ROLE_OPTIONS}
            />
            <NumberField name={`lines[${index}].stemsPerPiece`} label={`Line ${index + 1}, stems`} value={line.stems} />
            <SelectField
              name={`lines[${index}].colours`}
              label={`Line ${index + 1}, colours`}
              value={line.colours}
              options={COLOUR_OPTIONS}
            />
            <CheckGroup
              name={`lines[${index}].asks`}
              label={`Line ${index + 1}, asks of the stem`}
              values={line.asks}
              options={ASK_OPTIONS}
            />
            <button
              type="button"
              onClick={() => setLines(lines.filter(({ key }) => key !== line.key))}
              aria-label={`Remove line ${index + 1}`}
            >
              Remove
            </button>
          </li>
        ))}
      </ol>
      <FieldProblem id={field.problemId} message={field.problem} />
      <button type="button" id={field.id} onClick={add}>
        Add a line
      </button>
    </fieldset>
  );
}
