import { cropAs } from "#lib/domain/crop-of-variety";
import { type Day, sameDayIn, yearOf } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import { learnedFor, NOTHING_LEARNED } from "#lib/domain/records/learned";
import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import { ById, inOrderOfId, type ShownSeason, type Snapshot } from "#lib/domain/snapshot";
import { heatEndDay } from "./bloom-end";
import { firstCutDay, type SeasonWarmth, warmthOf } from "./first-cut";
import { NOTHING_SEEN, type PlantsSeen, plantsSeen } from "./plants-seen";
import { saleableShare } from "./saleable-share";

/**
 * A planting with all that its forecast rests on. `crop` is as its variety is. `curve` is null when the crop has none for this treatment; `firstCut` is the day number of its
 * first cut [F1], moved as the grower says of this season [F15], null when it gives nothing: without a curve, or where by it the planting never blooms in its season [F7].
 */
export type Grown = {
  readonly planting: Planting;
  readonly bed: Bed;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly curve: BloomCurve | null;
  readonly firstCut: number | null;
  /** Days that the first cut comes later than the curve says, by what it has learned [F16] and what is said or seen of the season. */
  readonly movedDays: number;
  /** The day number from which heat lets nothing open any more; null where it does not end the bloom. On or before what would be the first cut, there is none. */
  readonly heatEnd: number | null;
  /** Of a grown plant's stems by the curve, those that a plant gives to sell; above 1 where the season is said to be so heavy. */
  readonly saleableShare: number;
  /** The tubers that take the places of clumps dead in the ground, as they grow from spring on; null where nothing is kept in the ground or there is no curve for them. */
  readonly replanted: Grown | null;
  /** What was seen of its plants [PL1]. */
  readonly seen: PlantsSeen;
  /** The same without what the season has shown of it [O5] and without what was seen of its plants; null where there is neither. */
  readonly bare: Grown | null;
};

/** The plantings of a season, each with its bed, variety, crop and bloom curve, in order of id. */
export function grown(snapshot: Snapshot, seasonYear: number): Grown[] {
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const curveFor = curveFinder(snapshot.curves);
  const warmth = warmthOf(snapshot.farm, snapshot.weather);
  const seenOf = plantsSeen(snapshot, seasonYear);
  return inOrderOfId(snapshot.plantings)
    .filter((planting) => planting.seasonYear === seasonYear)
    .map((planting) => {
      const variety = varieties.get(planting.varietyId);
      const bed = beds.get(planting.bedId);
      const crop = cropAs(variety, crops.get(variety.cropId));
      return grownBy(
        { planting, bed, variety, crop, seen: seenOf(planting, crop.tender) },
        curveFor,
        warmth,
        snapshot.shown,
      );
    });
}

/** The plantings of a crop in a season; of every crop where none is told. */
export function plantingsOfCrop(
  { plantings, varieties }: Pick<Snapshot, "plantings" | "varieties">,
  seasonYear: number,
  cropId: number | null,
): Planting[] {
  const ofCrop = new Set(varieties.filter((row) => cropId === null || row.cropId === cropId).map(({ id }) => id));
  return plantings.filter((row) => row.seasonYear === seasonYear && ofCrop.has(row.varietyId));
}

/** A planting as it grows by the curve for its treatment, in the warmth of the season, as late and as heavy as the grower says [F15], or else as the season has shown [O5]. */
export function grownBy(
  of: Pick<Grown, "planting" | "bed" | "variety" | "crop"> & Partial<Pick<Grown, "seen">>,
  curveFor: CurveFinder,
  warmth: SeasonWarmth,
  shown?: ShownSeason,
): Grown {
  const { planting, bed, variety, crop, seen = NOTHING_SEEN } = of;
  const inSeason = shown?.get(planting.id);
  const daysLate = planting.daysLate ?? inSeason?.daysLate ?? 0;
  const yieldFactor = planting.yieldFactor ?? inSeason?.yieldFactor ?? 1;
  const isMoved = daysLate !== (planting.daysLate ?? 0) || yieldFactor !== (planting.yieldFactor ?? 1);
  const replanted =
    planting.treatment === "kept-in-ground"
      ? grownBy({ planting: asReplanted(planting), bed, variety, crop, seen }, curveFor, warmth, shown)
      : null;
  const curve = curveFor(variety, planting);
  const byCurve = curve && firstCutDay(curve, planting, warmth);
  const learned = curve ? learnedFor(curve, planting.seasonYear) : NOTHING_LEARNED;
  const movedDays = learned.laterDays + daysLate;
  const cut = byCurve === null ? null : byCurve + movedDays;
  const heatEnd = curve && cut !== null ? heatEndDay(curve, cut, warmth) : null;
  const share = curve ? saleableShare(curve, planting, warmth) * learned.yieldFactor * yieldFactor : 0;
  return {
    planting,
    bed,
    variety,
    crop,
    curve,
    firstCut: heatEnd === cut ? null : cut,
    movedDays,
    heatEnd,
    saleableShare: share,
    replanted: replanted?.curve ? replanted : null,
    seen,
    bare: isMoved || seen !== NOTHING_SEEN ? grownBy({ planting, bed, variety, crop }, curveFor, warmth) : null,
  };
}

/** What is set in spring in the places of a kept planting's dead clumps: planted anew, on the day on which the planting would go back in. */
const asReplanted = (planting: Planting): Planting => ({
  ...planting,
  treatment: "spring-planted",
  plantedOn: replantedOn(planting),
  ageSeasons: planting.ageSeasons === null ? null : 1,
});

/** The rows, each followed by what takes the places of its dead clumps. */
export const withReplanted = (rows: readonly Grown[]): Grown[] =>
  rows.flatMap((row) => (row.replanted ? [row, row.replanted] : [row]));

/** The day a lifted planting goes back in: the day it was planted on, in the season's year if it has stood since an earlier one. */
export const replantedOn = ({ plantedOn, seasonYear }: Pick<Planting, "plantedOn" | "seasonYear">): Day =>
  yearOf(plantedOn) === seasonYear ? plantedOn : sameDayIn(plantedOn, seasonYear);

type CurveFinder = (variety: Variety, planting: Pick<Planting, "id" | "treatment">) => BloomCurve | null;

/**
 * Finds the bloom curve of a planting under its treatment: its own, else its variety's, else its crop's; null when there is none of them [F7]. The curve of a
 * planting that is of another variety now is not its own any more.
 */
export function curveFinder(curves: readonly BloomCurve[]): CurveFinder {
  const found = new Map<string, BloomCurve>();
  for (const curve of curves)
    found.set(curveKey(curve.cropId, curve.varietyId, curve.plantingId, curve.treatment), curve);
  return ({ id: varietyId, cropId }, { id: plantingId, treatment }) =>
    found.get(curveKey(cropId, varietyId, plantingId, treatment)) ??
    found.get(curveKey(cropId, varietyId, null, treatment)) ??
    found.get(curveKey(cropId, null, null, treatment)) ??
    null;
}

const curveKey = (cropId: number, varietyId: number | null, plantingId: number | null, treatment: string): string =>
  `${cropId}/${varietyId}/${plantingId}/${treatment}`;

/**
 * Plants expected to stand at the first cut: set out or left in, less those lost, less those the winter took in the ground [F2].
 * @param counted  the share of kept clumps that came through, where it was counted, in place of what was expected [PL1]
 */
export const alivePlants = (planting: Omit<Planting, "id">, farm: Farm, counted: number | null = null): number =>
  planting.plantCount * planting.aliveShare * survivalOf(planting, farm, counted);

/** Plants expected to stand in the places of clumps that the winter took: the share of them that is replanted [F2]. `counted` as of {@link alivePlants}. */
export const replantedPlants = (planting: Omit<Planting, "id">, farm: Farm, counted: number | null = null): number =>
  planting.plantCount * planting.aliveShare * (1 - survivalOf(planting, farm, counted)) * farm.winter.replantDeadShare;

const survivalOf = (
  { treatment, winterSurvivalShare }: Omit<Planting, "id">,
  { winter }: Farm,
  counted: number | null,
): number => (treatment === "kept-in-ground" ? (counted ?? winterSurvivalShare ?? winter.winterSurvivalShare) : 1);

/**
 * A season's stems as whole stems: rounded once, a half up [F3]. What is short of a half by a million-millionth part of the stems is what floating point
 * lost of it, and is a half: 15 plants, 4 in 5 alive, 19 in 20 saleable, at 2.5 stems are 28.5 and come to 28.499999999999996.
 */
export const wholeStems = (stems: number): number => Math.floor(stems + 0.5 + stems * 1e-12);
