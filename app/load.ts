import type { FarmDatabase } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { KeptOpen } from "#db/file/kept-open";
import { revision } from "#db/journal/journal";
import { loadSnapshot } from "#db/read/read";
import type { Problem } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";
import { type Band, seasonBand } from "#lib/plan/road/season-band";
import { keepDailyCopies } from "./daily-copies";

/** The farm's records cannot be read as they stand. The layout shows every bad row by name before any page asks for the farm. */
export class FarmUnreadable extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ place, message }) => `${place}: ${message}`).join("\n"));
    this.problems = problems;
  }
}

type Loaded = {
  revision: number;
  turn?: number;
  snapshot: Snapshot;
  plans: Map<number, Plan>;
  bands: Map<number, Band[][]>;
};
type Kept = { file?: KeptOpen; loaded?: Loaded };

/** Kept for the life of the server, across the bundles that Next makes: the open database, and what was read since the last write. */
const shared: typeof globalThis & { farmKept?: Kept } = globalThis;
shared.farmKept ??= {};
const kept = shared.farmKept;

/**
 * The open database of the farm: `FARM_FILE`, or `.data/farm.sqlite` where the app was started. Throws FarmFileRefused when the file cannot be
 * used as it stands; the layout says so in words.
 */
export const farmDatabase = (): FarmDatabase => farmFile().database();

/** The farm's file, open or not. */
export function farmFile(): KeptOpen {
  if (!kept.file) {
    kept.file = new KeptOpen(process.env.FARM_FILE ?? ".data/farm.sqlite");
    keepDailyCopies(kept.file);
  }
  return kept.file;
}

function loaded(): Loaded {
  const now = revision(farmDatabase());
  const turn = kept.file?.turn;
  if (kept.loaded?.revision === now && kept.loaded.turn === turn) return kept.loaded;
  const read = loadSnapshot(farmDatabase());
  if (!read.ok) throw new FarmUnreadable(read.problems);
  const loaded: Loaded = { revision: now, turn, snapshot: read.parsed, plans: new Map(), bands: new Map() };
  kept.loaded = loaded;
  return loaded;
}

/** The farm as it stands, read again only after a write. */
export const loadFarm = (): Snapshot => loaded().snapshot;

/** Why the farm's file cannot be used as it stands; null when it can. */
export function fileRefused(): FarmFileRefused | null {
  try {
    farmDatabase();
    return null;
  } catch (error) {
    if (error instanceof FarmFileRefused) return error;
    throw error;
  }
}

/** Every row that keeps the farm from being read; none when all is well. */
export function farmProblems(): readonly Problem[] {
  try {
    loaded();
    return [];
  } catch (error) {
    if (error instanceof FarmUnreadable) return error.problems;
    throw error;
  }
}

/** The plan of a season, made again only after a write. */
export function loadPlan(seasonYear: number): Plan {
  const { snapshot, plans } = loaded();
  const known = plans.get(seasonYear);
  if (known) return known;
  const made = plan(snapshot, seasonYear);
  plans.set(seasonYear, made);
  return made;
}

/** The low and high of each week of a season's plan, made again only after a write. */
export function loadBand(seasonYear: number): Band[][] {
  const seasonPlan = loadPlan(seasonYear);
  const { bands } = loaded();
  const known = bands.get(seasonYear);
  if (known) return known;
  const made = seasonBand(seasonPlan);
  bands.set(seasonYear, made);
  return made;
}
