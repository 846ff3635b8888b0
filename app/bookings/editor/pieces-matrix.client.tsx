"use client";

import { useState } from "react";
import { ROLES } from "#lib/domain/words";
import { useForm } from "../../ui/form-context.client";
import type { BookingForm, Choices } from "./draft";
import { MatrixFoot } from "./matrix-foot";
import { PieceRow } from "./piece-row.client";
import { StemRow } from "./stem-row.client";
import type { CoverageAnswer } from "./use-coverage.client";

type Lines = Pick<BookingForm, "pieces" | "stemLines">;

type Props = {
  lines: Lines;
  choices: Choices;
  spare: string;
  answer: CoverageAnswer;
  onChange: (lines: Partial<Lines>) => void;
};

/** Lines that went to nought, as they stood before, and what went. */
type TakenOut = { readonly called: string; readonly before: Partial<Lines> };

/**
 * What a booking asks for: pieces, then stems by name or job, each with the stems of the six jobs that one of it takes, and their sums in the
 * foot. Enter in a count adds the next line; a count that goes to nought takes its line out, which can be put back.
 */
export function PiecesMatrix({ lines: { pieces, stemLines }, choices, spare, answer, onChange }: Props) {
  const { forget } = useForm("the pieces of a booking");
  const [takenOut, setTakenOut] = useState<TakenOut | null>(null);
  const [isAsked, setIsAsked] = useState(false);
  const put = (next: Partial<Lines>) => {
    setTakenOut(null);
    setIsAsked(true);
    onChange(next);
  };
  const addPiece = () => {
    const unused = choices.recipes.find(({ id }) => !pieces.some(({ recipeId }) => recipeId === id));
    const recipe = unused ?? choices.recipes[0];
    if (recipe) put({ pieces: [...pieces, { recipeId: recipe.id, pieceCount: "", colours: "" }] });
  };
  const addStems = () =>
    put({
      stemLines: [...stemLines, { role: "focal", cropId: null, cropOnly: false, asks: "", colours: "", stemCount: "" }],
    });
  const takeOut = (called: string, before: Partial<Lines>, next: Partial<Lines>) => {
    forget();
    onChange(next);
    setTakenOut({ called, before });
  };
  return (
    <div>
      <table className="matrix">
        <caption>
          <h2>Pieces</h2>
        </caption>
        <thead>
          <tr>
            <th scope="col">piece</th>
            <th scope="col" className="count">
              how many
            </th>
            {ROLES.map((role) => (
              <th key={role} scope="col" className="stems">
                <svg className="gl plain-sign" width="22" height="22" aria-hidden="true">
                  <use href={`#r-${role}`} />
                </svg>
                {role}
              </th>
            ))}
            <th scope="col" className="colours-cell">
              colours
            </th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece, index) => (
            <PieceRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
              key={index}
              index={index}
              piece={piece}
              choices={choices}
              isNew={isAsked && index === pieces.length - 1 && piece.pieceCount === ""}
              onChange={(part) => put({ pieces: pieces.with(index, { ...piece, ...part }) })}
              onNone={(called) => takeOut(called, { pieces }, { pieces: pieces.toSpliced(index, 1) })}
              onEnter={addPiece}
            />
          ))}
          {stemLines.map((line, index) => (
            <StemRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
              key={index}
              index={index}
              line={line}
              choices={choices}
              isNew={isAsked && index === stemLines.length - 1 && line.stemCount === ""}
              onChange={(part) => put({ stemLines: stemLines.with(index, { ...line, ...part }) })}
              onNone={(called) => takeOut(called, { stemLines }, { stemLines: stemLines.toSpliced(index, 1) })}
              onEnter={addStems}
            />
          ))}
          {pieces.length + stemLines.length === 0 && (
            <tr className="matrix-empty">
              <td colSpan={ROLES.length + 3}>Nothing yet. Add the first piece; each brings the stems of its recipe.</td>
            </tr>
          )}
        </tbody>
        {pieces.length + stemLines.length > 0 && (
          <MatrixFoot coverage={answer.coverage} isStale={answer.isStale} spare={spare} />
        )}
      </table>
      <div role="status">
        {takenOut && (
          <p className="taken-out">
            {takenOut.called} taken out.{" "}
            <button type="button" className="quiet" onClick={() => put(takenOut.before)}>
              Put it back
            </button>
          </p>
        )}
      </div>
      <div className="actions">
        <button type="button" onClick={addPiece}>
          Add a piece
        </button>
        <button type="button" onClick={addStems}>
          Add stems by name
        </button>
      </div>
    </div>
  );
}
