import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { lastEventDay } from "./hold-window";
import type { Match } from "./match";
import { seasonOfStems } from "./seasons";
import type { Lot } from "./supply";

/** Stems that nobody has claimed: cut on `cutDay`, of use until `lastUsefulDay`, the last event day that it could serve. Day numbers. */
export type Surplus = {
  readonly variety: Variety;
  readonly crop: Crop;
  readonly cutDay: number;
  readonly lastUsefulDay: number;
  readonly stems: number;
};

/** All surplus of a season, by variety and then by day. With the stems given it makes up the whole supply [S1]. */
export function surplus(match: Match, seasonYear: number): Surplus[] {
  const given = match.network.stemsGiven(match.solution);
  const out: Surplus[] = [];
  match.supplies.forEach(({ variety, crop, hold, days, stems, lots }, supplyIndex) => {
    for (let index = 0; index < days.length; index++) {
      const left = leftOfSeason(
        lots[index],
        stems[index] - given[match.network.nodeOf(supplyIndex, index)],
        seasonYear,
      );
      if (left === 0) continue;
      out.push({
        variety,
        crop,
        cutDay: days[index],
        lastUsefulDay: lastEventDay(days[index], hold),
        stems: left,
      });
    }
  });
  return out;
}

/** How many of the stems left on a day are a season's. Lots are given away one after the other, so what is left is the last ones'. */
function leftOfSeason(lots: readonly Lot[], stemsLeft: number, seasonYear: number): number {
  let left = stemsLeft;
  let own = 0;
  for (let index = lots.length - 1; index >= 0 && left > 0; index--) {
    const ofLot = Math.min(left, lots[index].stems);
    if (seasonOfStems(lots[index].stand) === seasonYear) own += ofLot;
    left -= ofLot;
  }
  return own;
}
