import { isOnTheWay, type PurchaseLine, stemsNotDelivered } from "#lib/plan/road/purchase-slips";
import { csvText } from "./csv-text";

const COLUMNS = [
  "state",
  "supplier",
  "ordered_on",
  "arrives_on",
  "crop",
  "variety",
  "colour",
  "bunches",
  "stems_a_bunch",
  "stems",
  "dollars_a_bunch",
  "dollars",
  "client",
  "event_on",
  "arrived_on",
  "stems_arrived",
];

const dollars = (cents: number | null): string => (cents === null ? "" : (cents / 100).toFixed(2));

/** "ordered", "arrived", "short delivered" */
const stateOf = (line: PurchaseLine): string =>
  isOnTheWay(line) ? "ordered" : stemsNotDelivered(line) > 0 ? "short delivered" : "arrived";

/** What was ordered, as CSV after RFC 4180 to read and to send: a header, a row a flower, CRLF. The farm's own sheet of purchases is the one that reads back. */
export const purchaseCsv = (lines: readonly PurchaseLine[]): string =>
  csvText([
    COLUMNS,
    ...lines.map((line) => {
      const { purchase, crop, variety, booking, orderedStems, costCents } = line;
      return [
        stateOf(line),
        purchase.supplier,
        purchase.orderedOn,
        purchase.arrivesOn,
        crop.name,
        variety.name,
        variety.colour,
        purchase.bunchCount,
        purchase.bunchStems,
        orderedStems,
        dollars(purchase.bunchCents),
        dollars(costCents),
        booking?.client ?? "",
        booking?.eventOn ?? "",
        purchase.arrivedOn ?? "",
        purchase.arrivedStems ?? "",
      ];
    }),
  ]);
