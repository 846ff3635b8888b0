import { toDayNumber, yearOf } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Crop } from "#lib/domain/records/crop";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { placeKey } from "#lib/plan/road/cut-lots";
import { type Grown, grown } from "#lib/plan/road/grown";
import { pickingDays } from "#lib/plan/road/picking-days";
import { goodShareOn } from "#lib/plan/road/saleable-share";
import { keptFor } from "../first-cuts-on-record";

/**
 * The first cut of a planting, as it was recorded [HT3]: the day, as a day number, of its first bloom, or of its first cut, which is a picking day and comes after
 * the stems have opened.
 */
export type FirstCutCame = {
  readonly crop: Crop;
  readonly plantingId: number;
  readonly day: number;
  readonly is: "first bloom" | "first cut";
};

/**
 * A picking day of a variety in a bed, as it was recorded [HT4]: good stems cut, and how many of those that stood there the record knows of, Infinity where all
 * that was ready was cut. `day` is a day number.
 */
export type PickingCame = {
  readonly crop: Crop;
  readonly place: string;
  readonly day: number;
  readonly goodStems: number;
  readonly knownUpToStems: number;
};

/** What was recorded of a season that a forecast can be held against. */
export type WhatCame = {
  readonly rows: readonly Grown[];
  readonly firstCuts: readonly FirstCutCame[];
  readonly pickings: readonly PickingCame[];
};

/** What came of a season, planting by planting and picking day by picking day, as far as it was recorded. */
export function whatCame(snapshot: Snapshot, seasonYear: number): WhatCame {
  const rows = grown(snapshot, seasonYear);
  const rowsAt = groupsOf(rows, ({ planting }) => placeKey(planting));
  const looks = snapshot.budLooks.filter(({ lookedOn }) => yearOf(lookedOn) === seasonYear);
  const seen: SeenAt = {
    bloomedOn: lookedAt(looks.filter(({ sign }) => sign === "first bloom")),
    shutOn: lookedAt(looks.filter(({ sign }) => sign !== "first bloom")),
    cutsOn: cutsByDay(snapshot.cuts.filter(({ cutOn }) => yearOf(cutOn) === seasonYear)),
  };
  return {
    rows,
    firstCuts: [...rowsAt].flatMap(([place, here]) =>
      here.length === 1 ? firstCutOf(snapshot, here[0], place, seen) : [],
    ),
    pickings: [...rowsAt].flatMap(([place, [row]]) => pickingsOf(snapshot, row, place, seen.cutsOn.get(place) ?? [])),
  };
}

type CutsOfDay = readonly [day: number, cuts: readonly Cut[]];

/** What was recorded in a place, by bed and variety; days ascend. */
type SeenAt = {
  readonly bloomedOn: ReadonlyMap<string, readonly number[]>;
  readonly shutOn: ReadonlyMap<string, readonly number[]>;
  readonly cutsOn: ReadonlyMap<string, readonly CutsOfDay[]>;
};

const lookedAt = (looks: readonly BudLook[]): Map<string, number[]> =>
  ofPlaces(looks, (here) => here.map(({ lookedOn }) => toDayNumber(lookedOn)).sort((a, b) => a - b));

const cutsByDay = (cuts: readonly Cut[]): Map<string, CutsOfDay[]> =>
  ofPlaces(cuts, (here) => [...groupsOf(here, ({ cutOn }) => toDayNumber(cutOn))].sort(([a], [b]) => a - b));

type OfPlace = Parameters<typeof placeKey>[0];

const ofPlaces = <Row extends OfPlace, Here>(rows: readonly Row[], of: (here: Row[]) => Here): Map<string, Here> =>
  new Map([...groupsOf(rows, placeKey)].map(([place, here]) => [place, of(here)]));

const stemsCutOn = ([, cuts]: CutsOfDay): number => cuts.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
const wasLeft = ([, cuts]: CutsOfDay): boolean => cuts.some(({ restStands }) => restStands);

/** Buds that were not open, or a bed where none were ready, so many days before a first cut show that nothing was cut earlier. Our choice: a week, as beds are walked. */
const SHOWN_DAYS = 7;

/**
 * When a planting came into bloom. A cut alone says only that it bloomed by then, since lists ask for what is wanted: it counts where nothing stood open in the
 * week before.
 */
function firstCutOf(snapshot: Snapshot, row: Grown, place: string, seen: SeenAt): FirstCutCame[] {
  const { crop, planting } = row;
  const came = (day: number, is: FirstCutCame["is"]) => [{ crop, plantingId: planting.id, day, is }];
  const cuts = seen.cutsOn.get(place) ?? [];
  const cutOn = cuts.find((ofDay) => stemsCutOn(ofDay) > 0)?.[0] ?? Number.POSITIVE_INFINITY;
  const bloom = seen.bloomedOn.get(place)?.[0];
  if (bloom !== undefined) return came(Math.min(bloom, cutOn), "first bloom");
  const kept = keptFirstCut(snapshot, row);
  if (kept !== null) return came(kept, "first bloom");
  const shut = [
    ...(seen.shutOn.get(place) ?? []),
    ...cuts.filter((ofDay) => stemsCutOn(ofDay) === 0 && !wasLeft(ofDay)).map(([day]) => day),
  ];
  const isShown = shut.some((day) => day < cutOn && day >= cutOn - SHOWN_DAYS);
  return isShown ? came(cutOn, "first cut") : [];
}

/** The first cut that the grower keeps of the season for what the planting blooms by [H12]; null where there is none. */
function keptFirstCut(snapshot: Snapshot, { planting, curve, variety }: Grown): number | null {
  if (curve === null || planting.sown) return null;
  const isPlanted = curve.anchor.kind === "days-after-planting";
  const days = keptFor(snapshot, curve)
    .filter(({ seasonYear }) => seasonYear === planting.seasonYear)
    .filter(({ varietyId }) => varietyId === null || varietyId === variety.id)
    .filter(({ plantedOn }) => !isPlanted || plantedOn === planting.plantedOn)
    .map(({ firstCut }) => toDayNumber(firstCut));
  return days.length === 0 ? null : Math.min(...days);
}

/**
 * The recorded picking days of a place. Left out are days on which some was left to stand, days that are none of the farm's picking days, and the next record
 * after either, which found what the one before had left.
 */
function pickingsOf({ farm }: Snapshot, row: Grown, place: string, days: readonly CutsOfDay[]): PickingCame[] {
  const next = pickingDays(farm.pickingWeekdays);
  const isWhole = (ofDay: CutsOfDay): boolean =>
    !wasLeft(ofDay) && next(ofDay[0], { noEntryFrom: null, noEntryUntil: null }) === ofDay[0];
  return days
    .filter((ofDay, at) => isWhole(ofDay) && (at === 0 || isWhole(days[at - 1])))
    .map(([day, cuts]) => ({ crop: row.crop, place, day, ...stemsOf(cuts, goodShareOn(row, day)) }));
}

/** Good stems, in whole stems, and as far as the record knows of what stood there: what the list asked for, or of a list that was filled what was cut. */
function stemsOf(cuts: readonly Cut[], goodShare: number): Pick<PickingCame, "goodStems" | "knownUpToStems"> {
  const sumOf = (of: (cut: Cut) => number) => cuts.reduce((sum, cut) => sum + of(cut), 0);
  const stemsCut = sumOf((cut) => cut.stemsCut);
  const askedStems = sumOf(({ stemsAsked }) => stemsAsked ?? Number.POSITIVE_INFINITY);
  const goodStems = inWholeStems(sumOf((cut) => cut.goodStems ?? cut.stemsCut * goodShare));
  if (stemsCut >= askedStems) return { goodStems, knownUpToStems: goodStems };
  if (askedStems === Number.POSITIVE_INFINITY) return { goodStems, knownUpToStems: askedStems };
  return { goodStems, knownUpToStems: Math.max(goodStems, inWholeStems(askedStems * goodShare)) };
}

/** Rounded down, but not for a last digit of floating point. */
const inWholeStems = (stems: number): number => Math.floor(stems + 1e-9);
