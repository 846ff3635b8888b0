import { STEM_TRAITS } from "#lib/domain/records/stem-traits";
import type { HeadSize, OutOfWater, StemLength } from "#lib/domain/words";

/** What stems are like that somebody has told of. */
export type Traits = {
  readonly headSize: HeadSize | null;
  readonly stemLength: StemLength | null;
  readonly outOfWater: OutOfWater | null;
};

/** "medium head, short stem, wilts out of water"; "not told" where nobody has told anything. */
export function traitsInWords({ headSize, stemLength, outOfWater }: Traits): string {
  const told = [
    headSize && `${headSize} head`,
    stemLength && `${stemLength} stem`,
    outOfWater && STEM_TRAITS.outOfWater.meanings?.[outOfWater],
  ].filter(Boolean);
  return told.join(", ") || "not told";
}
