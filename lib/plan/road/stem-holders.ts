import type { Bottleneck } from "./bottleneck";
import type { Match, Serving } from "./match";
import type { Need } from "./needs";
import type { Stand } from "./supply";

/** Stems of one variety and bed or cooler that a booking gets. */
export type HeldStems = { readonly supplyIndex: number; readonly stand: Stand; readonly stems: number };

/** A booking that gets stems which a short need shares, by name and most first. */
export type StemHolder = {
  readonly booking: Need["booking"];
  readonly stems: number;
  readonly held: readonly HeldStems[];
};

/**
 * Who has the stems that a short need asks for too: every booking that shares them by the gap's bottleneck [G3], the short one included if it
 * gets any, most stems first. A bed's stems of one variety count once, whatever the day they are cut.
 */
export function stemHolders(match: Match, { needIndexes }: Bottleneck): StemHolder[] {
  const shares = new Set(needIndexes);
  return holdersBy(match, ({ needIndex }) => shares.has(needIndex));
}

/** Who gets some of a match's servings, by booking, most stems first. */
export function holdersBy({ needs, servings }: Match, isOf: (serving: Serving) => boolean): StemHolder[] {
  const byBooking = new Map<Need["booking"], Serving[]>();
  for (const serving of servings) {
    if (!isOf(serving)) continue;
    const { booking } = needs[serving.needIndex];
    const known = byBooking.get(booking);
    if (known) known.push(serving);
    else byBooking.set(booking, [serving]);
  }
  return [...byBooking]
    .map(([booking, served]) => {
      const held = heldIn(served);
      return { booking, stems: held.reduce((sum, { stems }) => sum + stems, 0), held };
    })
    .sort((a, b) => most(a, b) || a.booking.id - b.booking.id);
}

/** What one need gets, by variety and bed or cooler, most stems first. */
export const heldForNeed = ({ servings }: Match, needIndex: number): readonly HeldStems[] =>
  heldIn(servings.filter((serving) => serving.needIndex === needIndex));

const most = (a: { stems: number }, b: { stems: number }) => b.stems - a.stems;

/** Servings added up by variety and bed, whatever the day they are cut. */
function heldIn(servings: readonly Serving[]): HeldStems[] {
  const held = new Map<string, HeldStems>();
  for (const { supplyIndex, stand, stems } of servings) {
    const place = `${supplyIndex} ${stand.kind === "planting" ? stand.planting.planting.bedId : "cooler"}`;
    held.set(place, { supplyIndex, stand, stems: (held.get(place)?.stems ?? 0) + stems });
  }
  return [...held.values()].sort(most);
}
