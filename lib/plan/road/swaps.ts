import { nearColours } from "#lib/domain/near-colours";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { ById } from "#lib/domain/snapshot";
import { COLOURS, type Colour } from "#lib/domain/words";
import { colourFitCents, cropFitCents } from "./fit";
import type { Gap } from "./gaps";
import { holdOf, holdWindow } from "./hold-window";
import type { Need } from "./needs";
import { placeOf } from "./pick-list";
import type { Plan } from "./plan";

/** Free stems of a variety that a gap could have in place of what it asks for. Days are day numbers. */
export type Swap = {
  readonly variety: Variety;
  readonly crop: Crop;
  readonly stems: number;
  readonly firstCutDay: number;
  readonly lastCutDay: number;
  /** Beds, or the cooler, in which they stand. */
  readonly places: readonly string[];
  /** Another colour than asked; null where the colour is one of those asked. */
  readonly otherColour: "named by the client" | "near" | "another" | null;
  /** Another crop, where only the named one was to do. */
  readonly isOtherCrop: boolean;
};

/**
 * What a gap could be swapped for, the best first [T9]: stems that neither booking nor standing order has claimed, cut from today on within the hold window,
 * or in the cooler, of a crop that can take the role, and of no crop or colour that the booking refuses.
 */
export function swapsFor(plan: Plan, { need }: Pick<Gap, "need">): Swap[] {
  const { farm } = plan.snapshot;
  const model = modelOf(plan, need);
  const byVariety = new Map<number, Swap>();
  for (const { variety, crop, cutDay, stems } of plan.work.over) {
    if (!couldTake(need, variety, crop)) continue;
    const { earliest, latest } = holdWindow(need.eventDay, need.leadDays, holdOf(crop, farm));
    if (cutDay < earliest || cutDay > latest) continue;
    const known = byVariety.get(variety.id);
    byVariety.set(variety.id, {
      variety,
      crop,
      stems: stems + (known?.stems ?? 0),
      firstCutDay: Math.min(cutDay, known?.firstCutDay ?? cutDay),
      lastCutDay: Math.max(cutDay, known?.lastCutDay ?? cutDay),
      places: [...new Set([...(known?.places ?? []), ...placesOf(plan, variety.id, cutDay, stems)])],
      otherColour: otherColour(need, variety.colour),
      isOtherCrop: need.cropOnly && need.cropId !== crop.id,
    });
  }
  return [...byVariety.values()].sort((a, b) => {
    const [first, second] = [rankOf(need, model, a), rankOf(need, model, b)];
    const place = first.findIndex((rank, index) => rank !== second[index]);
    return place < 0 ? a.variety.id - b.variety.id : first[place] - second[place];
  });
}

/** Whether a stem could take the place of what is asked, and does not fit as it is: what fits and is free is given already [M4]. */
function couldTake(need: Need, variety: Variety, crop: Crop): boolean {
  const asItIs = cropFitCents(need, crop) !== null && colourFitCents(need, variety.colour) !== null;
  const inAnyCrop = cropFitCents({ ...need, cropOnly: false }, crop) !== null;
  return !asItIs && inAnyCrop && !need.booking.unacceptableColours.includes(variety.colour);
}

function otherColour(need: Need, colour: Colour): Swap["otherColour"] {
  if (colourFitCents(need, colour) !== null) return null;
  if (need.booking.alternativeColours.includes(colour)) return "named by the client";
  return nearColours(need.colours).includes(colour) ? "near" : "another";
}

const COLOUR_RANKS = [null, "named by the client", "near", "another"] as const;

/** What a swap should look like: the named crop, else the one that gives the need most stems. Undefined where there is neither. */
function modelOf({ snapshot: { crops }, work: { match } }: Plan, need: Need): Crop | undefined {
  if (need.cropId !== null) return new ById("crop", crops).find(need.cropId);
  const stemsOf = new Map<Crop, number>();
  for (const serving of match.servings) {
    if (match.needs[serving.needIndex] !== need) continue;
    const { crop } = match.supplies[serving.supplyIndex];
    stemsOf.set(crop, (stemsOf.get(crop) ?? 0) + serving.stems);
  }
  const [most] = [...stemsOf].sort(([, a], [, b]) => b - a);
  return most?.[0];
}

/** Whether two crops differ in something that both are told of. */
const differs = (model: Crop | undefined, crop: Crop, trait: "shape" | "headSize" | "stemLength"): number =>
  Number(model !== undefined && model[trait] !== null && crop[trait] !== null && model[trait] !== crop[trait]);

/** Least first: its usual role, shape, size and length like the model's, the colour, how near it is, then most stems. */
function rankOf(need: Need, model: Crop | undefined, { crop, variety, otherColour: colour, stems }: Swap): number[] {
  const near = nearColours(need.colours).indexOf(variety.colour);
  return [
    crop.usualRole === need.role ? 0 : 1,
    differs(model, crop, "shape"),
    differs(model, crop, "headSize"),
    differs(model, crop, "stemLength"),
    COLOUR_RANKS.indexOf(colour),
    near < 0 ? COLOURS.length : near,
    -stems,
  ];
}

/** Where the free stems of a variety of one day stand: lots are given away one after the other, so that what is left is the last ones'. */
function placesOf({ work: { match, orders } }: Plan, varietyId: number, cutDay: number, freeStems: number): string[] {
  const places: string[] = [];
  let left = freeStems;
  const lots = (orders?.match ?? match).supplies
    .filter(({ variety, bookingId }) => variety.id === varietyId && bookingId === undefined)
    .flatMap(({ days, lots: ofDays }) => ofDays[days.indexOf(cutDay)] ?? []);
  for (const { stand, stems } of [...lots].reverse()) {
    if (left <= 0) break;
    places.push(placeOf(stand));
    left -= stems;
  }
  return places;
}
