import type { Match } from "./match";
import type { Need } from "./needs";
import { brokenOf } from "./promises";

/** A need that is short of so many stems more than before; `promisedStems` of them were promised. */
type Loss = { readonly need: Need; readonly stems: number; readonly promisedStems: number };

/** A booking that goes short of so many stems more than before, need by need. */
export type Loser = { readonly booking: Need["booking"]; readonly stems: number; readonly losses: readonly Loss[] };

/**
 * Who goes short of stems by a change: every booking of which a need lacks more stems after it than before, most stems first. Needs that only one of the two
 * matches knows lose nothing.
 * @param after  matched with the very needs of `before`, but for those that the change made new
 */
export function losers(before: Match, after: Match): Loser[] {
  const shortBefore = new Map(before.needs.map((need, index) => [need, before.shortStems[index]]));
  const byBooking = new Map<Need["booking"], Loss[]>();
  after.needs.forEach((need, index) => {
    const short = after.shortStems[index];
    const was = shortBefore.get(need) ?? short;
    if (short <= was) return;
    const loss = { need, stems: short - was, promisedStems: brokenOf(need, short) - brokenOf(need, was) };
    const known = byBooking.get(need.booking);
    if (known) known.push(loss);
    else byBooking.set(need.booking, [loss]);
  });
  return [...byBooking]
    .map(([booking, losses]) => ({ booking, stems: losses.reduce((sum, { stems }) => sum + stems, 0), losses }))
    .sort((a, b) => b.stems - a.stems);
}
