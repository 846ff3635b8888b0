import { PERCENT, shown } from "#lib/domain/measures";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { halfPieces } from "../../bookings/editor/odd-entries";
import { parseBookingForm } from "../../bookings/editor/parse-form";
import { today } from "../../clock";
import type { FormValues } from "../../ui/form-values";
import { chosen } from "./chosen";

/** Lines for pieces in the short form of a booking. */
export const PIECE_LINES = 3;

/**
 * A booking that might be, as its short form says: focal stems, pieces, or both. It is read by the rules of the full form; problems are
 * told at the fields of the short one, and then there is none.
 */
export function readBookingDraft(values: FormValues, { farm, recipes }: Snapshot): BookingDraft | null {
  const palette = values.text("booking.palette");
  const stemCount = values.text("focalStems");
  const pieces = Array.from({ length: PIECE_LINES }, (_, index) => ({
    index,
    recipe: values.text(`pieceRecipe[${index}]`),
    pieceCount: values.text(`pieceCount[${index}]`),
  })).filter(({ recipe, pieceCount }) => recipe !== "" || pieceCount !== "");
  if (stemCount === "" && pieces.length === 0)
    values.refuse("focalStems", "write how many focal stems, or choose a piece below");
  const parsed = parseBookingForm(
    {
      client: values.text("booking.client"),
      status: values.text("booking.status"),
      lapsesAfter: "",
      eventOn: values.text("booking.eventOn"),
      palette,
      alternativeColours: "",
      unacceptableColours: "",
      spareShare: shown(PERCENT, farm.spareShare, farm.decimalMark),
      priceCents: "",
      unacceptableCropIds: [],
      pieces: pieces.map(({ index, pieceCount }) => ({
        // No recipe has the id 0: what was not chosen is refused already, and the other fields are still to be read.
        recipeId: chosen(values, `pieceRecipe[${index}]`, recipes, "a piece") || 0,
        pieceCount,
        colours: "",
      })),
      stemLines:
        stemCount === ""
          ? []
          : [{ role: "focal", cropId: null, cropOnly: false, asks: "", colours: palette, stemCount }],
      takenOn: today(),
      note: "",
    },
    farm,
  );
  const problems = parsed.ok ? halfPieces(parsed.parsed, recipes) : parsed.problems;
  for (const { place, message } of problems) {
    const piece = /^pieces\[(\d+)\]\.(recipeId|pieceCount)/.exec(place);
    if (piece)
      values.refuse(
        `${piece[2] === "recipeId" ? "pieceRecipe" : "pieceCount"}[${pieces[Number(piece[1])].index}]`,
        message,
      );
    else if (place.endsWith("stemCount")) values.refuse("focalStems", message);
    // The colours of the stems are those of the palette, where they are told already.
    else if (!place.startsWith("stemLines")) values.refuse(`booking.${place}`, message);
  }
  return parsed.ok && values.refusal().problems.length === 0 ? parsed.parsed : null;
}
