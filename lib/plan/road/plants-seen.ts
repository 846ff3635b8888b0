import { toDayNumber, yearOf } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Loss } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { placeKey } from "./cut-lots";

/** A share of plants that stands from a day on, which is a day number. */
export type ShareFrom = { readonly fromDay: number; readonly share: number };

/** How alike the clumps of a winter fare: 0 each for itself, towards 1 all or none (the intraclass correlation). Our own guess: no published figure was found. */
export const WINTER_LIKENESS = 0.2;

/** What was seen of the plants of a planting in its season [PL1]. Lists ascend by day. */
export type PlantsSeen = {
  /** Of clumps kept in the ground, what came through the winter, as it was counted: the last count that was made stands. */
  readonly cameThrough: readonly ShareFrom[];
  /** What losses left of what stood before each. */
  readonly losses: readonly ShareFrom[];
  /** The killing frost of its season, as a day number; null where none was written down or the crop is hardy. */
  readonly frostDay: number | null;
};

export const NOTHING_SEEN: PlantsSeen = { cameThrough: [], losses: [], frostDay: null };

/** The killing frost that was written down for a season, as a day number; null while none was. */
export function killingFrostOf({ killingFrosts }: Pick<Farm, "killingFrosts">, seasonYear: number): number | null {
  const came = killingFrosts.find((day) => yearOf(day) === seasonYear);
  return came === undefined ? null : toDayNumber(came);
}

/** Finds what was seen of a planting. A loss is of the season of the planting that it befell: of those of its variety in its bed the one of its own year, else of the next, else of the year before. */
export function plantsSeen({ farm, plantings, losses }: Snapshot, seasonYear: number) {
  const frostDay = killingFrostOf(farm, seasonYear);
  const ofTender = frostDay === null ? NOTHING_SEEN : { ...NOTHING_SEEN, frostDay };
  const byPlace = lossesOfSeason(plantings, losses, seasonYear);
  return (planting: { readonly bedId: number; readonly varietyId: number }, isTender: boolean): PlantsSeen => {
    const here = byPlace.get(placeKey(planting));
    if (!here) return isTender ? ofTender : NOTHING_SEEN;
    return {
      cameThrough: sharesOf(here, (cause) => cause === "winter in the ground"),
      losses: sharesOf(here, (cause) => cause !== "winter in the ground"),
      frostDay: isTender ? frostDay : null,
    };
  };
}

/** Of a season, losses by bed and variety, ascending by day and then by id. What the store took stands in no bed. */
function lossesOfSeason(plantings: Snapshot["plantings"], losses: readonly Loss[], seasonYear: number) {
  const byPlace = new Map<string, Loss[]>();
  if (losses.length === 0) return byPlace;
  const seasonsAt = new Map<string, Set<number>>();
  for (const planting of plantings) {
    const key = placeKey(planting);
    seasonsAt.set(key, (seasonsAt.get(key) ?? new Set()).add(planting.seasonYear));
  }
  const inOrder = losses
    .filter(({ cause }) => cause !== "winter in store")
    .sort((a, b) => (a.seenOn < b.seenOn ? -1 : a.seenOn > b.seenOn ? 1 : a.id - b.id));
  for (const loss of inOrder) {
    const key = placeKey(loss);
    const year = yearOf(loss.seenOn);
    const season = [year, year + 1, year - 1].find((one) => seasonsAt.get(key)?.has(one));
    if (season === seasonYear) byPlace.set(key, [...(byPlace.get(key) ?? []), loss]);
  }
  return byPlace;
}

const sharesOf = (losses: readonly Loss[], isOf: (cause: Loss["cause"]) => boolean): ShareFrom[] =>
  losses
    .filter(({ cause }) => isOf(cause))
    .map(({ seenOn, plantsBefore, plantsLeft }) => ({
      fromDay: toDayNumber(seenOn),
      share: plantsLeft / plantsBefore,
    }));

/** Of clumps kept in the ground the share that came through as counted last; null where nobody counted. */
export const countedShare = ({ cameThrough }: PlantsSeen): number | null => cameThrough.at(-1)?.share ?? null;

/** The days on which something was seen, each once, ascending. */
export const daysSeen = ({ cameThrough, losses, frostDay }: PlantsSeen): number[] =>
  [...new Set([...cameThrough, ...losses].map(({ fromDay }) => fromDay).concat(frostDay ?? []))].sort((a, b) => a - b);

/** What was known at the end of a day of what was seen until then. */
export const seenBy = ({ cameThrough, losses, frostDay }: PlantsSeen, day: number): PlantsSeen => ({
  cameThrough: cameThrough.filter(({ fromDay }) => fromDay <= day),
  losses: losses.filter(({ fromDay }) => fromDay <= day),
  frostDay: frostDay !== null && frostDay <= day ? frostDay : null,
});

/** Whether two say the same. */
export const isSameSeen = (a: PlantsSeen, b: PlantsSeen): boolean =>
  a === b ||
  (a.frostDay === b.frostDay && isSameShares(a.cameThrough, b.cameThrough) && isSameShares(a.losses, b.losses));

const isSameShares = (a: readonly ShareFrom[], b: readonly ShareFrom[]): boolean =>
  a.length === b.length && a.every(({ fromDay, share }, at) => fromDay === b[at].fromDay && share === b[at].share);

/** What losses leave of the plants on a day, as a share of those that stood before any. */
export const shareLeft = (losses: readonly ShareFrom[], day: number): number =>
  losses.reduce((left, { fromDay, share }) => (fromDay <= day ? left * share : left), 1);

/** What floating point may lose of a whole number of stems. */
const ALMOST = 1e-9;

/**
 * Of stems that come one day after another, those that losses leave, in whole stems: by any day as many as the exact shares of all stems until then, rounded down. So they
 * sum, and days before the first loss keep what they have.
 */
export function thinnedBy(losses: readonly ShareFrom[]): (stems: number, day: number) => number {
  let exact = 0;
  let given = 0;
  return (stems, day) => {
    exact += stems * shareLeft(losses, day);
    const before = given;
    given = Math.max(before, Math.floor(exact + ALMOST));
    return given - before;
  };
}
