"use client";

import { FieldProblem } from "../../ui/field-problem";
import { ColourField } from "./colour-field.client";
import type { BookingForm, Choices } from "./draft";

type Props = {
  pieces: BookingForm["pieces"];
  choices: Choices;
  onChange: (pieces: BookingForm["pieces"]) => void;
  problemAt: (place: string) => string | undefined;
};

/** The pieces of a booking. Enter in a count adds the next piece, so that ten can be typed without the mouse. */
export function PieceLines({ pieces, choices, onChange, problemAt }: Props) {
  const put = (index: number, part: Partial<BookingForm["pieces"][number]>) =>
    onChange(pieces.map((piece, place) => (place === index ? { ...piece, ...part } : piece)));
  const add = () => {
    const unused = choices.recipes.find((recipe) => !pieces.some((piece) => piece.recipeId === recipe.id));
    const recipe = unused ?? choices.recipes[0];
    if (recipe) onChange([...pieces, { recipeId: recipe.id, pieceCount: "", colours: "" }]);
  };
  return (
    <fieldset>
      <legend>Pieces</legend>
      {pieces.length === 0 && <p className="soft">Add the pieces of the event; each brings the stems of its recipe.</p>}
      <ol className="lines">
        {pieces.map((piece, index) => {
          const recipe = choices.recipes.find((found) => found.id === piece.recipeId);
          const countProblem = problemAt(`pieces[${index}].pieceCount`);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
            <li key={index} className="piece-line">
              <div>
                <label htmlFor={`piece-${index}`}>Piece {index + 1}</label>
                <select
                  id={`piece-${index}`}
                  // The line just added takes the focus, for typing on.
                  // biome-ignore lint/a11y/noAutofocus: a line is only added when asked for
                  autoFocus={index === pieces.length - 1 && piece.pieceCount === ""}
                  value={piece.recipeId}
                  onChange={(event) => put(index, { recipeId: Number(event.target.value) })}
                >
                  {choices.recipes.map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                </select>
                <p className="hint">{recipe && `${recipe.stemsEach} a ${recipe.unit}`}</p>
                <FieldProblem id={`piece-${index}-problem`} message={problemAt(`pieces[${index}].recipeId`)} />
              </div>
              <div>
                <label htmlFor={`count-${index}`}>
                  How many <span className="unit">{recipe && recipe.unit !== "piece" ? `, ${recipe.unit}` : ""}</span>
                </label>
                <input
                  id={`count-${index}`}
                  inputMode="decimal"
                  autoComplete="off"
                  value={piece.pieceCount}
                  aria-invalid={countProblem ? true : undefined}
                  aria-describedby={`count-${index}-problem`}
                  onChange={(event) => put(index, { pieceCount: event.target.value })}
                  onKeyDown={(event) => {
                    if (event.key !== "Enter") return;
                    event.preventDefault();
                    add();
                  }}
                />
                <FieldProblem id={`count-${index}-problem`} message={countProblem} />
              </div>
              <div>
                <ColourField
                  label="Colours, if not the palette"
                  value={piece.colours}
                  onChange={(colours) => put(index, { colours })}
                  problem={problemAt(`pieces[${index}].colours`)}
                />
              </div>
              <button
                type="button"
                aria-label={`Remove piece ${index + 1}`}
                onClick={() => onChange(pieces.filter((_, place) => place !== index))}
              >
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
