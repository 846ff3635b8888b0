import type { Match } from "./match";
import type { Need } from "./needs";
import { brokenOf } from "./promises";

/** A need of a booking: what was promised of it, what the plan covers, and the promised stems that it does not. */
type PromisedNeed = { readonly need: Need; readonly coveredStems: number; readonly brokenStems: number };

/** How a booking's promise stands beside the plan; stems are sums over its needs. */
export type PromiseState = {
  readonly needs: readonly PromisedNeed[];
  readonly needStems: number;
  readonly promisedStems: number;
  readonly coveredStems: number;
  readonly brokenStems: number;
  /** Stems that the plan covers beyond the promise, need by need. */
  readonly moreStems: number;
};

/** How the promise of a booking stands beside what a match covers of it. */
export function promiseState({ needs, shortStems }: Match, bookingId: number): PromiseState {
  const own = (placesOf(needs).get(bookingId) ?? []).map((index) => ({
    need: needs[index],
    coveredStems: needs[index].stems - shortStems[index],
    brokenStems: brokenOf(needs[index], shortStems[index]),
  }));
  const sum = (of: (row: PromisedNeed) => number) => own.reduce((total, row) => total + of(row), 0);
  return {
    needs: own,
    needStems: sum(({ need }) => need.stems),
    promisedStems: sum(({ need }) => need.promisedStems),
    coveredStems: sum(({ coveredStems }) => coveredStems),
    brokenStems: sum(({ brokenStems }) => brokenStems),
    moreStems: sum(({ need, coveredStems }) => Math.max(0, coveredStems - need.promisedStems)),
  };
}

/** Where each booking's needs stand among a match's: a list of bookings asks for all of them. */
const known = new WeakMap<Match["needs"], Map<number, number[]>>();

function placesOf(needs: Match["needs"]): Map<number, number[]> {
  const found = known.get(needs);
  if (found) return found;
  const places = new Map<number, number[]>();
  needs.forEach(({ booking: { id } }, index) => {
    const own = places.get(id);
    if (own) own.push(index);
    else places.set(id, [index]);
  });
  known.set(needs, places);
  return places;
}
