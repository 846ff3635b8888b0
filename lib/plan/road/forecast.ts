import type { Bed, Planting } from "#lib/domain/bed";
import type { BloomCurve } from "#lib/domain/bloom-curve";
import type { Crop, Variety } from "#lib/domain/crop";
import { dayInYear, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Farm } from "#lib/domain/farm";
import type { Problem } from "#lib/domain/problem";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { apportion, evenPart } from "#lib/maths/apportion";
import { type NextPickingDay, pickingDays } from "./picking-days";

/** A planting with all that its forecast rests on. `curve` is null when the crop has none for this treatment. */
export type Grown = {
  readonly planting: Planting;
  readonly bed: Bed;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly curve: BloomCurve | null;
};

/**
 * What a planting gives in a season, in saleable whole stems. Day numbers count from 1970-01-01.
 * Every stem that opens is cut, lost waiting in the field, or taken by frost:
 * `openedStems = Σ cutStems + lostInFieldStems + lostToFrostStems` [F4].
 */
export type PlantingForecast = Grown & {
  readonly alivePlantCount: number;
  /** The first day of the curve; 0 when there is no curve. */
  readonly firstCut: number;
  /** Stems that open on each day from `firstCut`. */
  readonly openingStems: Int32Array;
  readonly openedStems: number;
  /** Picking days with something to cut, ascending, and the stems cut on each. */
  readonly cutDays: readonly number[];
  readonly cutStems: readonly number[];
  readonly lostInFieldStems: number;
  readonly lostToFrostStems: number;
};

export type Forecast = { readonly plantings: readonly PlantingForecast[]; readonly problems: readonly Problem[] };

/**
 * How a year turns out, in spreads of each bloom curve: `lateness` 1 is a first cut one standard deviation late, `heaviness` -1 a yield one
 * coefficient of variation light. A plan reckons with an ordinary year.
 */
export type YearKind = { readonly lateness: number; readonly heaviness: number };
export const ORDINARY_YEAR: YearKind = { lateness: 0, heaviness: 0 };

/**
 * What every planting of a season gives, day by day.
 * @param frostDay  the day the first frost takes tender crops; as a day number
 */
export function forecast(
  snapshot: Snapshot,
  seasonYear: number,
  frostDay = frostDayOf(snapshot.farm, seasonYear),
  year = ORDINARY_YEAR,
): Forecast {
  const problems: Problem[] = [];
  const nextPickingDay = pickingDays(snapshot.farm.pickingWeekdays);
  const plantings = grown(snapshot, seasonYear).map((row) => {
    if (!row.curve) problems.push(noCurve(row));
    else if (!bloomsNear(row, row.curve)) {
      problems.push(offSeason(row, row.curve));
      return nothingFrom(row, alivePlants(row.planting, snapshot.farm));
    }
    return forecastPlanting(row, snapshot.farm, frostDay, nextPickingDay, year);
  });
  return { plantings, problems };
}

/** The first frost that a plan reckons with: the median date of the farm, as a day number. */
export const frostDayOf = (farm: Farm, seasonYear: number): number =>
  toDayNumber(dayInYear(farm.frost.firstAutumnP50, seasonYear));

/** The plantings of a season, each with its bed, variety, crop and bloom curve, in the order of the snapshot. */
export function grown(snapshot: Snapshot, seasonYear: number): Grown[] {
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const curveFor = curveFinder(snapshot.curves);
  return snapshot.plantings
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

const noCurve = ({ planting, bed, crop, variety }: Grown): Problem => ({
  place: `bed ${bed.name}, ${crop.name} ${variety.name}`,
  message: `no bloom curve for "${planting.treatment}": it is forecast at 0 stems. Add a curve for it, or change the treatment.`,
});

/** Whether a planting's first cut lies in its season's year or one beside it: a slip in the planting year puts it far away. */
const bloomsNear = ({ planting }: Grown, curve: BloomCurve): boolean =>
  Math.abs(yearOf(toDay(firstCutDay(curve, planting))) - planting.seasonYear) <= 1;

const offSeason = ({ planting, bed, crop, variety }: Grown, curve: BloomCurve): Problem => ({
  place: `bed ${bed.name}, ${crop.name} ${variety.name}`,
  message: `planted on ${planting.plantedOn} it would be cut from ${toDay(firstCutDay(curve, planting))}, not in ${planting.seasonYear}: it is forecast at 0 stems. Mend the planting day or the season.`,
});

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
 * What one planting gives. The season's saleable stems are rounded once, shared over the weeks by the curve and over the days of a week evenly, so
 * that days sum to weeks and weeks to the season exactly [F3]. Evenly within a week is our assumption.
 * A bloom is cut on the next picking day within the crop's field days, else it is lost [F4]; frost takes what
 * would open or still stands uncut on the frost day, in tender crops [F5]; a sprayed bed is not cut before the label allows [F6].
 */
export function forecastPlanting(
  row: Grown,
  farm: Farm,
  frostDay: number,
  nextPickingDay: NextPickingDay = pickingDays(farm.pickingWeekdays),
  year = ORDINARY_YEAR,
): PlantingForecast {
  const { planting, bed, variety, crop, curve } = row;
  const fieldDays = crop.fieldDays.count;
  const alivePlantCount = alivePlants(planting, farm);
  if (!curve) return nothingFrom(row, alivePlantCount);
  const firstCut = firstCutDay(curve, planting) + Math.round(year.lateness * curve.firstCutSpreadDays);
  const heaviness = Math.max(0, 1 + year.heaviness * curve.yieldSpread);
  const openingStems = opening(curve, alivePlantCount * (1 - planting.gradeOutShare) * heaviness);
  const lastDay = crop.tender ? frostDay : Number.POSITIVE_INFINITY;
  const cutDays: number[] = [];
  const cutStems: number[] = [];
  let openedStems = 0;
  let lostInFieldStems = 0;
  let lostToFrostStems = 0;
  for (let index = 0; index < openingStems.length; index++) {
    const stems = openingStems[index];
    if (stems === 0) continue;
    const opensOn = firstCut + index;
    openedStems += stems;
    const cutOn = nextPickingDay(opensOn, bed);
    if (opensOn >= lastDay || (cutOn >= lastDay && lastDay - opensOn <= fieldDays)) lostToFrostStems += stems;
    else if (cutOn - opensOn > fieldDays) lostInFieldStems += stems;
    else if (cutDays.at(-1) === cutOn) cutStems[cutStems.length - 1] += stems;
    else {
      cutDays.push(cutOn);
      cutStems.push(stems);
    }
  }
  // Field by field: copying the row with a spread costs more than all the rest.
  return {
    planting,
    bed,
    variety,
    crop,
    curve,
    alivePlantCount,
    firstCut,
    openingStems,
    openedStems,
    cutDays,
    cutStems,
    lostInFieldStems,
    lostToFrostStems,
  };
}

const nothingFrom = (row: Grown, alivePlantCount: number): PlantingForecast => ({
  ...row,
  alivePlantCount,
  firstCut: 0,
  openingStems: new Int32Array(0),
  openedStems: 0,
  cutDays: [],
  cutStems: [],
  lostInFieldStems: 0,
  lostToFrostStems: 0,
});

/** Stems that open on each day of the curve, for so many plants; whole, and exact in sum [F3]. */
function opening({ stemsPerPlantByWeek }: BloomCurve, plantCount: number): Int32Array {
  const perPlant = stemsPerPlantByWeek.reduce((sum, stems) => sum + stems, 0);
  const weekStems = apportion(Math.round(plantCount * perPlant), stemsPerPlantByWeek);
  const days = new Int32Array(weekStems.length * 7);
  for (let index = 0; index < days.length; index++)
    days[index] = evenPart(weekStems[Math.floor(index / 7)], index % 7, 7);
  return days;
}
