import { inShort, toDay, toDayNumber, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Units } from "#lib/domain/words";
import type { FrostAlarm } from "#lib/plan/road/frost-alarm";
import type { FrostNight } from "#lib/plan/road/frost-night";
import type { PickLine } from "#lib/plan/road/pick-list";
import type { PickRow } from "#lib/plan/road/pick-rows";
import { countOf, forCount, inWholes } from "./numbers";
import { degreesInWords } from "./weather-words";

type Stems = readonly { readonly stems: number }[];
const sumOf = (rows: Stems): number => rows.reduce((sum, { stems }) => sum + stems, 0);

/** "28 °F on the morning of Fri 8 Oct, as you typed it" */
export const coldNightInWords = ({ morning, lowC, isTyped }: FrostNight, units: Units): string =>
  `${degreesInWords(lowC, units)} on the morning of ${withWeekday(morning)}, ${isTyped ? "as you typed it" : "by the weather file"}`;

/** What stands in tender crops for the bookings still to come: "212 tender stems for 3 bookings are still to be cut." */
export const tenderInWords = (atRisk: Stems): string =>
  atRisk.length === 0
    ? "No tender stem is still to be cut for a booking."
    : `${countOf(sumOf(atRisk), "tender stem")} for ${countOf(atRisk.length, "booking")} ${forCount(sumOf(atRisk), "is", "are")} still to be cut.`;

/** What a frost would take, and what can be done: "212 stems for 3 bookings would freeze. Cut 140 by Thu 7 Oct, in about 4 buckets; 72 are lost all the same." */
export function alarmInWords({ atRisk, cutAhead, noRoom, stillLost, eve }: FrostAlarm): string {
  if (atRisk.length === 0) return "No tender stem of a booking would freeze.";
  const frozen = `${countOf(sumOf(atRisk), "tender stem")} for ${countOf(atRisk.length, "booking")} would freeze.`;
  const stemsToCut = stemsToCutOf(cutAhead);
  const cut =
    stemsToCut > 0
      ? ` Cut ${inWholes(stemsToCut)} by the evening of ${withWeekday(toDay(eve))}, what was due before it among them: about ${countOf(bucketsOf(cutAhead), "bucket")} in the cooler.`
      : noRoom.length > 0
        ? ""
        : " Nothing more can be cut ahead that keeps until its event.";
  const lost =
    stillLost.length > 0
      ? ` ${inWholes(sumOf(stillLost))} are lost all the same: ${allOf(stillLost.map(({ booking, stems }) => `${inWholes(stems)} for ${booking.client}`))}.`
      : " Then nothing is lost.";
  return frozen + cut + noRoomInWords(noRoom) + lost;
}

/** " The cooler is full then: 60 more would keep, in 3 buckets more." Empty where all finds room. */
const noRoomInWords = (noRoom: readonly PickLine[]): string =>
  noRoom.length === 0
    ? ""
    : ` The cooler is full then: ${inWholes(stemsToCutOf(noRoom))} more would keep until their event, if ${countOf(bucketsOf(noRoom), "more bucket")} found a cold place.`;

/** "No room: 60 stems in 3 buckets" */
export const noRoomTitle = (noRoom: readonly PickLine[]): string =>
  `No room in the cooler: ${countOf(stemsToCutOf(noRoom), "stem")} in ${countOf(bucketsOf(noRoom), "bucket")}`;

const stemsToCutOf = (lines: readonly PickLine[]): number => lines.reduce((sum, line) => sum + line.stemsToCut, 0);
const bucketsOf = (lines: readonly PickLine[]): number => lines.reduce((sum, line) => sum + line.bucketCount, 0);

/** Whose stems a row cuts, of these bookings and in their order: "Ash, 9 Oct; Elm, 16 Oct". */
export const forWhomInWords = ({ stemsOfBooking }: PickRow, bookings: readonly Booking[]): string =>
  bookings
    .filter(({ id }) => stemsOfBooking.has(id))
    .map(({ client, eventOn }) => `${client}, ${inShort(eventOn)}`)
    .join("; ");

/** Why a cold night can no longer be cut ahead of; empty while it can. */
export const tooLateInWords = ({ morning }: FrostNight, today: number): string =>
  toDayNumber(morning) <= today ? "It is this morning: what stands may have frozen. Look before you cut." : "";

/** What was done, for the list of changes. */
export const coldNightTitle = ({
  coldNightOn,
  coldNightLowC,
  units,
}: Pick<Farm, "coldNightOn" | "coldNightLowC" | "units">): string =>
  coldNightOn === null || coldNightLowC === null
    ? "took the forecast of a cold night out"
    : `kept the forecast of ${degreesInWords(coldNightLowC, units)} on the morning of ${withWeekday(coldNightOn)}`;
