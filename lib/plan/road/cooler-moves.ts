import { toDayNumber } from "#lib/domain/day";
import type { CoolerMove } from "#lib/domain/records/cooler-move";

/** Stems of a lot of the cooler, which is what was cut of a variety on a day: nobody's yet, or a booking's own. `isOut`: they were taken out for it. */
export type StoredStems = {
  readonly varietyId: number;
  readonly day: number;
  readonly bookingId: number | null;
  readonly isOut?: true;
  stems: number;
};

/**
 * Takes what a move names from the stems of its lot [ST1], and gives what is left of them and what the booking of the move has out: first from the booking's
 * own, then from nobody's, then from other bookings', that of the latest event first. What the lot does not hold is not taken.
 * @param stored   stems that stand in the cooler; their counts are lowered
 * @param eventDayOf  the day of a booking's event, null where it asks for nothing any more
 * @param day      the day of the move: what was used on days before it is not touched
 */
export function takeFromLot<Stems extends StoredStems>(
  stored: readonly Stems[],
  { varietyId, cutOn, bookingId, stemCount }: CoolerMove,
  eventDayOf: (bookingId: number) => number | null,
  day: number,
): { readonly from: Stems; readonly stems: number }[] {
  const cutDay = toDayNumber(cutOn);
  const turnOf = ({ bookingId: owner }: Stems): number => {
    if (owner === null) return 1;
    return owner === bookingId ? 0 : 2;
  };
  const lastFirst = (stems: Stems): number => (stems.bookingId === null ? 0 : -(eventDayOf(stems.bookingId) ?? 0));
  const inTurn = stored
    .filter((stems) => stems.varietyId === varietyId && stems.day === cutDay && !stems.isOut)
    .filter(({ bookingId: owner }) => owner === null || (eventDayOf(owner) ?? day) >= day)
    .sort((a, b) => turnOf(a) - turnOf(b) || lastFirst(a) - lastFirst(b) || (b.bookingId ?? 0) - (a.bookingId ?? 0));
  let left = stemCount;
  return inTurn.flatMap((from) => {
    const stems = Math.min(from.stems, left);
    from.stems -= stems;
    left -= stems;
    return stems > 0 ? { from, stems } : [];
  });
}

/** Moves by day, those of a day by what tells one from another, so that the order in which they were recorded changes nothing. Those for a booking go first. */
export const movesInOrder = (moves: readonly CoolerMove[]): CoolerMove[] =>
  [...moves].sort(
    (a, b) =>
      byText(a.movedOn, b.movedOn) ||
      Number(a.bookingId === null) - Number(b.bookingId === null) ||
      byText(a.kind, b.kind) ||
      a.varietyId - b.varietyId ||
      byText(a.cutOn, b.cutOn) ||
      (a.bookingId ?? 0) - (b.bookingId ?? 0) ||
      a.stemCount - b.stemCount,
  );

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
