"use client";

import { useForm } from "../../ui/form-context.client";
import { SelectField, TextField } from "../../ui/form-fields.client";
import { ColourField } from "./colour-field.client";
import type { BookingForm, Choices } from "./draft";

type Props = {
  pieces: BookingForm["pieces"];
  choices: Choices;
  onChange: (pieces: BookingForm["pieces"]) => void;
};

/** The pieces of a booking. Enter in a count adds the next piece, so that ten can be typed without the mouse. */
export function PieceLines({ pieces, choices: { recipes }, onChange }: Props) {
  const { forget } = useForm("the pieces of a booking");
  const options = recipes.map(({ id, name }) => ({ value: String(id), label: name }));
  const put = (index: number, part: Partial<BookingForm["pieces"][number]>) =>
    onChange(pieces.map((piece, place) => (place === index ? { ...piece, ...part } : piece)));
  const add = () => {
    const unused = recipes.find((recipe) => !pieces.some((piece) => piece.recipeId === recipe.id));
    const recipe = unused ?? recipes[0];
    if (recipe) onChange([...pieces, { recipeId: recipe.id, pieceCount: "", colours: "" }]);
  };
  const remove = (index: number) => {
    forget();
    onChange(pieces.toSpliced(index, 1));
  };
  return (
    <fieldset>
      <legend>Pieces</legend>
      {pieces.length === 0 && <p className="soft">Add the pieces of the event; each brings the stems of its recipe.</p>}
      <ol className="lines">
        {pieces.map((piece, index) => {
          const recipe = recipes.find((found) => found.id === piece.recipeId);
          const place = `pieces[${index}]`;
          const called = `Piece ${index + 1}`;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
            <li key={index} className="piece-line">
              <SelectField
                name={`${place}.recipeId`}
                label={called}
                isFirst={index === pieces.length - 1 && piece.pieceCount === ""}
                options={options}
                value={String(piece.recipeId)}
                onChange={(recipeId) => put(index, { recipeId: Number(recipeId) })}
                hint={recipe && `${recipe.stemsEach} a ${recipe.unit}`}
              />
              <TextField
                name={`${place}.pieceCount`}
                label="How many"
                listedAs={`${called}, how many`}
                unit={recipe && recipe.unit !== "piece" ? `, ${recipe.unit}` : ""}
                inputMode="decimal"
                value={piece.pieceCount}
                onChange={(pieceCount) => put(index, { pieceCount })}
                onEnter={add}
              />
              <ColourField
                name={`${place}.colours`}
                label="Colours, if not the palette"
                listedAs={`${called}, colours`}
                value={piece.colours}
                onChange={(colours) => put(index, { colours })}
              />
              <button type="button" aria-label={`Remove piece ${index + 1}`} onClick={() => remove(index)}>
                Remove
              </button>
            </li>
          );
        })}
      </ol>
      <button type="button" onClick={add}>
        Add a piece
      </button>
    </fieldset>
  );
}
