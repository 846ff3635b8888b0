import { inShort, toDay } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { MovedBooking, MovedNeed } from "#lib/plan/road/moved-promises";
import type { Swap } from "#lib/plan/road/swaps";
import { needInWords } from "./gap-words";
import { countOf, inWholes } from "./numbers";
import { traitsInWords } from "./trait-words";

/** "12 focal in blush or cream fewer (7 of them promised), 5 filler, any colour more" */
export const movedInWords = ({ needs }: MovedBooking, cropName: (id: number) => string): string =>
  allOf(needs.map((moved) => movedNeedInWords(moved, cropName)));

function movedNeedInWords(
  { need, shortBefore, shortNow, brokenBefore, brokenNow }: MovedNeed,
  cropName: (id: number) => string,
): string {
  const stems = `${inWholes(Math.abs(shortNow - shortBefore))} ${needInWords(need, cropName)}`;
  const broken = brokenNow > brokenBefore ? ` (${inWholes(brokenNow - brokenBefore)} of them promised)` : "";
  return shortNow > shortBefore ? `${stems} fewer${broken}` : `${stems} more`;
}

/** Whether the client has to be told: stems that were promised are gone. */
export const isToTell = ({ needs }: MovedBooking): boolean =>
  needs.some(({ brokenBefore, brokenNow }) => brokenNow > brokenBefore);

/** "32 Dahlia Lark Rowan, red (near): Long Field 12, cut 30 Jun to 1 Jul" */
export function swapInWords({
  variety,
  crop,
  stems,
  places,
  firstCutDay,
  lastCutDay,
  otherColour,
  isOtherCrop,
}: Swap): string {
  const why = [
    otherColour === "named by the client" && "named by the client",
    otherColour === "near" && "a near colour",
    otherColour === "another" && "another colour",
    isOtherCrop && "another crop",
  ].filter((part) => part !== false);
  const [first, last] = [inShort(toDay(firstCutDay)), inShort(toDay(lastCutDay))];
  const named =
    places.length > PLACES_NAMED
      ? `${places.slice(0, PLACES_NAMED).join(", ")} and ${countOf(places.length - PLACES_NAMED, "more bed")}`
      : places.join(", ");
  const isTold = crop.headSize !== null || crop.stemLength !== null || crop.outOfWater !== null;
  return `${inWholes(stems)} ${crop.name} ${variety.name}, ${variety.colour} (${allOf(why)})${isTold ? `, ${traitsInWords(crop)}` : ""}: ${named}, cut ${first === last ? first : `${first} to ${last}`}`;
}

const PLACES_NAMED = 3;
