/** What a row of the list asks for one booking: stems to cut, before grading. */
export type AskedPart = { readonly bookingId: number; readonly stemsToCut: number };

/** A part of what was cut, as it is recorded. `bookingId` null: for nobody yet. */
export type CutPart = {
  readonly bookingId: number | null;
  readonly stemsCut: number;
  readonly stemsAsked: number;
};

/**
 * Shares what was cut of a row among its bookings: each in its turn has what the list asked for it, as long as there is any, and what is more than all asked
 * for is nobody's yet [T6]. Every booking is named, also one that gets none; stems sum to what was cut.
 * @param asked  in the order in which they are served: by day of the event, then by booking
 */
export function splitCut(asked: readonly AskedPart[], stemsCut: number): CutPart[] {
  let left = stemsCut;
  const parts = asked.map(({ bookingId, stemsToCut }): CutPart => {
    const stems = Math.min(left, stemsToCut);
    left -= stems;
    return { bookingId, stemsCut: stems, stemsAsked: stemsToCut };
  });
  return left > 0 ? [...parts, { bookingId: null, stemsCut: left, stemsAsked: 0 }] : parts;
}
