import { toDayNumber } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import { apportion } from "#lib/maths/apportion";
import type { Need } from "./needs";

/**
 * Needs as they were asked for on the days before a day: of a booking that was made larger since, no more stems of a role than it asked for then, its needs of the role
 * in proportion [T7].
 * @param day  a day number; no booking was made larger on a day between it and the last one that was passed
 */
export function askedThen(needs: readonly Need[], day: number): readonly Need[] {
  if (needs.every(({ booking }) => booking.askedBefore.length === 0)) return needs;
  const stemsThen = new Map<Need, number>();
  for (const ofRole of groupsOf(needs, ({ booking, role }) => `${booking.id} ${role}`).values()) {
    const most = mostBefore(ofRole[0], day);
    if (most === null || most >= ofRole.reduce((sum, { stems }) => sum + stems, 0)) continue;
    const shares = apportion(
      most,
      ofRole.map(({ stems }) => stems),
    );
    ofRole.forEach((need, index) => {
      stemsThen.set(need, shares[index]);
    });
  }
  return needs.flatMap((need) => {
    const stems = stemsThen.get(need) ?? need.stems;
    return stems === 0 ? [] : ofStems(need, stems);
  });
}

/** The stems of a need's role that its booking asked for on the days before a day; null where it was not made larger since. */
function mostBefore({ booking, role }: Need, day: number): number | null {
  const since = booking.askedBefore.filter((ask) => ask.role === role && toDayNumber(ask.until) >= day);
  const [first] = since.sort((a, b) => (a.until < b.until ? -1 : 1));
  return first ? first.stems : null;
}

/** A need with fewer stems is the same object each time: what is remembered of needs is remembered of it. */
const lessened = new WeakMap<Need, Map<number, Need>>();

function ofStems(need: Need, stems: number): Need {
  if (stems === need.stems) return need;
  const known = lessened.get(need) ?? new Map<number, Need>();
  lessened.set(need, known);
  const made = known.get(stems) ?? { ...need, stems, promisedStems: Math.min(need.promisedStems, stems) };
  known.set(stems, made);
  return made;
}
