import type { BookingDraft } from "./records/booking";
import type { Recipe } from "./records/recipe";

/** More than any event asks for. A plan reckons with whole stems in 32 bits: two thousand such bookings still fit together. */
const MOST_STEMS = 1_000_000;

/** Stems that a booking asks for in all its pieces and lines, spare included, before they are rounded. `linesOf` gives the lines of a recipe. */
export function stemsAskedFor(
  { pieces, stemLines, spareShare }: Pick<BookingDraft, "pieces" | "stemLines" | "spareShare">,
  linesOf: (recipeId: number) => Recipe["lines"],
): number {
  let stems = 0;
  for (const { recipeId, pieceCount } of pieces)
    for (const { stemsPerPiece } of linesOf(recipeId)) stems += pieceCount * stemsPerPiece;
  for (const { stemCount } of stemLines) stems += stemCount;
  return stems * (1 + spareShare);
}

/** What is wrong with so many stems in one booking, and how to mend it; null when nothing is. */
export const tooManyStems = (stems: number): string | null =>
  stems <= MOST_STEMS
    ? null
    : `asks for ${Math.ceil(stems).toLocaleString("en-US")} stems, and a booking has at most ${MOST_STEMS.toLocaleString("en-US")}: ask for fewer pieces, or part the booking`;
