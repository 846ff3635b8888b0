"use client";

import { SelectField } from "../../ui/form-fields.client";
import { CountStepper } from "./count-stepper.client";
import type { Choices, PieceLine } from "./draft";
import { MatrixLine } from "./matrix-line.client";

type Props = {
  index: number;
  piece: PieceLine;
  choices: Choices;
  /** Just asked for: its choice takes the focus. */
  isNew: boolean;
  onChange: (part: Partial<PieceLine>) => void;
  onNone: (called: string) => void;
  onEnter: () => void;
};

/** So many of a recipe. */
export function PieceRow({ index, piece, choices, isNew, onChange, onNone, onEnter }: Props) {
  const recipe = choices.recipes.find(({ id }) => id === piece.recipeId);
  const place = `pieces[${index}]`;
  const called = `Piece ${index + 1}`;
  const options = choices.recipes.map(({ id, name, unit }) => ({
    value: String(id),
    label: unit === "piece" ? name : `${name}, ${unit}`,
  }));
  return (
    <MatrixLine
      head={
        <SelectField
          name={`${place}.recipeId`}
          label={called}
          isFirst={isNew}
          options={options}
          value={String(piece.recipeId)}
          onChange={(recipeId) => onChange({ recipeId: Number(recipeId) })}
        />
      }
      count={
        <CountStepper
          name={`${place}.pieceCount`}
          what={recipe?.name ?? called}
          label={`How many, ${recipe?.name ?? called}`}
          listedAs={`${called}, how many`}
          mark={choices.decimalMark}
          value={piece.pieceCount}
          onChange={(pieceCount) => onChange({ pieceCount })}
          onNone={() => onNone(recipe?.name ?? called)}
          onEnter={onEnter}
        />
      }
      stems={recipe?.stemsEach ?? {}}
      colours={{
        name: `${place}.colours`,
        listedAs: `${called}, colours`,
        none: "palette",
        ownColours: choices.ownColours,
        value: piece.colours,
        onChange: (colours) => onChange({ colours }),
      }}
    />
  );
}
