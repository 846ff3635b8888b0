import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";
import { type KeepBoard, keepBoard } from "#lib/plan/what-if/keep-board";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import { keptInWords } from "#lib/plan/words/keep-or-dig-words";
import { loadPlan } from "../load";

type Tried = { readonly snapshot: Snapshot; readonly plans: Map<string, Plan> };

/** Kept for the life of the server, across the bundles that Next makes: the last plans tried on the farm as it stands. */
const shared: typeof globalThis & { plansTried?: Tried } = globalThis;
const PLANS_KEPT = 12;

/** The plan of a season with these beds kept and every other candidate dug; made again only after a write, or when others came between. */
function triedPlan(snapshot: Snapshot, seasonYear: number, keptBedIds: readonly number[]): Plan {
  if (shared.plansTried?.snapshot !== snapshot) shared.plansTried = { snapshot, plans: new Map() };
  const { plans } = shared.plansTried;
  const key = `${seasonYear}: ${[...keptBedIds].sort((a, b) => a - b).join()}`;
  const made =
    plans.get(key) ?? plan(withKeptBeds(snapshot, seasonYear, keptBedIds), seasonYear, undefined, loadPlan(seasonYear));
  plans.delete(key);
  plans.set(key, made);
  for (const oldest of plans.keys()) {
    if (plans.size <= PLANS_KEPT) break;
    plans.delete(oldest);
  }
  return made;
}

/** A season under three winters. */
export type ThreeWinters = { readonly dug: Plan; readonly stands: Plan; readonly tried: Plan };

/** The season with every candidate bed dug, as the farm stands, and with these beds kept. */
export function threeWinters(seasonYear: number, keptBedIds: readonly number[]): ThreeWinters {
  const stands = loadPlan(seasonYear);
  const { snapshot } = stands;
  const isAsItStands = plantingsToChange(snapshot, seasonYear, keptBedIds).length === 0;
  const tried = isAsItStands ? stands : triedPlan(snapshot, seasonYear, keptBedIds);
  return { dug: triedPlan(snapshot, seasonYear, []), stands, tried };
}

/** `words`: what keeping the beds covers, in a sentence. */
export type BoardInWords = KeepBoard & { readonly words: string };

/** The three winters as the board shows them. */
export function boardOf(seasonYear: number, keptBedIds: readonly number[]): BoardInWords {
  const { dug, stands, tried } = threeWinters(seasonYear, keptBedIds);
  return { ...keepBoard(dug, stands, tried, keptBedIds), words: keptInWords(dug, tried, keptBedIds) };
}
