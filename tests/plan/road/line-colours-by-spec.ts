import type { Booking } from "#lib/domain/records/booking";
import type { Colour } from "#lib/domain/words";

/** What N2 says of a recipe line's colours: the piece's or the booking's, then the named alternatives, then the four neutral ones. */
export function coloursBySpec(line: string, ofPiece: readonly Colour[], booking: Booking): Colour[] {
  const wanted = ofPiece.length > 0 ? [...ofPiece] : [...booking.palette];
  if (line === "any" || wanted.length === 0) return [];
  const more: Colour[] = ofPiece.length > 0 ? [] : [...booking.alternativeColours];
  if (line === "palette-or-neutral")
    for (const neutral of ["white", "cream", "green", "silver"] as const)
      if (!booking.unacceptableColours.includes(neutral)) more.push(neutral);
  for (const colour of more) if (!wanted.includes(colour)) wanted.push(colour);
  return wanted;
}
