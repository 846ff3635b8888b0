import { dayInYear, inShort, toDay, yearOf } from "#lib/domain/day";
import { measureIn } from "#lib/domain/measures";
import type { Problem } from "#lib/domain/problem";
import type { Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { warmthOf } from "#lib/plan/road/first-cut";
import { frostDayOf } from "#lib/plan/road/forecast";
import { curveFinder, type Grown, grownBy } from "#lib/plan/road/grown";
import { barrenInWords } from "./barren-words";
import { countOf, inWholes } from "./numbers";

/** More plants than this stand on no square metre: tulips, set closest of all, come to about 150. From memory. */
const MOST_PLANTS_PER_SQUARE_METRE = 200;

/**
 * What a planting can say and can hardly mean, each doubt at its field and in words: more plants than the bed can hold, a frost-tender crop set out before
 * the last frost, a first cut that never comes, or only when the frost is there. None where nothing is doubtful.
 */
export function plantingDoubts(
  snapshot: Snapshot,
  planted: Pick<Grown, "planting" | "bed" | "variety" | "crop">,
): Problem[] {
  const { farm, weather, curves } = snapshot;
  const row = grownBy(planted, curveFinder(curves), warmthOf(farm, weather));
  return [...crowded(row, farm), ...setOutInFrost(row, farm), ...cutsTooLate(row, farm)];
}

function crowded({ planting: { plantCount }, bed }: Grown, { units }: Farm): Problem[] {
  const squareMetres = areaOf(bed);
  if (plantCount <= MOST_PLANTS_PER_SQUARE_METRE * squareMetres) return [];
  const { word, shownPerStored } = measureIn(units, "area");
  const area = `${inWholes(squareMetres * shownPerStored)} ${word}`;
  const most = inWholes(Math.floor(MOST_PLANTS_PER_SQUARE_METRE * squareMetres));
  const message = `${countOf(plantCount, "plant")} on the ${area} of bed ${bed.name}: not even tulips stand so close, ${most} would be the most`;
  return [{ place: "plantCount", message }];
}

const areaOf = ({ lengthMetres, widthMetres }: Bed): number => lengthMetres * widthMetres;

function setOutInFrost({ planting, crop }: Grown, { frost }: Farm): Problem[] {
  const { plantedOn, seasonYear, treatment } = planting;
  if (!crop.tender || (treatment !== "field" && treatment !== "spring-planted")) return [];
  const lastFrost = dayInYear(frost.lastSpringP50, seasonYear);
  if (yearOf(plantedOn) !== seasonYear || plantedOn >= lastFrost) return [];
  const message = `${crop.name} is tender, and frost usually comes until ${inShort(lastFrost)}, one year in ten after ${inShort(dayInYear(frost.lastSpringP10, seasonYear))}: set it out later, or cover it`;
  return [{ place: "plantedOn", message }];
}

function cutsTooLate(row: Grown, farm: Farm): Problem[] {
  const { curve, firstCut, planting, crop } = row;
  // Without a curve nothing can be said of its cut; the plan asks for one.
  if (!curve) return [];
  if (firstCut === null) return [{ place: "plantedOn", message: barrenInWords(row).message }];
  const frostDay = frostDayOf(farm, planting.seasonYear);
  if (!crop.tender || firstCut < frostDay) return [];
  const message = `its first cut would come about ${inShort(toDay(firstCut))}, and the first frost is reckoned with on ${inShort(toDay(frostDay))}: set it out before, or choose another crop`;
  return [{ place: "plantedOn", message }];
}
