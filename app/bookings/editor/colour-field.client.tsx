"use client";

import { COLOURS, type Colour } from "#lib/domain/words";
import { ColourWord } from "../../ui/colour-words";
import { TextField } from "../../ui/form-fields.client";

type Props = {
  name: string;
  label: string;
  listedAs?: string;
  hint?: string;
  isWide?: boolean;
  value: string;
  onChange: (value: string) => void;
};

const isColour = (word: string): word is Colour => COLOURS.some((colour) => colour === word);
const wordsOf = (value: string): string[] =>
  value
    .split(/[,/;]+/)
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== "");

/** Colours typed as words, with their swatches beside them; a click on a swatch adds or takes away. */
export function ColourField(props: Props) {
  const { value, onChange } = props;
  const words = wordsOf(value);
  const toggle = (colour: Colour) =>
    onChange((words.includes(colour) ? words.filter((word) => word !== colour) : [...words, colour]).join(", "));
  return (
    <div className={props.isWide ? "field wide" : undefined}>
      <TextField {...props} />
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
    </div>
  );
}
