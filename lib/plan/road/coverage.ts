import type { Booking } from "#lib/domain/records/booking";
import type { Gap } from "./gaps";
import type { Match } from "./match";
import type { Need } from "./needs";

/** One need of a booking and how far the match covers it; `gap` tells why not, when it does not. */
type CoveredNeed = { readonly need: Need; readonly shortStems: number; readonly gap: Gap | null };

/** A booking with its needs covered or short. `needStems` and `shortStems` are sums over them. */
export type Coverage = {
  readonly booking: Booking;
  readonly needs: readonly CoveredNeed[];
  readonly needStems: number;
  readonly shortStems: number;
};

/** The coverage of every booking that asks for anything, by booking id. */
export function coverageByBooking({ needs, shortStems }: Match, gaps: readonly Gap[]): Map<number, Coverage> {
  const gapOf = new Map(gaps.map((gap) => [gap.needIndex, gap]));
  const rows = new Map<number, CoveredNeed[]>();
  needs.forEach((need, index) => {
    const row = { need, shortStems: shortStems[index], gap: gapOf.get(index) ?? null };
    const known = rows.get(need.booking.id);
    if (known) known.push(row);
    else rows.set(need.booking.id, [row]);
  });
  return new Map(
    [...rows].map(([id, covered]) => [
      id,
      {
        booking: covered[0].need.booking,
        needs: covered,
        needStems: covered.reduce((sum, { need }) => sum + need.stems, 0),
        shortStems: covered.reduce((sum, row) => sum + row.shortStems, 0),
      },
    ]),
  );
}
