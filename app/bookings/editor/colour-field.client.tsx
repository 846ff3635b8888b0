"use client";

import { COLOURS, type Colour } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";
import { ColourWord } from "../../ui/colour-words";
import { TextField } from "../../ui/form-fields.client";
import { colourOf, wordsIn } from "../../ui/typed-colours";
import { OwnColourAsked } from "./own-colour-asked.client";

type Props = {
  name: string;
  label: string;
  listedAs?: string;
  hint?: string;
  isWide?: boolean;
  ownColours: readonly OwnColour[];
  value: string;
  onChange: (value: string) => void;
};

/** Colours typed as words, with their swatches beside them; a click on a swatch adds or takes away. A word that is nobody's is asked about, once. */
export function ColourField({ ownColours, ...props }: Props) {
  const { value, onChange } = props;
  const words = wordsIn(value);
  const known = words.map((word) => ({ word, colour: colourOf(word, ownColours) }));
  const isChosen = (colour: Colour) => known.some((one) => one.colour === colour);
  const toggle = (colour: Colour) =>
    onChange(
      (isChosen(colour)
        ? known.filter((one) => one.colour !== colour).map(({ word }) => word)
        : [...words, colour]
      ).join(", "),
    );
  return (
    <div className={props.isWide ? "field wide" : undefined}>
      <TextField {...props} />
      <OwnColourAsked words={known.flatMap(({ word, colour }) => (colour ? [] : [word]))} />
      <details>
        <summary className="small">
          {known.some(({ colour }) => colour) ? (
            <span className="colours">
              {known.map(({ word, colour }) => colour && <ColourWord key={word} colour={colour} />)}
            </span>
          ) : (
            "choose from swatches"
          )}
        </summary>
        <div className="row">
          {COLOURS.map((colour) => (
            <button key={colour} type="button" aria-pressed={isChosen(colour)} onClick={() => toggle(colour)}>
              <ColourWord colour={colour} />
              {isChosen(colour) && " ✓"}
            </button>
          ))}
        </div>
      </details>
    </div>
  );
}
