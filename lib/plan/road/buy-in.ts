import { allAs } from "#lib/domain/crop-of-variety";
import { monthNumber, toDay } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Colour, ROLES, type Role } from "#lib/domain/words";
import { hasAsked } from "./fit";
import type { Need } from "./needs";

/** What a stem short is bought in as: the flower, and its colour; null where any colour will do. */
export type Bought = { readonly crop: Crop; readonly colour: Colour | null };

/** What a purchase must know of a need, what its booking refuses aside. */
type Wanted = Pick<Need, "role" | "cropId" | "cropOnly" | "asks" | "colours" | "eventDay" | "leadDays"> &
  Partial<Pick<Need, "kind">>;
type Refusing = { readonly booking: Pick<Need["booking"], "unacceptableCropIds" | "unacceptableColours"> };

/** What a stem short is bought in as, and at what price. */
export type BuyInPrices = {
  /** All crops of the farm, and beside them as they are in those varieties that say something of themselves. */
  readonly allCrops: readonly Crop[];
  /**
   * The price of one stem in cents, by which a claim is weighed: that of what would be bought were nothing refused; where nothing is to be had, of the
   * dearest flower that could serve; a cent when none could. What a booking refuses does not matter: a client who will not have lilies has no weaker
   * claim.
   */
  readonly centsOf: (need: Wanted) => number;
  /** The middle price in cents of the crops whose usual role it is, else of those able, whenever and in whatever colour they are to be had; a cent when there is none. */
  readonly middleCentsOf: (role: Role) => number;
  /** What is bought [B1]; null when nothing is to be had that the booking will have. @param month  of the year, 1 to 12: that in which it arrives, or another to ask about */
  readonly boughtAs: (need: Wanted & Refusing, month?: number) => Bought | null;
  /** The month of the year, 1 to 12, in which what is bought for a need arrives. */
  readonly monthOf: (need: Pick<Wanted, "eventDay" | "leadDays">) => number;
};

/** What is found hangs on the crops alone: plans of one farm, most of which change neither, ask thousands of times for the same. */
const finders = new WeakMap<Snapshot["crops"], BuyInPrices>();

/** Finds what each need is bought in as, among a farm's crops. Bought stems arrive on the last day on which a stem may be cut for the event. */
export function buyInFinder({ crops, varieties }: Pick<Snapshot, "crops" | "varieties">): BuyInPrices {
  const found = finders.get(crops) ?? finderOf(crops);
  finders.set(crops, found);
  const allCrops = allAs(crops, varieties);
  return allCrops === crops ? found : { ...found, allCrops };
}

function finderOf(crops: Snapshot["crops"]): BuyInPrices {
  const ofId = new Map(crops.map((crop) => [crop.id, crop]));
  const lists = new Map(ROLES.map((role) => [role, listsFor([...crops].sort(byPrice), role)]));
  const months = new Map<number, number>();
  const monthOf = ({ eventDay, leadDays }: Pick<Wanted, "eventDay" | "leadDays">) => {
    const arrivalDay = eventDay - leadDays;
    const known = months.get(arrivalDay) ?? monthNumber(toDay(arrivalDay));
    months.set(arrivalDay, known);
    return known;
  };
  const boughtAs = (need: Wanted & Refusing, month = monthOf(need)): Bought | null => {
    const { unacceptableCropIds, unacceptableColours } = need.booking;
    const colours = need.colours.filter((colour) => !unacceptableColours.includes(colour));
    if (need.colours.length > 0 && colours.length === 0) return null;
    const offers = (crop: Crop): boolean =>
      !unacceptableCropIds.includes(crop.id) &&
      hasAsked(need.asks, crop) &&
      isIn(crop.buyInMonths, month) &&
      !isAllIn(unacceptableColours, crop);
    const named = need.cropId === null ? undefined : ofId.get(need.cropId);
    const wanted = [...(named ? [[named]] : []), ...(need.cropOnly ? [] : (lists.get(need.role) ?? []))];
    for (const list of wanted)
      for (const colour of colours.length ? colours : [null]) {
        const found = list.filter((crop) => offers(crop) && (colour === null || isIn(crop.buyInColours, colour)));
        if (found.length) return { crop: middle(found), colour };
      }
    return null;
  };
  // By month, then by kind, which says more than the price hangs on: thousands of needs look up one string that they have already.
  const known = new Map<number, Map<string, number>>();
  const centsOf = (need: Wanted): number => {
    const month = monthOf(need);
    const ofMonth = known.get(month) ?? new Map<string, number>();
    known.set(month, ofMonth);
    const { role, cropId, cropOnly, asks, colours } = need;
    const found = need.kind === undefined ? undefined : ofMonth.get(need.kind);
    if (found !== undefined) return found;
    const plainKind = `${role}/${cropId}/${cropOnly}/${asks.join()}/${colours.join()}`;
    const cents =
      ofMonth.get(plainKind) ??
      (boughtAs({ ...need, booking: REFUSING_NOTHING })?.crop ?? dearest(need))?.buyInCents.count ??
      1;
    ofMonth.set(plainKind, cents);
    if (need.kind !== undefined) ofMonth.set(need.kind, cents);
    return cents;
  };
  const dearest = ({ role, cropId }: Wanted): Crop | undefined =>
    ofId.get(cropId ?? 0) ?? lists.get(role)?.flat().sort(byPrice).at(-1);
  const middleCentsOf = (role: Role): number => {
    const list = (lists.get(role) ?? []).find(({ length }) => length > 0);
    return list ? middle(list).buyInCents.count : 1;
  };
  return { allCrops: crops, centsOf, middleCentsOf, boughtAs, monthOf };
}

const REFUSING_NOTHING = { unacceptableCropIds: [], unacceptableColours: [] };

/** The lower of two middle ones. @param crops  in order of price, one at least */
const middle = (crops: readonly Crop[]): Crop => crops[Math.floor((crops.length - 1) / 2)];

/** Whether a list has it; one that says nothing has all. */
const isIn = <T>(list: readonly T[], one: T): boolean => list.length === 0 || list.includes(one);

/** Whether a crop is sold in none but colours that are refused. */
const isAllIn = (refused: readonly Colour[], { buyInColours }: Crop): boolean =>
  buyInColours.length > 0 && buyInColours.every((colour) => refused.includes(colour));

/** The crops whose usual role it is, and after them those able, each by price. A role that is nobody's usual one has one list. @param inOrder  crops by price */
function listsFor(inOrder: readonly Crop[], role: Role): Crop[][] {
  const usual = inOrder.filter((crop) => crop.usualRole === role);
  const able = inOrder.filter((crop) => crop.roles.includes(role) && crop.usualRole !== role);
  return [usual, able];
}

/** By price; of equal ones the smaller bunch first, then by name, so that the order in which crops were written down does not matter. */
const byPrice = (a: Crop, b: Crop): number =>
  a.buyInCents.count - b.buyInCents.count ||
  a.bunchStems.count - b.bunchStems.count ||
  (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
