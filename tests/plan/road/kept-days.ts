import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";

/** Days as good as fresh, and days at a stretch, as rule M10 states them: a third of them is left in a store 10 degrees too warm. */
export function keptDays(
  crop: Crop,
  { farm: { storeC, coolRoomC, storesDry } }: Pick<Snapshot, "farm">,
): [number, number] {
  const days = Math.max(crop.holdDays.count, storesDry ? crop.dryHoldDays.count : 0);
  const longest = Math.max(days, crop.stretchDays.count);
  if (storeC === null) return [days, longest];
  const stands = storeC >= crop.notColderC.count ? storeC : Math.max(coolRoomC, crop.notColderC.count);
  const divisor = 3 ** (Math.max(stands - crop.holdUpToC.count, 0) / 10);
  return [days / divisor, longest / divisor];
}
