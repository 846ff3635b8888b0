import { toDayNumber } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import { apportion } from "#lib/maths/apportion";
import type { Match, Serving } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { seasonOfBooking, seasonOfStems } from "#lib/plan/road/seasons";
import type { Stand } from "#lib/plan/road/supply";
import { isHeldEvent } from "./event-review";
import { boughtIn } from "./event-stems";

/**
 * What became of the stems of a crop that a season has cut so far, in whole stems: used at events, thrown away there, sold to standing orders,
 * or left with nobody. The four sum to what was cut [V4]. `orderCents` is what the orders pay for theirs.
 */
export type CropReview = {
  readonly crop: Crop;
  readonly cutStems: number;
  readonly usedStems: number;
  readonly thrownAwayStems: number;
  readonly orderStems: number;
  readonly leftStems: number;
  readonly orderCents: number;
};

/** A season's crops, those cut most first, with their sums. `bookingCents` is what clients pay whose event is over, where a price was given. */
export type SeasonReview = {
  readonly crops: readonly CropReview[];
  readonly total: Omit<CropReview, "crop">;
  readonly bookingCents: number;
};

/** What became of the stems that were cut up to the plan's day, crop by crop [V4]. A plan that knows no day has cut none. */
export function seasonReview(plan: Plan): SeasonReview {
  // Standing orders have what the bookings that are cut for leave: beside the match with enquiries in it a stem would go out twice [N5].
  const { match, orders } = plan.work;
  const wasCut = cutBehind(plan);
  const sums = new Map<Crop, Sum>();
  const sumOf = (crop: Crop): Sum => {
    const sum = sums.get(crop) ?? { cutStems: 0, eventStems: 0, thrownAwayStems: 0, orderStems: 0, orderCents: 0 };
    sums.set(crop, sum);
    return sum;
  };
  for (const { crop, variety, days, lots, bookingId } of match.supplies)
    lots.forEach((ofDay, index) => {
      for (const { stand, stems } of ofDay) {
        if (!wasCut(stand, days[index], variety.id)) continue;
        sumOf(crop).cutStems += stems;
        if (bookingId !== undefined && bookingId > 0) sumOf(crop).eventStems += stems;
      }
    });
  const isCut = ({ supplies }: Match, { stand, cutDay, supplyIndex }: Serving) =>
    wasCut(stand, cutDay, supplies[supplyIndex].variety.id);
  for (const serving of match.servings) {
    const { crop, bookingId } = match.supplies[serving.supplyIndex];
    if (bookingId === undefined && isCut(match, serving)) sumOf(crop).eventStems += serving.stems;
  }
  const stemCents = new Map(orders?.deliveries.map(({ booking, order }) => [booking.id, order.stemCents]));
  for (const serving of orders?.match.servings ?? []) {
    if (!orders || !isCut(orders.match, serving)) continue;
    const sum = sumOf(orders.match.supplies[serving.supplyIndex].crop);
    sum.orderStems += serving.stems;
    sum.orderCents += serving.stems * (stemCents.get(orders.match.needs[serving.needIndex].booking.id) ?? 0);
  }
  for (const [crop, stems] of thrownAway(plan, (serving) => isCut(match, serving)))
    sumOf(crop).thrownAwayStems += stems;
  const crops = [...sums].map(([crop, sum]) => cropReview(crop, sum)).filter(({ cutStems }) => cutStems > 0);
  crops.sort((a, b) => b.cutStems - a.cutStems || a.crop.id - b.crop.id);
  return { crops, total: totalOf(crops), bookingCents: bookingCents(plan) };
}

type Sum = {
  cutStems: number;
  eventStems: number;
  thrownAwayStems: number;
  orderStems: number;
  orderCents: number;
};

const cropReview = (crop: Crop, { eventStems, ...sum }: Sum): CropReview => ({
  crop,
  ...sum,
  usedStems: eventStems - sum.thrownAwayStems,
  leftStems: sum.cutStems - eventStems - sum.orderStems,
});

const totalOf = (crops: readonly CropReview[]): SeasonReview["total"] => {
  const sum = (of: keyof SeasonReview["total"]) => crops.reduce((all, crop) => all + crop[of], 0);
  return {
    cutStems: sum("cutStems"),
    usedStems: sum("usedStems"),
    thrownAwayStems: sum("thrownAwayStems"),
    orderStems: sum("orderStems"),
    leftStems: sum("leftStems"),
    orderCents: sum("orderCents"),
  };
};

/** Whether stems were cut by the plan's day, of the season itself and by the farm. */
function cutBehind({
  snapshot,
  seasonYear,
  today,
}: Plan): (stand: Stand, cutDay: number, varietyId: number) => boolean {
  const isBought = boughtIn(snapshot, seasonYear);
  return (stand, cutDay, varietyId) => {
    if (today === null || seasonOfStems(stand) !== seasonYear || isBought(stand, varietyId)) return false;
    return cutDay < today || (cutDay === today && (stand.kind === "cooler" || stand.isRecorded === true));
  };
}

/**
 * Stems thrown away at events, by crop: those of a role at an event are shared over the crops that served it, by stems, what was short and therefore bought
 * being one more. Never more than a crop gave.
 */
function thrownAway(
  { snapshot, work: { match }, seasonYear }: Plan,
  isCut: (serving: Serving) => boolean,
): [Crop, number][] {
  const ofSeason = new Set(snapshot.bookings.filter((row) => seasonOfBooking(row) === seasonYear).map(({ id }) => id));
  return snapshot.reviews.flatMap(({ bookingId, role, thrownAwayStems }): [Crop, number][] => {
    if (!ofSeason.has(bookingId) || thrownAwayStems === 0) return [];
    const isHere = (needIndex: number) =>
      match.needs[needIndex].booking.id === bookingId && match.needs[needIndex].role === role;
    const crops = new Map<Crop, number>();
    let bought = match.needs.reduce((sum, _, index) => sum + (isHere(index) ? match.shortStems[index] : 0), 0);
    for (const serving of match.servings) {
      if (!isHere(serving.needIndex)) continue;
      const { crop } = match.supplies[serving.supplyIndex];
      if (isCut(serving)) crops.set(crop, (crops.get(crop) ?? 0) + serving.stems);
      else bought += serving.stems;
    }
    const weights = [...crops.values(), bought];
    const had = weights.reduce((sum, stems) => sum + stems, 0);
    const parts = apportion(Math.min(thrownAwayStems, had), weights);
    return [...crops.keys()].map((crop, index) => [crop, parts[index]]);
  });
}

const bookingCents = ({ snapshot, seasonYear, today }: Plan): number =>
  snapshot.bookings
    .filter((row) => isHeldEvent(row, today) && seasonOfBooking(row) === seasonYear)
    .filter(({ eventOn }) => today !== null && toDayNumber(eventOn) < today)
    .reduce((sum, { priceCents }) => sum + (priceCents ?? 0), 0);
