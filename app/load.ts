import { inspect } from "node:util";
import { isBusy } from "#db/busy";
import type { FarmDatabase } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { KeptOpen } from "#db/file/kept-open";
import { namedFile } from "#db/file/named-file";
import { revision } from "#db/journal/journal";
import { loadSnapshot } from "#db/read/read";
import { RowMemory } from "#db/read/row-memory";
import { toDayNumber, yearOf } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { shownSeason } from "#lib/plan/learning/season/season-lesson";
import type { Match } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import type { ReachBand } from "#lib/plan/road/season-band";
import { today } from "./clock";
import { keepDailyCopies } from "./daily-copies";
import { KeptPlans } from "./kept-plans";
import { forHelper } from "./people/for-helper";
import { roleNow } from "./people/who";
import { answeredCount } from "./threads/asked-once";

/** The farm's records cannot be read as they stand. The layout shows every bad row by name before any page asks for the farm. */
export class FarmUnreadable extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ place, message }) => `${place}: ${message}`).join("; "));
    // It tells of the rows and not of the program: where it is logged, one line says it all.
    this.stack = `The farm’s records cannot be read: ${this.message}`;
    Object.defineProperty(this, inspect.custom, { value: () => this.stack });
    this.problems = problems;
  }
}

type Loaded = {
  readonly stamp: string;
  readonly turn: number;
  readonly revision: number;
  readonly snapshot: Snapshot;
};
type Kept = {
  file?: KeptOpen;
  loaded?: Loaded;
  isHeld: boolean;
  /** Of each farm as it was read, the one that its plans are made of. */
  readonly shown: WeakMap<Snapshot, { readonly year: number; readonly snapshot: Snapshot }>;
  readonly memory: RowMemory;
  readonly plans: KeptPlans;
  readonly plansForHelpers: KeptPlans;
};

/**
 * Kept for the life of the server, across the bundles that Next makes: the open database, what was read since the last write, and the plans of it.
 * `farmStamp` stands here for the server's own code, which is no part of a bundle.
 */
const shared: typeof globalThis & { farmKept?: Kept; farmStamp?: () => string } = globalThis;
shared.farmKept ??= {
  isHeld: false,
  shown: new WeakMap(),
  memory: new RowMemory(),
  plans: new KeptPlans(),
  plansForHelpers: new KeptPlans(),
};
shared.farmStamp ??= farmStamp;
const kept = shared.farmKept;

/**
 * The open database of the farm, from the file that `namedFile` says. Throws FarmFileRefused when the file cannot be
 * used as it stands; the layout says so in words.
 */
export const farmDatabase = (): FarmDatabase => farmFile().database();

/** The farm's file, open or not. */
export function farmFile(): KeptOpen {
  if (!kept.file) {
    kept.file = new KeptOpen(namedFile());
    keepDailyCopies(kept.file);
  }
  return kept.file;
}

/** The farm as it stands, read again only after a write, and of it only the rows that the write has touched; to whoever is neither its owner nor a designer as a helper may know it. */
export function loadFarm(): Snapshot {
  const { snapshot } = whileHeld(loaded, kept.loaded);
  return isForHelper() ? forHelper(snapshot) : snapshot;
}

const isForHelper = (): boolean => ["helper", "stranger"].includes(roleNow());
const plansKept = (): KeptPlans => (isForHelper() ? kept.plansForHelpers : kept.plans);

/** A new day is a new farm: what is kept with the old one may rest on its day. */
function loaded(): Loaded {
  const stamp = stampNow();
  if (kept.loaded?.stamp === stamp) return kept.loaded;
  const { turn } = farmFile();
  // Others write past this connection's journal.
  if (kept.loaded?.turn !== turn) kept.memory.doubt();
  const read = loadSnapshot(farmDatabase(), kept.memory);
  if (!read.ok) throw new FarmUnreadable(read.problems);
  kept.loaded = { stamp, turn, revision: revision(farmDatabase()), snapshot: asShown(read.parsed) };
  return kept.loaded;
}

/** The farm with what this year's season has shown, where it goes by that [O5]. */
export function asShown(snapshot: Snapshot): Snapshot {
  const year = yearOf(today());
  const found = kept.shown.get(snapshot);
  if (found?.year === year) return found.snapshot;
  const shown = snapshot.farm.followsSeason ? shownSeason(snapshot, year) : null;
  const made = { year, snapshot: shown ? { ...snapshot, shown } : snapshot };
  kept.shown.set(snapshot, made);
  return made.snapshot;
}

/** The number of the last change of the farm as it is shown. */
export const farmRevision = (): number => whileHeld(() => revision(farmDatabase()), kept.loaded?.revision);

/** Moves with every write, ours or another server's, and with every day. */
const stampNow = (): string => `${revision(farmDatabase())} ${farmFile().turn} ${today()}`;

/**
 * What all that is shown of the farm depends on, beside the address: moves with every write, every day, and when the beds to keep are known. While
 * another program holds the file it stays what it was.
 */
export function farmStamp(): string {
  const chosenCount = kept.loaded ? answeredCount(kept.loaded.snapshot, "cheapest") : 0;
  return `${whileHeld(stampNow, kept.loaded?.stamp)} ${kept.isHeld} ${chosenCount}`;
}

/**
 * What a read of the farm gives; while another program holds its file, what was known before. Without anything known before the error stands.
 */
export function whileHeld<T>(read: () => T, before: T | undefined): T {
  try {
    const found = read();
    kept.isHeld = false;
    return found;
  } catch (error) {
    if (!isBusy(error) || before === undefined) throw error;
    kept.isHeld = true;
    return before;
  }
}

/** Whether another program held the file when it was last read: what is shown is the farm as it was before. */
export const isFarmHeld = (): boolean => kept.isHeld;

/** Why the farm's file cannot be used as it stands; null when it can. */
export function fileRefused(): FarmFileRefused | null {
  try {
    whileHeld<unknown>(farmDatabase, kept.loaded);
    return null;
  } catch (error) {
    if (error instanceof FarmFileRefused) return error;
    throw error;
  }
}

/** Every row that keeps the farm from being read; none when all is well. */
export function farmProblems(): readonly Problem[] {
  try {
    loadFarm();
    return [];
  } catch (error) {
    if (error instanceof FarmUnreadable) return error.problems;
    throw error;
  }
}

/** The plan of a season as of today, made again only after a write or on another day. */
export const loadPlan = (seasonYear: number): Plan => plansKept().plan(loadFarm(), seasonYear, toDayNumber(today()));

/** The low and high of each week of a season's plan, made again only after a write. */
export const loadBand = (seasonYear: number): ReachBand[][] =>
  plansKept().band(loadFarm(), seasonYear, toDayNumber(today()));

/** The matches of a season's poor years, made again only after a write. */
export const loadPoorYears = (seasonYear: number): Match[] =>
  plansKept().poor(loadFarm(), seasonYear, toDayNumber(today()));
