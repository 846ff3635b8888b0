import type { Bed } from "#lib/domain/records/bed";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import { ById, inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import { heatEndDay } from "./bloom-end";
import { firstCutDay, type SeasonWarmth, warmthOf } from "./first-cut";

/**
 * A planting with all that its forecast rests on. `curve` is null when the crop has none for this treatment; `firstCut` is the day number of its
 * first cut [F1], null when it gives nothing: without a curve, or where by it the planting never blooms in its season [F7].
 */
export type Grown = {
  readonly planting: Planting;
  readonly bed: Bed;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly curve: BloomCurve | null;
  readonly firstCut: number | null;
  /** The day number from which heat lets nothing open any more; null where it does not end the bloom. On or before what would be the first cut, there is none. */
  readonly heatEnd: number | null;
};

/** The plantings of a season, each with its bed, variety, crop and bloom curve, in order of id. */
export function grown(snapshot: Snapshot, seasonYear: number): Grown[] {
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const curveFor = curveFinder(snapshot.curves);
  const warmth = warmthOf(snapshot.farm, snapshot.weather);
  return inOrderOfId(snapshot.plantings)
    .filter((planting) => planting.seasonYear === seasonYear)
    .map((planting) => {
      const variety = varieties.get(planting.varietyId);
      const bed = beds.get(planting.bedId);
      return grownBy({ planting, bed, variety, crop: crops.get(variety.cropId) }, curveFor, warmth);
    });
}

/** A planting as it grows by the curve for its treatment, in the warmth of the season. */
export function grownBy(
  { planting, bed, variety, crop }: Pick<Grown, "planting" | "bed" | "variety" | "crop">,
  curveFor: CurveFinder,
  warmth: SeasonWarmth,
): Grown {
  const curve = curveFor(variety, planting.treatment);
  const cut = curve && firstCutDay(curve, planting, warmth);
  const heatEnd = curve && cut !== null ? heatEndDay(curve, cut, warmth) : null;
  return { planting, bed, variety, crop, curve, firstCut: heatEnd === cut ? null : cut, heatEnd };
}

type CurveFinder = (variety: Variety, treatment: string) => BloomCurve | null;

/** Finds the bloom curve of a variety under a treatment: its own, which overrules, or its crop's; null when there is neither. */
export function curveFinder(curves: readonly BloomCurve[]): CurveFinder {
  const found = new Map<string, BloomCurve>();
  for (const curve of curves) found.set(`${curve.cropId}/${curve.varietyId ?? ""}/${curve.treatment}`, curve);
  return (variety, treatment) =>
    found.get(`${variety.cropId}/${variety.id}/${treatment}`) ?? found.get(`${variety.cropId}//${treatment}`) ?? null;
}

/** Plants expected to stand at the first cut: set out or left in, less those lost, less those the winter took in the ground [F2]. */
export function alivePlants(
  { plantCount, aliveShare, treatment, winterSurvivalShare }: Omit<Planting, "id">,
  farm: Farm,
): number {
  const survival = treatment === "kept-in-ground" ? (winterSurvivalShare ?? farm.winter.winterSurvivalShare) : 1;
  return plantCount * aliveShare * survival;
}

/**
 * A season's stems as whole stems: rounded once, a half up [F3]. What is short of a half by a million-millionth part of the stems is what floating point
 * lost of it, and is a half: 15 plants, 4 in 5 alive, 19 in 20 saleable, at 2.5 stems are 28.5 and come to 28.499999999999996.
 */
export const wholeStems = (stems: number): number => Math.floor(stems + 0.5 + stems * 1e-12);
