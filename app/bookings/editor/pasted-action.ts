"use server";

import { writeNumber } from "#lib/domain/read-number";
import { readPastedRows } from "#lib/sheets/pasted-rows";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { whyUnread } from "../../download";
import { loadFarm } from "../../load";
import type { BookingForm } from "./draft";

/** Rows pasted from a spreadsheet: those that could be read as lines of the form, the rest as text with its problems. */
export type Pasted = {
  /** Why the farm could not be asked, in words; then all of the text is unread. Null when it could. */
  whyUnread: string | null;
  rows: Pick<BookingForm, "pieces" | "stemLines">;
  unread: string;
  problems: readonly SheetProblem[];
};

/** Reads pasted rows against the farm's recipes and crops. Writes nothing. */
export async function readPasted(text: string): Promise<Pasted> {
  const why = whyUnread();
  if (why !== null) return { whyUnread: why, rows: { pieces: [], stemLines: [] }, unread: String(text), problems: [] };
  const { farm, recipes, crops } = loadFarm();
  const nameOf = ({ name }: { name: string }) => name;
  const idOf = (rows: readonly { id: number; name: string }[], name: string) =>
    rows.find((row) => row.name.toLowerCase() === name.toLowerCase())?.id;
  const read = readPastedRows(String(text), { farm, recipes: recipes.map(nameOf), crops: crops.map(nameOf) });
  return {
    whyUnread: null,
    rows: {
      pieces: read.pieces.flatMap(({ recipe, pieceCount, colours }) => {
        const recipeId = idOf(recipes, recipe);
        return recipeId === undefined
          ? []
          : [{ recipeId, pieceCount: writeNumber(pieceCount, farm.decimalMark), colours: colours.join(", ") }];
      }),
      stemLines: read.stemLines.map(({ role, crop, cropOnly, colours, stemCount }) => ({
        role,
        cropId: crop === null ? null : (idOf(crops, crop) ?? null),
        cropOnly,
        asks: "",
        colours: colours.join(", "),
        stemCount: writeNumber(stemCount, farm.decimalMark),
      })),
    },
    unread: read.unread,
    problems: read.problems,
  };
}
