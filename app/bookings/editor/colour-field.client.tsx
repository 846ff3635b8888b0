"use client";

import { useId } from "react";
import { COLOURS, type Colour } from "#lib/domain/words";
import { ColourWord } from "../../ui/colour-words";
import { FieldProblem } from "../../ui/field-problem";

type Props = {
  label: string;
  hint?: string;
  value: string;
  onChange: (value: string) => void;
  problem: string | undefined;
};

const isColour = (word: string): word is Colour => COLOURS.some((colour) => colour === word);
const wordsOf = (value: string): string[] =>
  value
    .split(/[,/;]+/)
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== "");

/** Colours typed as words, with their swatches beside them; a click on a swatch adds or takes away. */
export function ColourField({ label, hint, value, onChange, problem }: Props) {
  const id = useId();
  const words = wordsOf(value);
  const toggle = (colour: Colour) =>
    onChange((words.includes(colour) ? words.filter((word) => word !== colour) : [...words, colour]).join(", "));
  return (
    <>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        autoComplete="off"
        onChange={(event) => onChange(event.target.value)}
        aria-invalid={problem ? true : undefined}
        aria-describedby={`${id}-problem`}
      />
      {hint && <p className="hint">{hint}</p>}
      <FieldProblem id={`${id}-problem`} message={problem} />
      <details>
        <summary className="small">
          {words.some(isColour) ? (
            <span className="colours">
              {words.filter(isColour).map((word) => (
                <ColourWord key={word} colour={word} />
              ))}
            </span>
          ) : (
            "choose from swatches"
          )}
        </summary>
        <div className="row">
          {COLOURS.map((colour) => (
            <button key={colour} type="button" aria-pressed={words.includes(colour)} onClick={() => toggle(colour)}>
              <ColourWord colour={colour} />
              {words.includes(colour) && " ✓"}
            </button>
          ))}
        </div>
      </details>
    </>
  );
}
