import { cropAs } from "#lib/domain/crop-of-variety";
import type { BloomCurve } from "#lib/domain/records/curve";
import { ById, inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import { apportion, evenPart } from "#lib/maths/apportion";
import { weeksOfBloom } from "#lib/plan/road/bloom-end";
import { type Grown, wholeStems } from "#lib/plan/road/grown";
import { holdOf } from "#lib/plan/road/hold-window";
import { pickingDays } from "#lib/plan/road/picking-days";
import { thinnedBy } from "#lib/plan/road/plants-seen";
import { saleableWeeks } from "#lib/plan/road/saleable-share";
import { supplyOf, type VarietySupply } from "#lib/plan/road/supply";
import { usableOf } from "#lib/plan/road/usable";
import { firstDayOf } from "#lib/plan/road/usual-year";
import type { FirstCutChance } from "./first-cut-chance";
import type { SampledSeason } from "./sample-season";
import { sampledRows } from "./sampled-rows";

const LOST = -1;

/**
 * What may be cut in any season that chance can bring, and the stems of one laid over it; of several seasons where they meet. `possible` has a row for every variety
 * with a day on which it may be cut (or has stems in the cooler); nodes count those days, variety after variety.
 */
export class SimulationSupply {
  readonly possible: readonly VarietySupply[];
  readonly nodeCount: number;
  /** Of each season, its plantings. */
  readonly #tables: readonly (readonly (CutTable | null)[])[];
  readonly #coolerStems: Int32Array;

  /** @param chances  how chance moves the first cut of each planting, of each of the seasons */
  constructor(
    snapshot: Snapshot,
    seasonYears: readonly number[],
    chances: readonly ((row: Grown) => FirstCutChance)[],
  ) {
    const tables = seasonYears.map((year, place) => cutTables(snapshot, year, chances[place]));
    const inCooler = supplyOf(snapshot, [], ...seasonYears);
    this.possible = possibleSupply(snapshot, tables.flat(), inCooler);
    const nodeOf = nodeFinder(this.possible);
    this.nodeCount = this.possible.reduce((count, { days }) => count + days.length, 0);
    const withNodes = (table: CutTable | null) =>
      table && {
        ...table,
        node: table.cutOn.map((day) => (day === LOST ? LOST : nodeOf(table.row.variety.id, day))),
      };
    this.#tables = tables.map((ofSeason) => ofSeason.map(withNodes));
    this.#coolerStems = new Int32Array(this.nodeCount);
    for (const { variety, days, stems } of inCooler)
      days.forEach((day, index) => {
        this.#coolerStems[nodeOf(variety.id, day)] += stems[index];
      });
  }

  /** Writes the stems that each node has, cut and stored: day by day what `forecast` gives for the same plantings [R4]. Seasons in order of year. */
  stemsOf(sampled: readonly SampledSeason[], stems: Int32Array): void {
    stems.set(this.#coolerStems);
    sampled.forEach((season, place) => {
      this.#addCut(season, this.#tables[place], stems);
    });
  }

  #addCut({ frostDay, plantings }: SampledSeason, tables: readonly (CutTable | null)[], stems: Int32Array): void {
    for (let index = 0; index < plantings.length; index++) {
      const table = tables[index];
      if (!table) continue;
      const { row, curve, opensFrom, mostShiftDays, yearEnd, cutOn, node } = table;
      const { plants, shiftDays } = plantings[index];
      const bounds = { opensFrom: opensFrom + shiftDays, frostDay, yearEnd };
      const weeks = saleableWeeks(row, weeksOfBloom(curve, row.crop, bounds), bounds.opensFrom);
      const perPlant = weeks.reduce((sum, stems) => sum + stems, 0);
      const weekStems = apportion(wholeStems(plants * row.saleableShare * perPlant), weeks);
      const openPlaces = row.heatEnd === null ? cutOn.length : row.heatEnd - opensFrom + mostShiftDays;
      const lastDay = row.crop.tender ? Math.min(frostDay, row.seen.frostDay ?? frostDay) : Number.MAX_SAFE_INTEGER;
      const left = row.seen.losses.length === 0 ? null : thinnedBy(row.seen.losses);
      const spareShare = row.crop.cutSpareShare.count;
      let [cut, usable] = [0, 0];
      let place = mostShiftDays + shiftDays;
      for (let week = 0; week < weekStems.length; week++)
        for (let weekday = 0; weekday < 7; weekday++, place++)
          if (place < openPlaces) {
            const opened = evenPart(weekStems[week], weekday, 7);
            const opensOn = opensFrom - mostShiftDays + place;
            const stood = left ? left(opened, cutOn[place] === LOST ? opensOn : cutOn[place]) : opened;
            if (node[place] === LOST || cutOn[place] >= lastDay) continue;
            cut += stood;
            const before = usable;
            usable = usableOf(cut, spareShare);
            stems[node[place]] += usable - before;
          }
    }
  }
}

/**
 * Where the stems of a planting go by the day they open: place 0 is the earliest day on which its first cut may fall, `mostShiftDays` that of
 * `opensFrom`, the expected one. `cutOn` is the picking day, or LOST when none comes within the crop's field days; `node` its supply node.
 */
type CutTable = {
  readonly row: Grown;
  readonly curve: BloomCurve;
  readonly opensFrom: number;
  readonly mostShiftDays: number;
  readonly yearEnd: number;
  readonly cutOn: Int32Array;
  readonly node: Int32Array;
};

function cutTables(
  snapshot: Snapshot,
  seasonYear: number,
  chanceOf: (row: Grown) => FirstCutChance,
): (CutTable | null)[] {
  const nextPickingDay = pickingDays(snapshot.farm.pickingWeekdays);
  return sampledRows(snapshot, seasonYear).map(({ row }) => {
    const { bed, crop, curve, firstCut } = row;
    if (!curve || firstCut === null) return null;
    const mostShiftDays = chanceOf(row).mostDays;
    const earliest = firstCut - mostShiftDays;
    const yearEnd = firstDayOf(seasonYear + 1);
    const longest = weeksOfBloom(curve, crop, { opensFrom: earliest, frostDay: yearEnd, yearEnd });
    const cutOn = new Int32Array(2 * mostShiftDays + longest.length * 7);
    for (let place = 0; place < cutOn.length; place++) {
      const day = nextPickingDay(earliest + place, bed);
      cutOn[place] = day - (earliest + place) <= crop.fieldDays.count ? day : LOST;
    }
    return { row, curve, opensFrom: firstCut, mostShiftDays, yearEnd, cutOn, node: cutOn };
  });
}

/** Each variety with every day on which any of its plantings may be cut, or on which its stems in the cooler were. */
function possibleSupply(
  snapshot: Snapshot,
  tables: readonly (CutTable | null)[],
  inCooler: readonly VarietySupply[],
): VarietySupply[] {
  const daysOfVariety = new Map<number, Set<number>>();
  const add = (varietyId: number, days: Iterable<number>) => {
    const found = daysOfVariety.get(varietyId) ?? new Set<number>();
    daysOfVariety.set(varietyId, found);
    for (const day of days) if (day !== LOST) found.add(day);
  };
  for (const table of tables) if (table) add(table.row.variety.id, table.cutOn);
  for (const { variety, days } of inCooler) add(variety.id, days);
  const crops = new ById("crop", snapshot.crops);
  return inOrderOfId(snapshot.varieties).flatMap((variety) => {
    const days = [...(daysOfVariety.get(variety.id) ?? [])].sort((a, b) => a - b);
    if (days.length === 0) return [];
    const crop = cropAs(variety, crops.get(variety.cropId));
    const hold = holdOf(crop, snapshot.farm);
    return [{ variety, crop, hold, days, stems: days.map(() => 0), lots: days.map(() => []) }];
  });
}

/** The node of a variety on one of its possible days. */
function nodeFinder(possible: readonly VarietySupply[]): (varietyId: number, day: number) => number {
  const ofVariety = new Map<number, Map<number, number>>();
  let node = 0;
  for (const { variety, days } of possible) ofVariety.set(variety.id, new Map(days.map((day) => [day, node++])));
  return (varietyId, day) => {
    const found = ofVariety.get(varietyId)?.get(day);
    if (found === undefined) throw new RangeError(`day ${day} is not among the possible days of variety ${varietyId}`);
    return found;
  };
}
