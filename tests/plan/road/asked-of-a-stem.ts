import type { Crop } from "#lib/domain/records/crop";
import { STEM_ASKS, type StemAsk } from "#lib/domain/words";

/** Whether a stem has what is asked of it, as rule M2 states it: for each thing asked, by hand. */
export function hasWhatIsAsked(
  asks: readonly StemAsk[],
  { headSize, stemLength, outOfWater }: Pick<Crop, "headSize" | "stemLength" | "outOfWater">,
): boolean {
  const heads = ["small", "medium", "large"].filter((size) => asks.some((ask) => ask === `${size} head`));
  const isHeadRight = heads.length === 0 || headSize === null || heads.some((size) => size === headSize);
  const isLongEnough = !asks.some((ask) => ask === "long stem") || stemLength !== "short";
  const holds = !asks.some((ask) => ask === "out of water") || outOfWater !== "wilts";
  return isHeadRight && isLongEnough && holds;
}

/** What is asked of a stem in the order that N2 has, none twice. */
export const inOrder = (asks: readonly StemAsk[]): StemAsk[] => STEM_ASKS.filter((ask) => asks.includes(ask));
