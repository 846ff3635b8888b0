/** What a row of the list asks for one booking, or for standing orders (`bookingId` null): stems to cut, before grading. */
export type AskedPart = { readonly bookingId: number | null; readonly stemsToCut: number };

/** A part of what was cut, as it is recorded. `bookingId` null: for a standing order, or for nobody yet. */
export type CutPart = {
  readonly bookingId: number | null;
  readonly stemsCut: number;
  readonly stemsAsked: number;
};

/** A part that is recorded already. `stemsAsked` null: no list asked for it. */
export type RecordedPart = Omit<CutPart, "stemsAsked"> & { readonly stemsAsked: number | null };

/**
 * Shares what was cut of a row among its bookings: each in its turn has what the list asked for it, as long as there is any, and what is more than all asked
 * for is nobody's yet [T6]. What standing orders ask for is one part, with what is nobody's: it is recorded without a booking. Every booking is named, also one that gets none. Stems that are recorded already stay where they are, and
 * what was cut is added to them: the parts sum to both [T10].
 * @param asked     in the order in which they are served: by day of the event, then by booking; with what was asked of them before
 * @param recorded  what is recorded of the row; a part of it that is not asked for is left out of the answer, and stays as it is
 */
export function splitCut(
  asked: readonly AskedPart[],
  stemsCut: number,
  recorded: readonly RecordedPart[] = [],
): CutPart[] {
  const before = (bookingId: number | null) => recorded.find((part) => part.bookingId === bookingId);
  let left = stemsCut;
  const booked = asked.flatMap(({ bookingId, stemsToCut }): CutPart[] => {
    if (bookingId === null) return [];
    const was = before(bookingId);
    const stemsAsked = Math.max(stemsToCut, was?.stemsAsked ?? 0);
    const stems = Math.min(left, Math.max(0, stemsAsked - (was?.stemsCut ?? 0)));
    left -= stems;
    return [{ bookingId, stemsCut: (was?.stemsCut ?? 0) + stems, stemsAsked }];
  });
  const rest = asked.filter(({ bookingId }) => bookingId === null);
  if (rest.length === 0 && left === 0) return booked;
  const was = before(null);
  const askedOfRest = rest.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0);
  return [
    ...booked,
    {
      bookingId: null,
      stemsCut: (was?.stemsCut ?? 0) + left,
      stemsAsked: Math.max(askedOfRest, was?.stemsAsked ?? 0),
    },
  ];
}
