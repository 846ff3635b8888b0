import { groupsOf } from "#lib/domain/groups-of";
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
  /** Those of them that still stand in a bed; the others are cut already. */
  readonly standingStems: number;
};

/** All that a match leaves over of a season, by variety and then by day. With the stems given it makes up the whole supply [S1]. */
export function stemsOver(match: Match, seasonYear: number): Surplus[] {
  const given = match.network.stemsGiven(match.solution);
  const out: Surplus[] = [];
  match.supplies.forEach(({ variety, crop, hold, days, stems, lots }, supplyIndex) => {
    for (let index = 0; index < days.length; index++) {
      const left = stems[index] - given[match.network.nodeOf(supplyIndex, index)];
      const own = leftOfSeason(lots[index], left, seasonYear);
      if (own.stems === 0) continue;
      out.push({ variety, crop, cutDay: days[index], lastUsefulDay: lastEventDay(days[index], hold), ...own });
    }
  });
  return out;
}

/**
 * What is over, without blooms that nobody would cut [S2]: stems that still stand, where all that is over of their crop, colour and length and of use on one
 * same day is less than a bunch, which is the least that anybody buys. Lots in their order.
 */
export function worthCutting(over: readonly Surplus[]): Surplus[] {
  const worth = new Set(bunchedTogether(over).flatMap(inBunches));
  return over.flatMap((lot) => {
    if (worth.has(lot) || lot.standingStems === 0) return lot;
    const cutAlready = lot.stems - lot.standingStems;
    return cutAlready === 0 ? [] : { ...lot, stems: cutAlready, standingStems: 0 };
  });
}

/** Lots by what is bunched together: one crop, colour and length. */
export function bunchedTogether(lots: readonly Surplus[]): Surplus[][] {
  const groups = groupsOf(lots, ({ crop, variety }) => `${crop.id} ${variety.colour} ${crop.stemLength}`);
  return [...groups.values()];
}

/** Of lots that can be bunched together, those with a day on which a bunch of them is of use. */
function inBunches(lots: readonly Surplus[]): Surplus[] {
  const stemsOn = new Map<number, number>();
  for (const { cutDay, lastUsefulDay, stems } of lots)
    for (let day = cutDay; day <= lastUsefulDay; day++) stemsOn.set(day, (stemsOn.get(day) ?? 0) + stems);
  return lots.filter(({ crop, cutDay, lastUsefulDay }) => {
    for (let day = cutDay; day <= lastUsefulDay; day++)
      if ((stemsOn.get(day) ?? 0) >= crop.bunchStems.count) return true;
    return false;
  });
}

/** How many of the stems left on a day are a season's, and how many of these are not cut yet. Lots are given away one after the other, so what is left is the last ones'. */
function leftOfSeason(lots: readonly Lot[], stemsLeft: number, seasonYear: number) {
  let left = stemsLeft;
  let stems = 0;
  let standingStems = 0;
  for (let index = lots.length - 1; index >= 0 && left > 0; index--) {
    const { stand } = lots[index];
    const ofLot = Math.min(left, lots[index].stems);
    if (seasonOfStems(stand) === seasonYear) {
      stems += ofLot;
      if (stand.kind === "planting" && !stand.isRecorded) standingStems += ofLot;
    }
    left -= ofLot;
  }
  return { stems, standingStems };
}
