import { type Day, yearOf } from "#lib/domain/day";
import type { Bed, BedFlag } from "#lib/domain/records/bed";
import type { Planting, PlantingFlag } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Treatment } from "#lib/domain/words";
import { warmthOf } from "#lib/plan/road/first-cut";
import { curveFinder, type Grown, grown, grownBy, replantedOn } from "#lib/plan/road/grown";
import { digCost, keepCost, type WinterCost } from "./costs";

/** The two futures of a bed of tender perennials: each a treatment with its own bloom curve. */
export const DUG: Treatment = "spring-planted";
export const KEPT: Treatment = "kept-in-ground";

/**
 * A bed that may stay in the ground: its wintering plantings go together, with a bloom curve for either future. `forbidden` are
 * the flags that overrule the sum; while there is one, the bed is dug [K2].
 */
export type WinterBed = {
  readonly bed: Bed;
  readonly plantings: readonly WinterPlanting[];
  readonly dig: WinterCost;
  readonly keep: WinterCost;
  readonly forbidden: readonly (BedFlag | PlantingFlag)[];
};

/** A wintering planting as it would grow in each future. */
type WinterPlanting = { readonly dug: Grown; readonly kept: Grown };

/** A sickness of one planting is the bed's, whether that planting winters or not: gall stays in the soil (common practice). */
const SICK: PlantingFlag = "virus or gall";

/** The beds of the farms asked about last: a tick of a bed asks for those of one farm again and again. Goes with the snapshot. */
const KNOWN = new WeakMap<Snapshot, Map<number, readonly WinterBed[]>>();

/**
 * Every bed of a season with a planting that could winter in the ground, in the order of the snapshot. Which treatment a planting has
 * now does not matter here: both futures are open. A wintering crop without a curve for both is no candidate and stays as it is [K1].
 */
export function winterBeds(snapshot: Snapshot, seasonYear: number): readonly WinterBed[] {
  const known = KNOWN.get(snapshot) ?? new Map<number, readonly WinterBed[]>();
  KNOWN.set(snapshot, known);
  const beds = known.get(seasonYear) ?? bedsOf(snapshot, seasonYear);
  known.set(seasonYear, beds);
  return beds;
}

function bedsOf(snapshot: Snapshot, seasonYear: number): WinterBed[] {
  const curveFor = curveFinder(snapshot.curves);
  const warmth = warmthOf(snapshot.farm, snapshot.weather);
  const byBed = new Map<number, WinterPlanting[]>();
  const sickBedIds = new Set<number>();
  const stands = standingTest(snapshot, seasonYear);
  for (const row of grown(snapshot, seasonYear)) {
    if (row.planting.flags.includes(SICK)) sickBedIds.add(row.bed.id);
    if (!row.crop.overwinters || !stands(row.planting)) continue;
    const { planting } = row;
    const future = (treatment: Treatment, plantedOn: Day) =>
      grownBy({ ...row, planting: grownAs(planting, treatment, plantedOn) }, curveFor, warmth);
    const dug = future(DUG, replantedOn(planting));
    const kept = future(KEPT, planting.plantedOn);
    if (!dug.curve || !kept.curve) continue;
    const rows = byBed.get(row.bed.id);
    if (rows) rows.push({ dug, kept });
    else byBed.set(row.bed.id, [{ dug, kept }]);
  }
  return snapshot.beds.flatMap((bed) => {
    const plantings = byBed.get(bed.id);
    if (!plantings) return [];
    const rows = plantings.map(({ kept }) => kept.planting);
    const sick = sickBedIds.has(bed.id) ? [SICK] : [];
    const flags = new Set([...bed.flags, ...sick, ...rows.flatMap((planting) => planting.flags)]);
    return [
      {
        bed,
        plantings,
        dig: digCost(rows, snapshot.farm),
        keep: keepCost(bed, rows, snapshot.farm),
        forbidden: [...flags],
      },
    ];
  });
}

/**
 * Whether a planting's clumps stand in its bed in the winter before its season [K1]: kept in the ground, or planted in an earlier year, or there in the season
 * before. Of a farm that has nothing of that season they are taken to stand, unless it is said to be the first season of their life.
 */
function standingTest({ plantings }: Snapshot, seasonYear: number): (planting: Planting) => boolean {
  const placeOf = ({ bedId, varietyId }: Planting) => `${bedId} ${varietyId}`;
  const before = new Set(plantings.filter((row) => row.seasonYear === seasonYear - 1).map(placeOf));
  return (planting) =>
    planting.treatment === KEPT ||
    yearOf(planting.plantedOn) < seasonYear ||
    (before.size > 0 ? before.has(placeOf(planting)) : planting.ageSeasons !== 1);
}

/** Beds that will first be planted with what could winter in the ground in the spring of the season: there is nothing in them to keep yet. */
export function newlyPlantedBeds(snapshot: Snapshot, seasonYear: number): Bed[] {
  const stands = standingTest(snapshot, seasonYear);
  const ids = new Set(
    grown(snapshot, seasonYear).flatMap(({ planting, crop, bed }) =>
      crop.overwinters && !stands(planting) ? [bed.id] : [],
    ),
  );
  return snapshot.beds.filter(({ id }) => ids.has(id));
}

/** The planting in one of its futures: itself when it is in that one, so that nothing that rests on it is worked out anew [L3]. */
const grownAs = (planting: Planting, treatment: Treatment, plantedOn: Day): Planting =>
  planting.treatment === treatment && planting.plantedOn === plantedOn
    ? planting
    : { ...planting, treatment, plantedOn };

/** The farm with these beds kept in the ground and every other candidate dug: what a plan of the choice is made from. */
export function withKeptBeds(snapshot: Snapshot, seasonYear: number, keptBedIds: readonly number[]): Snapshot {
  const kept = new Set(keptBedIds);
  const chosen = new Map<number, Planting>();
  for (const { bed, plantings } of winterBeds(snapshot, seasonYear))
    for (const futures of plantings) {
      const { planting } = kept.has(bed.id) ? futures.kept : futures.dug;
      chosen.set(planting.id, planting);
    }
  return { ...snapshot, plantings: snapshot.plantings.map((planting) => chosen.get(planting.id) ?? planting) };
}
