import { toDayNumber, yearOf } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import type { PlantingForecast } from "./forecast";
import { goodShareOn } from "./saleable-share";
import type { Stand } from "./supply";

/**
 * A recorded cut as stems that a plan may reckon with. `goodStems` are whole and fit to use. `isAllThereWas`: fewer were cut than the list asked for, or no
 * list asked, so that nothing more stood there on the day [T3].
 */
export type CutLot = {
  readonly cut: Cut;
  readonly day: number;
  readonly stand: Stand;
  readonly goodStems: number;
  readonly isAllThereWas: boolean;
};

/**
 * The recorded cuts of some seasons, by day, bed, variety and booking. A cut is of the season of the planting it was cut from: of those of its variety in its bed the one of its own
 * year, else of the next, else of the year before. Where no such planting stands any more, the stems are in the cooler, of the year they were cut in.
 * @param plantings  forecasts of all plantings of the seasons
 */
export function cutLots(
  { cuts, plantings: ofFarm }: Pick<Snapshot, "cuts" | "plantings">,
  plantings: readonly PlantingForecast[],
  seasons: readonly number[],
): CutLot[] {
  if (cuts.length === 0) return [];
  const seasonsAt = groupsOf(ofFarm, placeKey);
  const forecastsAt = groupsOf(plantings, ({ planting }) => placeKey(planting));
  return inTheirOrder(cuts).flatMap((cut) => {
    const day = toDayNumber(cut.cutOn);
    const year = yearOf(cut.cutOn);
    const here = seasonsAt.get(placeKey(cut)) ?? [];
    const season = [year, year + 1, year - 1].find((one) => here.some(({ seasonYear }) => seasonYear === one));
    if (!seasons.includes(season ?? year)) return [];
    const forecasts = (forecastsAt.get(placeKey(cut)) ?? []).filter(({ planting }) => planting.seasonYear === season);
    const from = forecasts.find(({ cutDays }) => cutDays.includes(day)) ?? forecasts[0];
    const goodStems = cut.goodStems ?? usableOfCut(cut.stemsCut, from, day);
    const stand: Stand = from
      ? { kind: "planting", planting: from, isRecorded: true }
      : { kind: "cooler", stock: { id: 0, varietyId: cut.varietyId, cutOn: cut.cutOn, stemCount: goodStems } };
    return { cut, day, stand, goodStems, isAllThereWas: cut.stemsAsked === null || cut.stemsCut < cut.stemsAsked };
  });
}

/** By what tells one cut from another, so that the order in which they were recorded changes nothing. */
const inTheirOrder = (cuts: readonly Cut[]): Cut[] =>
  [...cuts].sort(
    (a, b) =>
      (a.cutOn < b.cutOn ? -1 : a.cutOn > b.cutOn ? 1 : 0) ||
      a.bedId - b.bedId ||
      a.varietyId - b.varietyId ||
      (a.bookingId ?? 0) - (b.bookingId ?? 0),
  );

/** The same for all cuts of a variety in a bed. */
export const placeKey = ({ bedId, varietyId }: { readonly bedId: number; readonly varietyId: number }): string =>
  `${bedId} ${varietyId}`;

/**
 * What is left of so many stems after grading and the crop's spare: rounded down, but not for a last digit of floating point. Of a list's stems to cut it is
 * the list's stems [P1].
 */
function usableOfCut(stemsCut: number, from: PlantingForecast | undefined, day: number): number {
  if (!from) return stemsCut;
  // Where none is fit there is nothing to ask for: what was cut all the same is taken as it is.
  const goodShare = goodShareOn(from, day) || 1;
  return Math.floor((stemsCut * goodShare) / (1 + from.crop.cutSpareShare.count) + 1e-9);
}
