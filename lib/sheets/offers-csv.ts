import { toDay } from "#lib/domain/day";
import { OFFERED_FROM_DAYS, OFFERED_UP_TO_DAYS, type Offer } from "#lib/plan/road/offers";
import { csvText } from "./csv-text";

const COLUMNS = [
  "crop",
  "colour",
  "length",
  "bunches",
  "stems_a_bunch",
  "stems",
  "cut_from",
  "cut_to",
  "ready_on",
  "keeps_until",
];

/** What can be offered on a day, as CSV after RFC 4180: a header, a row an offer, CRLF. `length` is empty where it is not told. */
export const offersCsv = (some: readonly Offer[], today: number): string =>
  csvText([
    COLUMNS,
    ...some.map(({ crop, colour, stemLength, bunchCount, stems, readyDay, keepsUntil }) => [
      crop.name,
      colour,
      stemLength ?? "",
      bunchCount,
      crop.bunchStems.count,
      stems,
      toDay(today + OFFERED_FROM_DAYS),
      toDay(today + OFFERED_UP_TO_DAYS),
      toDay(readyDay),
      toDay(keepsUntil),
    ]),
  ]);
