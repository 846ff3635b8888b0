import type { Booking } from "#lib/domain/records/booking";
import type { PromisedStems } from "#lib/domain/records/promised-stems";
import type { Colour, StemAsk } from "#lib/domain/words";
import type { Match } from "./match";
import type { Need } from "./needs";

/** What a promise and a need are told apart by. */
type Asked = Pick<PromisedStems, "role" | "cropId" | "cropOnly"> & {
  readonly colours: readonly Colour[];
  readonly asks: readonly StemAsk[];
};

/**
 * The stems that a booking's promises bind to each of its needs, none more than the need asks for [M9]. A promise is for the needs that are alike
 * in role, crop, colours, in their order, and what they ask of the stem; what such needs leave of it, for those of the same role and crop that take all its colours. Nothing is bound
 * while the booking is not confirmed.
 */
export function promisedStems(
  { status, promises }: Pick<Booking, "status" | "promises">,
  needs: readonly (Asked & { readonly stems: number })[],
): number[] {
  const bound = needs.map(() => 0);
  if (status !== "confirmed" || promises.length === 0) return bound;
  const left = promises.map(({ stemCount }) => stemCount);
  for (const isFor of [isAlike, isWider])
    needs.forEach((need, index) => {
      promises.forEach((promise, place) => {
        if (!isFor(promise, need)) return;
        const stems = Math.min(left[place], need.stems - bound[index]);
        bound[index] += stems;
        left[place] -= stems;
      });
    });
  return bound;
}

const isOfCrop = (promise: Asked, need: Asked): boolean =>
  promise.role === need.role && promise.cropId === need.cropId && promise.cropOnly === need.cropOnly;

const isAlike = (promise: Asked, need: Asked): boolean =>
  isOfCrop(promise, need) && promise.colours.join() === need.colours.join() && promise.asks.join() === need.asks.join();

const isWider = (promise: Asked, need: Asked): boolean =>
  isOfCrop(promise, need) &&
  (need.colours.length === 0 ||
    (promise.colours.length > 0 && promise.colours.every((colour) => need.colours.includes(colour))));

/** Whole hundreds of dollars, so that the loss stays the same while bookings come and go. */
const LOSS_STEP_CENTS = 10_000;

/**
 * What a promised stem that goes short costs beside its buy-in price, in cents: what the farm says; else ours, the first whole hundred dollars above any price
 * and any chain of worse fits, so that nothing can be worth a promise [M9]. A chain passes each need once, and no fit is worse than the worst.
 * @param dearestShortCents  what a stem short costs the dearest need
 * @param worstFitCents      what no fit can exceed
 */
export const promiseLossCents = (
  statedCents: number | null,
  dearestShortCents: number,
  needCount: number,
  worstFitCents: number,
): number =>
  statedCents ?? LOSS_STEP_CENTS * (1 + Math.floor((dearestShortCents + needCount * worstFitCents) / LOSS_STEP_CENTS));

/** Of the stems that a need is short of, those that were promised: a promised stem is the last to go short. */
export const brokenOf = ({ stems, promisedStems }: Pick<Need, "stems" | "promisedStems">, shortStems: number): number =>
  Math.max(0, shortStems - (stems - promisedStems));

/** Promised stems that a match leaves short, of all bookings. */
export const brokenStems = ({ needs, shortStems }: Pick<Match, "needs" | "shortStems">): number =>
  needs.reduce((sum, need, index) => sum + brokenOf(need, shortStems[index]), 0);

/** What a match covers of a booking's needs, as promises of it, need by need. */
export const coveredPromises = (match: Match, bookingId: number): PromisedStems[] =>
  promisesIn(match, bookingId, (need, shortStems) => need.stems - shortStems);

/** The same, and never less of a need than was promised before: to lower a promise is a choice of its own. */
export const keptPromises = (match: Match, bookingId: number): PromisedStems[] =>
  promisesIn(match, bookingId, (need, shortStems) => Math.max(need.promisedStems, need.stems - shortStems));

function promisesIn(
  { needs, shortStems }: Match,
  bookingId: number,
  stemsOf: (need: Need, shortStems: number) => number,
): PromisedStems[] {
  return needs.flatMap((need, index) => {
    const stemCount = need.booking.id === bookingId ? stemsOf(need, shortStems[index]) : 0;
    const { role, cropId, cropOnly, asks, colours } = need;
    return stemCount > 0 ? [{ role, cropId, cropOnly, asks: [...asks], colours: [...colours], stemCount }] : [];
  });
}
