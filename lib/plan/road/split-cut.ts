/** What a row of the list asks for one booking, or for standing orders (`bookingId` null): stems to cut, before grading. */
export type AskedPart = { readonly bookingId: number | null; readonly stemsToCut: number };

/** A part of what was cut, as it is recorded. `bookingId` null: for a standing order, or for nobody yet. */
export type CutPart = {
  readonly bookingId: number | null;
  readonly stemsCut: number;
  readonly stemsAsked: number;
};

/**
 * Shares what was cut of a row among its bookings: each in its turn has what the list asked for it, as long as there is any, and what is more than all asked
 * for is nobody's yet [T6]. What standing orders ask for is one part, with what is nobody's: it is recorded without a booking. Every booking is named, also one that gets none; stems sum to what was cut.
 * @param asked  in the order in which they are served: by day of the event, then by booking
 */
export function splitCut(asked: readonly AskedPart[], stemsCut: number): CutPart[] {
  let left = stemsCut;
  const parts = asked.map(({ bookingId, stemsToCut }): CutPart => {
    const stems = Math.min(left, stemsToCut);
    left -= stems;
    return { bookingId, stemsCut: stems, stemsAsked: stemsToCut };
  });
  const booked = parts.filter(({ bookingId }) => bookingId !== null);
  const rest = parts.filter(({ bookingId }) => bookingId === null);
  if (rest.length === 0 && left === 0) return booked;
  const sum = (of: (part: CutPart) => number) => rest.reduce((all, part) => all + of(part), 0);
  return [
    ...booked,
    {
      bookingId: null,
      stemsCut: sum(({ stemsCut: stems }) => stems) + left,
      stemsAsked: sum((part) => part.stemsAsked),
    },
  ];
}
