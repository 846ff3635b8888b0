import type { FarmDatabase } from "#db/client";
import { recordTally, settleTally } from "#db/write/tallies";
import type { Written } from "#db/write/write";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Tally } from "#lib/domain/tally";
import { isDelivery } from "#lib/plan/road/orders";
import { type AskedPart, splitCut } from "#lib/plan/road/split-cut";
import { asking } from "../people/who";

/** Takes what somebody counted, in the name of whoever sends it; gives whether it is kept apart. */
export const takeTally = (database: FarmDatabase, tally: Tally, farm: Snapshot): Written<boolean> =>
  recordTally(database, tally, asking()?.person?.name ?? null, (recorded, sent) => added(farm, tally, recorded, sent));

type Settled = { readonly id: number; readonly isAdded: boolean };

/** Adds a count that is kept apart after all, or leaves it out. */
export const settle = (database: FarmDatabase, { id, isAdded }: Settled, farm: Snapshot, by?: string): Written =>
  settleTally(database, id, isAdded, (recorded, sent) => added(farm, recorded[0], recorded, sent), by);

type Place = Pick<CutDraft, "cutOn" | "bedId" | "varietyId">;

function added(
  farm: Snapshot,
  { cutOn, bedId, varietyId }: Place,
  recorded: readonly Cut[],
  { asked, stemsCut, restStands = false }: Pick<Tally, "asked" | "stemsCut" | "restStands">,
): CutDraft[] {
  const isLeft = restStands || recorded.some((cut) => cut.restStands);
  const parts = splitCut(askedParts(farm, asked), stemsCut, recorded);
  return parts.map((part) => ({ cutOn, bedId, varietyId, ...part, goodStems: null, restStands: isLeft }));
}

/** What a list asked for, as the farm stands: what a booking had that is no longer there is nobody's. */
function askedParts({ bookings }: Snapshot, asked: Tally["asked"]): AskedPart[] {
  const known = new Set(bookings.map(({ id }) => id));
  return asked.flatMap(([id, stemsToCut]): AskedPart[] => {
    if (isDelivery({ id })) return [{ bookingId: null, stemsToCut }];
    return known.has(id) ? [{ bookingId: id, stemsToCut }] : [];
  });
}
