import type { FarmDatabase } from "#db/client";
import { coolerMove } from "#db/schema/cooler-moves";
import { purchase } from "#db/schema/purchases";
import type { FarmRecords } from "#lib/domain/farm-records";
import { putBudLook, replaceBudLook } from "./bud-looks";
import { putCut, replaceCut } from "./cuts";
import { putLoss, replaceLoss } from "./losses";
import { BookingIds, Names, type VarietyNames } from "./names";
import { putInPlace } from "./put-in-place";
import { addRow, changeRow } from "./put-row";
import type { Refusals } from "./refusal";

/** Writes what is recorded of a season as it happens: cuts, what left the cooler, what was bought in, looks at buds, plants that were lost; inside a change that is open. */
export function putSeasonRecords(
  database: FarmDatabase,
  records: FarmRecords,
  varieties: VarietyNames,
  refusals: Refusals,
): void {
  const names = { beds: new Names(database, "bed"), bookings: new BookingIds(database), varieties };
  putCuts(database, records, names, refusals);
  putCoolerMoves(database, records, names, refusals);
  putPurchases(database, records, names, refusals);
  putBudLooks(database, records, names, refusals);
  putLosses(database, records, names, refusals);
}

/** What these records are known by. */
type SeasonNames = { readonly beds: Names; readonly bookings: BookingIds; readonly varieties: VarietyNames };

function putCuts(database: FarmDatabase, records: FarmRecords, names: SeasonNames, refusals: Refusals): void {
  refusals.each("cuts", records.cuts, (record) => {
    const bedId = names.beds.get(record.bed, "bed");
    const row = { ...record, bedId, varietyId: names.varieties.put(record), bookingId: names.bookings.get(record) };
    putInPlace(database, "cut", record.id, {
      add: () => putCut(database, row),
      replace: (id) => replaceCut(database, id, row),
    });
  });
}

/** Moves add up: two alike are two. */
function putCoolerMoves(database: FarmDatabase, records: FarmRecords, names: SeasonNames, refusals: Refusals): void {
  refusals.each("coolerMoves", records.coolerMoves, (record) => {
    const row = { ...record, varietyId: names.varieties.put(record), bookingId: names.bookings.get(record) };
    putInPlace(database, "cooler_move", record.id, {
      add: () => addRow(database, coolerMove, row),
      replace: (id) => changeRow(database, coolerMove, id, row),
    });
  });
}

function putPurchases(database: FarmDatabase, records: FarmRecords, names: SeasonNames, refusals: Refusals): void {
  refusals.each("purchases", records.purchases, (record) => {
    const row = { ...record, varietyId: names.varieties.put(record), bookingId: names.bookings.get(record) };
    putInPlace(database, "purchase", record.id, {
      add: () => addRow(database, purchase, row),
      replace: (id) => changeRow(database, purchase, id, row),
    });
  });
}

function putBudLooks(database: FarmDatabase, records: FarmRecords, names: SeasonNames, refusals: Refusals): void {
  refusals.each("budLooks", records.budLooks, (record) => {
    const row = { ...record, bedId: names.beds.get(record.bed, "bed"), varietyId: names.varieties.put(record) };
    putInPlace(database, "bud_look", record.id, {
      add: () => putBudLook(database, row),
      replace: (id) => replaceBudLook(database, id, row),
    });
  });
}

function putLosses(database: FarmDatabase, records: FarmRecords, names: SeasonNames, refusals: Refusals): void {
  refusals.each("losses", records.losses, (record) => {
    const row = { ...record, bedId: names.beds.get(record.bed, "bed"), varietyId: names.varieties.put(record) };
    putInPlace(database, "loss", record.id, {
      add: () => putLoss(database, row),
      replace: (id) => replaceLoss(database, id, row),
    });
  });
}
