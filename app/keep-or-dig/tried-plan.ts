import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";
import { type KeepBoard, keepBoard } from "#lib/plan/what-if/keep-board";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import { keptInWords } from "#lib/plan/words/keep-or-dig-words";
import { today } from "../clock";
import { loadPlan } from "../load";

type Tried = {
  readonly snapshot: Snapshot;
  readonly plans: Map<string, Plan>;
  readonly boards: Map<string, BoardInWords>;
};

/** Kept for the life of the server, across the bundles that Next makes: what was tried last on the farm as it stands. */
const shared: typeof globalThis & { keepTried?: readonly Tried[] } = globalThis;

/** The farm, and the farm with the bookings still to come. */
const FARMS_KEPT = 2;

/** A plan of a large farm takes some ten megabytes, a board some ten kilobytes. */
const PLANS_KEPT = 3;
const BOARDS_KEPT = 64;

function tried(snapshot: Snapshot): Tried {
  const kept = shared.keepTried ?? [];
  const found = kept.find((one) => one.snapshot === snapshot);
  if (found) return found;
  const fresh: Tried = { snapshot, plans: new Map(), boards: new Map() };
  shared.keepTried = [fresh, ...kept].slice(0, FARMS_KEPT);
  return fresh;
}

/** What is kept under `key`, made when it is not; of all that is kept so the latest `most` stay. */
function latest<T>(kept: Map<string, T>, key: string, most: number, make: () => T): T {
  const made = kept.get(key) ?? make();
  kept.delete(key);
  kept.set(key, made);
  const [oldest] = kept.keys();
  if (kept.size > most) kept.delete(oldest);
  return made;
}

const keyOf = ({ seasonYear, today }: Plan, keptBedIds: readonly number[]): string =>
  `${seasonYear} ${today}: ${keptBedIds.join()}`;

/**
 * The plan of a season with these beds kept and every other candidate dug; made again only after a write, or when others came between.
 * @param near  a plan of the season that differs in few beds: the others are not forecast again
 */
const triedPlan = (snapshot: Snapshot, seasonYear: number, keptBedIds: readonly number[], near: Plan): Plan =>
  latest(tried(snapshot).plans, keyOf(near, keptBedIds), PLANS_KEPT, () =>
    plan(withKeptBeds(snapshot, seasonYear, keptBedIds), seasonYear, undefined, near, near.today),
  );

/** A season under three winters. */
export type ThreeWinters = { readonly dug: Plan; readonly stands: Plan; readonly tried: Plan };

/** The season with every candidate bed dug, as the farm stands, and with these beds kept. */
export const threeWinters = (seasonYear: number, keptBedIds: readonly number[]): ThreeWinters =>
  winters(loadPlan(seasonYear), keptBedIds);

function winters(stands: Plan, keptBedIds: readonly number[]): ThreeWinters {
  const { snapshot, seasonYear } = stands;
  const isAsItStands = plantingsToChange(snapshot, seasonYear, keptBedIds).length === 0;
  const dug = triedPlan(snapshot, seasonYear, [], stands);
  return { dug, stands, tried: isAsItStands ? stands : triedPlan(snapshot, seasonYear, keptBedIds, dug) };
}

/** `words`: what keeping the beds covers, in a sentence. */
export type BoardInWords = KeepBoard & { readonly words: string };

/** The plan that Keep or dig reckons with: the farm's own, or with the bookings still to come. */
function reckonedPlan(seasonYear: number): Plan {
  const own = loadPlan(seasonYear);
  const expected = withExpectedBookings(own.snapshot, seasonYear, today());
  if (expected === own.snapshot) return own;
  return latest(tried(expected).plans, `as it stands ${seasonYear} ${own.today}`, PLANS_KEPT, () =>
    plan(expected, seasonYear, undefined, own, own.today),
  );
}

/** The three winters as the board shows them. */
export function boardOf(seasonYear: number, keptBedIds: readonly number[]): BoardInWords {
  const reckoned = reckonedPlan(seasonYear);
  return latest(tried(reckoned.snapshot).boards, keyOf(reckoned, keptBedIds), BOARDS_KEPT, () => {
    const { dug, stands, tried } = winters(reckoned, keptBedIds);
    return { ...keepBoard(dug, stands, tried, keptBedIds), words: keptInWords(dug, tried, keptBedIds) };
  });
}
