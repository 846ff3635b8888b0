"use client";

import { ROLES, type Role, STEM_ASKS } from "#lib/domain/words";
import { type Option, SelectField } from "../../ui/form-fields.client";
import { CountStepper } from "./count-stepper.client";
import type { Choices, StemLineTyped } from "./draft";
import { MatrixLine } from "./matrix-line.client";

type Props = {
  index: number;
  line: StemLineTyped;
  choices: Choices;
  /** Just asked for: its choice takes the focus. */
  isNew: boolean;
  onChange: (part: Partial<StemLineTyped>) => void;
  onNone: (called: string) => void;
  onEnter: () => void;
};

const ROLE_OPTIONS = ROLES.map((role) => ({ value: role, label: role }));
const ANY_CROP: Option = { value: "", label: "any crop" };

/** What is asked of the stem, with one more or one less, in the order of `STEM_ASKS`. */
const withAsk = (asked: readonly string[], ask: string, isAsked: boolean): string =>
  STEM_ASKS.filter((one) => (one === ask ? isAsked : asked.includes(one))).join(", ");

/** Stems asked for directly: a role, perhaps a named crop, and how many. */
export function StemRow({ index, line, choices, isNew, onChange, onNone, onEnter }: Props) {
  const place = `stemLines[${index}]`;
  const asked = line.asks.split(", ");
  const called = `Stem line ${index + 1}`;
  const crops = choices.crops
    .filter(({ roles }) => roles.includes(line.role))
    .map(({ id, name }) => ({ value: String(id), label: name }));
  const what = choices.crops.find(({ id }) => id === line.cropId)?.name ?? line.role;
  return (
    <MatrixLine
      head={
        <div className="stem-choice">
          <SelectField
            name={`${place}.role`}
            label="Role"
            listedAs={`${called}, role`}
            isFirst={isNew}
            options={ROLE_OPTIONS}
            value={line.role}
            onChange={(role) => onChange({ role: role as Role })}
          />
          <SelectField
            name={`${place}.cropId`}
            label="Crop"
            listedAs={`${called}, crop`}
            options={[ANY_CROP, ...crops]}
            value={String(line.cropId ?? "")}
            onChange={(id) => onChange({ cropId: id ? Number(id) : null, cropOnly: id !== "" && line.cropOnly })}
          />
        </div>
      }
      count={
        <CountStepper
          name={`${place}.stemCount`}
          what={what}
          label={`Stems, ${what}`}
          listedAs={`${called}, stems`}
          mark={choices.decimalMark}
          value={line.stemCount}
          onChange={(stemCount) => onChange({ stemCount })}
          onNone={() => onNone(`Stems of ${what}`)}
          onEnter={onEnter}
        />
      }
      stems={{ [line.role]: 1 }}
      colours={{
        name: `${place}.colours`,
        listedAs: `${called}, colours`,
        none: "any",
        ownColours: choices.ownColours,
        value: line.colours,
        onChange: (colours) => onChange({ colours }),
      }}
      more={
        <>
          {line.cropId !== null && (
            <label className="check">
              <input
                type="checkbox"
                checked={line.cropOnly}
                onChange={({ target }) => onChange({ cropOnly: target.checked })}
              />
              No other crop in its place
            </label>
          )}
          <details>
            <summary>{line.asks === "" ? "Asks of the stem" : `Asks: ${line.asks}`}</summary>
            {STEM_ASKS.map((ask) => (
              <label key={ask} className="check">
                <input
                  type="checkbox"
                  checked={asked.includes(ask)}
                  onChange={({ target }) => onChange({ asks: withAsk(asked, ask, target.checked) })}
                />
                {ask}
              </label>
            ))}
          </details>
        </>
      }
    />
  );
}
