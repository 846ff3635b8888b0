import { dayInYear, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import { ById, inOrderOfId, type Snapshot } from "#lib/domain/snapshot";

/** A planting with all that its forecast rests on. `curve` is null when the crop has none for this treatment. */
export type Grown = {
  readonly planting: Planting;
  readonly bed: Bed;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly curve: BloomCurve | null;
};

/** The plantings of a season, each with its bed, variety, crop and bloom curve, in order of id. */
export function grown(snapshot: Snapshot, seasonYear: number): Grown[] {
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const curveFor = curveFinder(snapshot.curves);
  return inOrderOfId(snapshot.plantings)
    .filter((planting) => planting.seasonYear === seasonYear)
    .map((planting) => {
      const variety = varieties.get(planting.varietyId);
      const curve = curveFor(variety, planting.treatment);
      return { planting, bed: beds.get(planting.bedId), variety, crop: crops.get(variety.cropId), curve };
    });
}

/** Finds the bloom curve of a variety under a treatment: its own, which overrules, or its crop's; null when there is neither. */
export function curveFinder(curves: readonly BloomCurve[]) {
  const found = new Map<string, BloomCurve>();
  for (const curve of curves) found.set(`${curve.cropId}/${curve.varietyId ?? ""}/${curve.treatment}`, curve);
  return (variety: Variety, treatment: string): BloomCurve | null =>
    found.get(`${variety.cropId}/${variety.id}/${treatment}`) ?? found.get(`${variety.cropId}//${treatment}`) ?? null;
}

/**
 * The curve that a planting blooms by; null when it has none, or when by it the first cut would fall neither in the season's year nor in one
 * beside it, as after a slip of the pen in the planting year [F7]. Plan, choice of beds and sampled seasons all ask this.
 */
export function curveInUse({ planting, curve }: Pick<Grown, "planting" | "curve">): BloomCurve | null {
  if (!curve) return null;
  return Math.abs(yearOf(toDay(firstCutDay(curve, planting))) - planting.seasonYear) <= 1 ? curve : null;
}

/** Plants expected to stand at the first cut: set out or left in, less those lost, less those the winter took in the ground [F2]. */
export function alivePlants(
  { plantCount, aliveShare, treatment, winterSurvivalShare }: Omit<Planting, "id">,
  farm: Farm,
): number {
  const survival = treatment === "kept-in-ground" ? (winterSurvivalShare ?? farm.winter.winterSurvivalShare) : 1;
  return plantCount * aliveShare * survival;
}

/** The day number of the first cut [F1]. */
export function firstCutDay(curve: BloomCurve, planting: Planting): number {
  return curve.anchor.kind === "day-of-year"
    ? toDayNumber(dayInYear(curve.anchor.firstCut, planting.seasonYear))
    : toDayNumber(planting.plantedOn) + curve.anchor.days;
}

/**
 * A season's stems as whole stems: rounded once, a half up [F3]. What is short of a half by a million-millionth part of the stems is what floating point
 * lost of it, and is a half: 15 plants, 4 in 5 alive, 19 in 20 saleable, at 2.5 stems are 28.5 and come to 28.499999999999996.
 */
export const wholeStems = (stems: number): number => Math.floor(stems + 0.5 + stems * 1e-12);
