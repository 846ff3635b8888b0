import { addDays, type Day, dayInYear, daysBetween } from "#lib/domain/day";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { COMMON_PRACTICE, type Origin } from "#lib/domain/sourced";
import { replantedOn } from "#lib/plan/road/grown";
import { type WinterBed, winterBeds } from "./beds";
import { clumpCount, coveringHours, diggingHours, dividingHours, replantingHours } from "./costs";

/** What is done: to a kept bed from `cut tops` to `uncover`, to the clumps of a dug one from `dig` to `replant`. */
type WinterWork =
  | ("cut tops" | "leaves on" | "tarp on" | "look" | "uncover")
  | ("dig" | "divide" | "check store" | "replant");

/** One piece of winter work in one bed, of one variety where it is dug. What it does not take is 0. */
export type WinterTask = {
  readonly day: Day;
  readonly bedId: number;
  readonly bedName: string;
  readonly fate: "kept" | "dug";
  readonly work: WinterWork;
  readonly variety: Pick<Variety, "name" | "colour"> | null;
  readonly hours: number;
  readonly leafCubicMetres: number;
  readonly tarpSquareMetres: number;
  readonly clumpCount: number;
  readonly origin: Origin;
};

/** What all the work takes. */
export type WinterTotals = {
  readonly hours: number;
  readonly leafCubicMetres: number;
  readonly tarpSquareMetres: number;
  readonly keptClumpCount: number;
  readonly dugClumpCount: number;
};

/** The winter's work from frost to spring, in order of day and then of bed, for each bed and in all [K9]. */
export type WinterWorksheet = {
  readonly tasks: readonly WinterTask[];
  readonly beds: readonly (WinterTotals & { readonly bedId: number; readonly bedName: string })[];
  readonly totals: WinterTotals;
};

/** Days from the killing frost. Two weeks to digging is published (UMN-TROTT); the others are common practice. */
const TOPS_AFTER_FROST_DAYS = 7;
const COVER_AFTER_FROST_DAYS = 14;
const DIG_AFTER_FROST_DAYS = 14;
const DIVIDE_AFTER_DIGGING_DAYS = 2;
const CHECK_EVERY_DAYS = 30;
const DIG_ORIGIN: Origin = { mark: "published", source: "UMN-TROTT" };

/**
 * What to do in each candidate bed. Dates hang on the farm's median frosts: the first of the autumn before the season, and the last of
 * its spring, when covers come off.
 * @throws RangeError if a bed kept is no candidate
 */
export function winterWorksheet(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
): WinterWorksheet {
  const beds = winterBeds(snapshot, seasonYear);
  const stray = keptBedIds.find((id) => !beds.some(({ bed }) => bed.id === id));
  if (stray !== undefined) throw new RangeError(`keptBedIds must be candidate beds, got ${stray}`);
  const { frost } = snapshot.farm;
  const frostOn = dayInYear(frost.firstAutumnP50, seasonYear - 1);
  const uncoverOn = dayInYear(frost.lastSpringP50, seasonYear);
  const perBed = beds.map((bed) => ({
    bed,
    tasks: keptBedIds.includes(bed.bed.id)
      ? keptTasks(snapshot, bed, frostOn, uncoverOn)
      : dugTasks(snapshot, bed, frostOn),
  }));
  const tasks = perBed.flatMap((row) => row.tasks);
  return {
    tasks: [...tasks].sort((a, b) => daysBetween(b.day, a.day)),
    beds: perBed.map(({ bed: { bed }, tasks: own }) => ({ bedId: bed.id, bedName: bed.name, ...totals(own) })),
    totals: totals(tasks),
  };
}

function keptTasks({ farm }: Snapshot, winterBed: WinterBed, frostOn: Day, uncoverOn: Day): WinterTask[] {
  const { bed, plantings, keep } = winterBed;
  const task = taskOf(winterBed, "kept");
  const clumps = clumpCount(plantings.map(({ kept }) => kept.planting));
  const halfHours = coveringHours(bed, farm) / 2;
  const topsOn = addDays(frostOn, TOPS_AFTER_FROST_DAYS);
  const coverOn = addDays(frostOn, COVER_AFTER_FROST_DAYS);
  return [
    task(topsOn, "cut tops", { clumpCount: clumps }),
    task(coverOn, "leaves on", {
      leafCubicMetres: keep.leafCubicMetres,
      hours: halfHours,
    }),
    task(coverOn, "tarp on", {
      tarpSquareMetres: keep.tarpSquareMetres,
    }),
    ...checks(coverOn, uncoverOn).map((day) => task(day, "look")),
    task(uncoverOn, "uncover", {
      hours: halfHours,
    }),
  ];
}

function dugTasks({ farm }: Snapshot, winterBed: WinterBed, frostOn: Day): WinterTask[] {
  const task = taskOf(winterBed, "dug");
  const digOn = addDays(frostOn, DIG_AFTER_FROST_DAYS);
  const divideOn = addDays(digOn, DIVIDE_AFTER_DIGGING_DAYS);
  return winterBed.plantings.flatMap(({ dug: { planting, variety } }) => {
    const clumps = planting.plantCount;
    const replantOn = replantedOn(planting);
    const ofVariety = { variety, origin: DIG_ORIGIN };
    return [
      task(digOn, "dig", { ...ofVariety, clumpCount: clumps, hours: diggingHours(clumps, farm) }),
      task(divideOn, "divide", { ...ofVariety, hours: dividingHours(clumps, farm) }),
      ...checks(divideOn, replantOn).map((day) => task(day, "check store", ofVariety)),
      task(replantOn, "replant", { variety, hours: replantingHours(clumps, farm) }),
    ];
  });
}

/** Once a month between two days, neither included. */
function checks(start: Day, end: Day): Day[] {
  const count = Math.max(0, Math.ceil(daysBetween(start, end) / CHECK_EVERY_DAYS) - 1);
  return Array.from({ length: count }, (_, index) => addDays(start, (index + 1) * CHECK_EVERY_DAYS));
}

const taskOf =
  ({ bed }: WinterBed, fate: WinterTask["fate"]) =>
  (day: Day, work: WinterWork, takes: Partial<WinterTask> = {}): WinterTask => ({
    day,
    bedId: bed.id,
    bedName: bed.name,
    fate,
    work,
    variety: null,
    hours: 0,
    leafCubicMetres: 0,
    tarpSquareMetres: 0,
    clumpCount: 0,
    origin: COMMON_PRACTICE,
    ...takes,
  });

function totals(tasks: readonly WinterTask[]): WinterTotals {
  const sum = (of: (task: WinterTask) => number) => tasks.reduce((total, task) => total + of(task), 0);
  return {
    hours: sum(({ hours }) => hours),
    leafCubicMetres: sum(({ leafCubicMetres }) => leafCubicMetres),
    tarpSquareMetres: sum(({ tarpSquareMetres }) => tarpSquareMetres),
    keptClumpCount: sum(({ fate, clumpCount: clumps }) => (fate === "kept" ? clumps : 0)),
    dugClumpCount: sum(({ fate, clumpCount: clumps }) => (fate === "dug" ? clumps : 0)),
  };
}
