import { addDays, type Day, mondayOf, toDay } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { PurchaseDraft } from "#lib/domain/records/purchase";
import type { Colour } from "#lib/domain/words";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";
import { nameOfBought } from "#lib/plan/words/purchase-words";

/** What was ordered, and the flower as a supplier sells it. */
export type Ordered = Omit<PurchaseDraft, "varietyId"> & {
  readonly flower: { readonly cropId: number; readonly name: string; readonly colour: Colour };
};

/** Invented suppliers, in turn. */
const SUPPLIERS = ["Gatehouse Flowers", "Twelve Acre Growers"] as const;
/** So many orders of a season were written down: the last ones. */
const ORDERS_A_SEASON = 6;
/** Of each so many orders one came a bunch short. */
const SHORT_OF = 3;

/**
 * What was ordered of a season by a day: for its gaps the last orders, and for the last event that is over what no bed of the farm gives in plenty. What was to arrive before that day
 * came, here and there a bunch short. Gaps that any colour closes are left out: nobody wrote those orders down.
 * @param until  the first day that is not over
 */
export function boughtIn(asked: Plan, until: Day): Ordered[] {
  return [...forGaps(asked, until), ...besideGaps(asked, until)].map((order, index) => {
    const { bunchCount, bunchStems, arrivesOn } = order;
    const missing = index % SHORT_OF === SHORT_OF - 1 ? bunchStems : 0;
    const came = { arrivedOn: arrivesOn, arrivedStems: bunchCount * bunchStems - missing };
    return { ...order, supplier: SUPPLIERS[index % SUPPLIERS.length], ...(arrivesOn < until ? came : NOT_YET) };
  });
}

type Asked = Omit<Ordered, "supplier" | "arrivedOn" | "arrivedStems">;
const NOT_YET = { arrivedOn: null, arrivedStems: null };

const forGaps = ({ work: { buying } }: Plan, until: Day): Asked[] =>
  buying
    .flatMap(({ colour, crop, bunchCount, gap: { need, shortStems }, orderBy }) => {
      const orderedOn = toDay(orderBy);
      if (colour === null || orderedOn >= until) return [];
      const arrivesOn = toDay(need.eventDay - need.leadDays);
      const order = { ...orderOf(crop, colour, bunchCount), orderedOn, arrivesOn };
      return [{ ...order, bookingId: need.booking.id, stemsForBooking: shortStems }];
    })
    .slice(-ORDERS_A_SEASON);

/** What is bought for an event whatever the beds give: flower, colour and bunches. Invented. */
const BESIDE = [
  ["Eucalyptus", "silver", 3],
  ["Garden rose", "cream", 3],
  ["Hydrangea", "white", 4],
] as const;

function besideGaps({ match, seasonYear, snapshot: { crops, farm } }: Plan, until: Day): Asked[] {
  const over = bookingsOf(match, seasonYear).filter(({ eventOn, status }) => eventOn < until && status === "confirmed");
  const last = over.sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1)).at(-1);
  if (!last) return [];
  const arrivesOn = addDays(last.eventOn, -farm.leadDays);
  return BESIDE.flatMap(([name, colour, bunchCount]) =>
    crops
      .filter((crop) => crop.name === name)
      .map((crop) => ({
        ...orderOf(crop, colour, bunchCount),
        ...{ orderedOn: addDays(arrivesOn, -farm.orderDaysAhead), arrivesOn },
        ...{ bookingId: last.id, stemsForBooking: bunchCount * crop.bunchStems.count },
      })),
  );
}

/** Greens for the winter's tables, ordered on the Monday before a day and to come on the Friday after it, for anybody. */
export function wintersGreens(crops: readonly Crop[], today: Day): Ordered[] {
  const orderedOn = mondayOf(addDays(today, -1));
  const arrivesOn = addDays(mondayOf(addDays(today, 2)), 4);
  return crops
    .filter(({ name }) => name === "Eucalyptus")
    .map((crop) => ({
      ...orderOf(crop, "silver", 4),
      ...{ supplier: SUPPLIERS[1], orderedOn, arrivesOn, bookingId: null, stemsForBooking: 0 },
      ...NOT_YET,
    }));
}

const orderOf = ({ id, bunchStems, buyInCents }: Crop, colour: Colour, bunchCount: number) => ({
  flower: { cropId: id, name: nameOfBought(colour), colour },
  bunchCount,
  bunchStems: bunchStems.count,
  bunchCents: Math.round(bunchStems.count * buyInCents.count),
  daysToOpen: 0,
});
