import { addDays, type Day, dayInYear, daysBetween } from "#lib/domain/day";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { COMMON_PRACTICE, type Origin } from "#lib/domain/sourced";
import { replantedOn } from "#lib/plan/road/grown";
import type { WinterBed } from "./beds";
import {
  clumpCount,
  coveringHours,
  diggingHours,
  dividingHours,
  haulingHours,
  replantingHours,
  tubersReplanted,
} from "./costs";

/** What is done: to a kept bed from `voles` to `replant dead`, to the clumps of a dug one from `dig` to `replant`. */
type WinterWork =
  | ("voles" | "cut tops" | "haul leaves" | "leaves on" | "tarp on" | "look")
  | ("vent" | "uncover" | "frost cloth" | "count and thin" | "replant dead")
  | ("dig" | "divide" | "check store" | "replant");

/**
 * One piece of winter work in one bed, of one variety where it is dug. What it does not take is 0. It is due on a day and of no use after `until`; it
 * follows the piece before it in its bed by `gapDays` at least.
 */
export type WinterStep = {
  readonly due: Day;
  readonly until: Day;
  readonly gapDays: number;
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

/** The days that the winter's work hangs on. */
export type WinterDates = {
  readonly frostOn: Day;
  readonly ventOn: Day;
  readonly uncoverOn: Day;
  readonly lateFrostOn: Day;
  readonly shootsOn: Day;
};

/** Days from the killing frost. Two weeks to digging is published (UMN-TROTT); the others are common practice. */
const TOPS_AFTER_FROST_DAYS = 7;
const COVER_AFTER_FROST_DAYS = 14;
const DIG_AFTER_FROST_DAYS = 14;
const DIVIDE_AFTER_DIGGING_DAYS = 2;
const CHECK_EVERY_DAYS = 30;
/** Days before the median last frost of spring: with one of 20 April, as in zone 7a, vented from mid-March and uncovered on 26 March. Common practice. */
const UNCOVER_BEFORE_FROST_DAYS = 25;
const VENT_BEFORE_UNCOVERING_DAYS = 14;
/** So long after its day work of spring still makes sense. Our assumption. */
const SPRING_GRACE_DAYS = 42;
const MONTHLY: Origin = { mark: "published", source: "UMN-TROTT" };

/** The days of a winter: from the first frost of the autumn before the season to the late last frost of its spring. */
export function winterDates({ farm: { frost } }: Pick<Snapshot, "farm">, seasonYear: number): WinterDates {
  const lastFrostOn = dayInYear(frost.lastSpringP50, seasonYear);
  const uncoverOn = addDays(lastFrostOn, -UNCOVER_BEFORE_FROST_DAYS);
  return {
    frostOn: dayInYear(frost.firstAutumnP50, seasonYear - 1),
    ventOn: addDays(uncoverOn, -VENT_BEFORE_UNCOVERING_DAYS),
    uncoverOn,
    lateFrostOn: dayInYear(frost.lastSpringP10, seasonYear),
    shootsOn: lastFrostOn,
  };
}

/** The work in a kept bed, in order; what follows the covering waits for it. */
export function keptSteps({ farm }: Snapshot, winterBed: WinterBed, dates: WinterDates): WinterStep[] {
  const { bed, plantings, keep } = winterBed;
  const kept = plantings.map((row) => row.kept.planting);
  const step = stepOf(winterBed, "kept");
  const halfHours = coveringHours(bed, farm) / 2;
  const topsOn = addDays(dates.frostOn, TOPS_AFTER_FROST_DAYS);
  const coverOn = addDays(dates.frostOn, COVER_AFTER_FROST_DAYS);
  const autumn = { until: dates.ventOn };
  const spring = { until: addDays(dates.shootsOn, SPRING_GRACE_DAYS) };
  const tubers = tubersReplanted(kept, farm);
  const replantOn = kept.map(replantedOn).sort()[0] ?? dates.shootsOn;
  const haulHours = haulingHours(bed, farm);
  return [
    step(topsOn, "cut tops", { ...autumn, clumpCount: clumpCount(kept) }),
    ...(haulHours > 0 ? [step(topsOn, "haul leaves", { ...autumn, hours: haulHours })] : []),
    step(coverOn, "voles", autumn),
    step(coverOn, "leaves on", { ...autumn, leafCubicMetres: keep.leafCubicMetres, hours: halfHours }),
    step(coverOn, "tarp on", { ...autumn, tarpSquareMetres: keep.tarpSquareMetres }),
    ...checks(coverOn, dates.ventOn).map((day) => step(day, "look")),
    step(dates.ventOn, "vent", { until: dates.uncoverOn }),
    step(dates.uncoverOn, "uncover", { until: dates.lateFrostOn, hours: halfHours }),
    step(dates.uncoverOn, "frost cloth", { until: dates.lateFrostOn }),
    step(dates.shootsOn, "count and thin", spring),
    ...(tubers > 0
      ? [
          step(replantOn, "replant dead", {
            until: addDays(replantOn, SPRING_GRACE_DAYS),
            hours: replantingHours(tubers, farm),
          }),
        ]
      : []),
  ];
}

/** The work on the clumps of a dug bed: a chain for each planting. */
export const dugSteps = ({ farm }: Snapshot, winterBed: WinterBed, dates: WinterDates): WinterStep[][] =>
  winterBed.plantings.map(({ dug: { planting, variety } }) => {
    const step = stepOf(winterBed, "dug");
    const clumps = planting.plantCount;
    const digOn = addDays(dates.frostOn, DIG_AFTER_FROST_DAYS);
    const divideOn = addDays(digOn, DIVIDE_AFTER_DIGGING_DAYS);
    const replantOn = replantedOn(planting);
    const autumn = { variety, until: dates.ventOn };
    return [
      step(digOn, "dig", { ...autumn, origin: MONTHLY, clumpCount: clumps, hours: diggingHours(clumps, farm) }),
      step(divideOn, "divide", {
        ...autumn,
        gapDays: DIVIDE_AFTER_DIGGING_DAYS,
        hours: dividingHours(clumps, farm),
      }),
      ...checks(divideOn, replantOn).map((day) => step(day, "check store", { variety, origin: MONTHLY })),
      step(replantOn, "replant", {
        variety,
        until: addDays(replantOn, SPRING_GRACE_DAYS),
        hours: replantingHours(clumps, farm),
      }),
    ];
  });

/** Once a month between two days, neither included. */
function checks(start: Day, end: Day): Day[] {
  const count = Math.max(0, Math.ceil(daysBetween(start, end) / CHECK_EVERY_DAYS) - 1);
  return Array.from({ length: count }, (_, index) => addDays(start, (index + 1) * CHECK_EVERY_DAYS));
}

const stepOf =
  ({ bed }: WinterBed, fate: WinterStep["fate"]) =>
  (due: Day, work: WinterWork, takes: Partial<WinterStep> = {}): WinterStep => ({
    due,
    until: due,
    gapDays: 0,
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
