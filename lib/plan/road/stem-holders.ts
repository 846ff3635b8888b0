import type { Bottleneck } from "./bottleneck";
import type { Match } from "./match";
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
export function stemHolders({ needs, servings }: Match, { needIndexes }: Bottleneck): StemHolder[] {
  const shares = new Set(needIndexes);
  const byBooking = new Map<Need["booking"], Map<string, HeldStems>>();
  for (const { needIndex, supplyIndex, stand, stems } of servings) {
    if (!shares.has(needIndex)) continue;
    const { booking } = needs[needIndex];
    const held = byBooking.get(booking) ?? new Map<string, HeldStems>();
    byBooking.set(booking, held);
    const key = `${supplyIndex} ${stand.kind === "planting" ? stand.planting.planting.bedId : "cooler"}`;
    held.set(key, { supplyIndex, stand, stems: (held.get(key)?.stems ?? 0) + stems });
  }
  const most = (a: { stems: number }, b: { stems: number }) => b.stems - a.stems;
  return [...byBooking]
    .map(([booking, held]) => {
      const rows = [...held.values()].sort(most);
      return { booking, stems: rows.reduce((sum, { stems }) => sum + stems, 0), held: rows };
    })
    .sort((a, b) => most(a, b) || a.booking.id - b.booking.id);
}
