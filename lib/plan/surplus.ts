import type { Crop, Variety } from "#lib/domain/crop";
import type { Match } from "./match";
import { stemsGiven } from "./stems-left";

/** Stems that nobody has claimed: cut on `cutDay`, of use until `lastUsefulDay`, the end of the crop's hold. Day numbers. */
export type Surplus = {
  readonly variety: Variety;
  readonly crop: Crop;
  readonly cutDay: number;
  readonly lastUsefulDay: number;
  readonly stems: number;
};

/** All surplus of a season, by variety and then by day. With the stems given it makes up the whole supply [S1]. */
export function surplus(match: Match): Surplus[] {
  const given = stemsGiven(match);
  return match.supplies.flatMap(({ variety, crop, days, stems }, supplyIndex) =>
    days.flatMap((cutDay, index) => {
      const left = stems[index] - given[match.network.firstSupply[supplyIndex] + index];
      return left > 0
        ? [{ variety, crop, cutDay, lastUsefulDay: cutDay + Math.floor(crop.holdDays.count), stems: left }]
        : [];
    }),
  );
}
