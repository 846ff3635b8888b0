import { inShort, MONTHS, toDay } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { NotToBeHad } from "#lib/plan/road/not-to-be-had";
import { coloursInWords } from "./colour-words";
import { countOf } from "./numbers";

/** What cannot be bought: "24 focal stems in blue for The Ashgrove wedding, 17 Jul". */
export function lackInWords({ gap: { need, shortStems } }: NotToBeHad): string {
  const colours = need.colours.length ? ` in ${coloursInWords(need)}` : "";
  return `${countOf(shortStems, `${need.role} stem`)}${colours} for ${need.booking.client}, ${inShort(toDay(need.eventDay))}`;
}

/** Why, and what could be asked of the client instead, best first: a near colour, another date, another crop. */
export function insteadInWords({ month, nearColour, otherMonth, otherCrop }: NotToBeHad): string {
  const ways = [
    nearColour && `ask for ${nearColour.colour}: ${named(nearColour.crop)} is to be had`,
    otherMonth && `or another date: in ${MONTHS[otherMonth.month - 1]} ${named(otherMonth.bought.crop)} is`,
    otherCrop && `or another crop: ${named(otherCrop.crop)} is`,
  ].filter((way) => way !== null);
  if (ways.length === 0) return "No crop on the farm’s list could be bought for it.";
  const [first, ...rest] = ways;
  const open = first.replace(/^or another/, "ask for another");
  return `Nothing of the kind is to be had in ${MONTHS[month - 1]}: ${[open, ...rest].join("; ")}.`;
}

const named = ({ name }: Crop): string => name.toLowerCase();
