import { expect, test } from "vitest";
import type { FarmDatabase } from "#db/client";
import { loadSnapshot, loadWhatIfs } from "#db/read/read";
import { putWhatIf } from "#db/write/what-ifs";
import { done, withFarm } from "./kept-farm";

/** Rows that no write of ours could make, put there behind the tables' back: a file that was mended by hand, or is damaged. */
function plant(database: FarmDatabase, sql: string): void {
  const { $client } = database;
  $client.pragma("ignore_check_constraints = ON");
  $client.pragma("foreign_keys = OFF");
  $client.exec(sql);
  $client.pragma("foreign_keys = ON");
  $client.pragma("ignore_check_constraints = OFF");
}

const placesOf = (database: FarmDatabase): string[] => {
  const read = loadSnapshot(database);
  return read.ok ? [] : read.problems.map(({ place }) => place);
};

test("a bad row is named by its list, its id and its field, with what is wrong", () => {
  withFarm((database) => {
    plant(database, "UPDATE planting SET planted_on = '2027-02-30' WHERE id = 2");
    expect(loadSnapshot(database)).toEqual({
      ok: false,
      problems: [
        {
          place: "plantings[2].plantedOn",
          message: "not a calendar day: write it as YYYY-MM-DD, for example 2027-06-12",
        },
      ],
    });
  });
});

test("every bad row of every table is named, all of them at once", () => {
  withFarm((database) => {
    plant(
      database,
      `UPDATE farm SET is_invented = 7, picking_weekdays = '[1', frost_last_spring_p50 = '04-31', weight_enquiry = -1, spare_share = 'some';
       UPDATE crop SET tender = 5, roles = '["hero"]', hold_days = -1, buy_in_cents_mark = 'x' WHERE id = 2;
       UPDATE variety SET colour = 'beige' WHERE id = 1;
       UPDATE bloom_curve SET first_cut = NULL, stems_per_plant_by_week = 'many', timing_mark = '' WHERE id = 1;
       UPDATE recipe_line SET stems_per_piece = 0 WHERE recipe_id = 2;
       UPDATE bed SET length_metres = 0, flags = '["haunted"]' WHERE id = 2;
       UPDATE planting SET plant_count = 1.5, alive_share = 2 WHERE id = 1;
       UPDATE booking SET status = 'maybe', palette = '{}' WHERE id = 1;
       UPDATE booking_piece SET piece_count = 0 WHERE booking_id = 1;
       UPDATE booking_stem_line SET crop_only = 3 WHERE booking_id = 2;
       INSERT INTO cooler_stock (variety_id, cut_on, stem_count) VALUES (1, 'today', -4)`,
    );
    expect(placesOf(database).sort()).toEqual(
      [
        ...["farm.isInvented", "farm.pickingWeekdays", "farm.spareShare", "farm.frost.lastSpringP50"],
        "farm.statusWeights.enquiry",
        ...["crops[2].tender", "crops[2].roles[0]", "crops[2].holdDays.count", "crops[2].buyInCents.mark"],
        "varieties[1].colour",
        ...["curves[1].anchor.firstCut", "curves[1].stemsPerPlantByWeek", "curves[1].timingOrigin.mark"],
        "recipes[2].lines[0].stemsPerPiece",
        ...["beds[2].lengthMetres", "beds[2].flags[0]"],
        ...["plantings[1].plantCount", "plantings[1].aliveShare"],
        ...["bookings[1].status", "bookings[1].palette", "bookings[1].pieces[0].pieceCount"],
        "bookings[2].stemLines[0].cropOnly",
        ...["coolerStock[1].cutOn", "coolerStock[1].stemCount"],
      ].sort(),
    );
  });
});

test("rows that lost what they name are named", () => {
  withFarm((database) => {
    plant(database, "DELETE FROM variety WHERE id = 2; DELETE FROM crop WHERE id = 2; DELETE FROM recipe WHERE id = 1");
    expect(placesOf(database)).toEqual(["recipeLines[1]"]);
    plant(database, "DELETE FROM recipe_line WHERE recipe_id = 1");
    expect(placesOf(database).sort()).toEqual([
      "bookings[1].pieces[0].recipeId",
      "bookings[1].promises[0].cropId",
      "bookings[1].stemLines[0].cropId",
      "bookings[1].unacceptableCropIds[1]",
      "plantings[2].varietyId",
    ]);
  });
});

test("lines that lost their booking are named, never dropped", () => {
  withFarm((database) => {
    plant(database, "DELETE FROM booking WHERE id = 1");
    expect(placesOf(database).sort()).toEqual([
      "bookingPieces[1]",
      "bookingPromises[1]",
      "bookingStemLines[1]",
      "bookingUnacceptableCrops[1]",
      "bookingUnacceptableCrops[2]",
    ]);
  });
});

test("a bad what-if is named, and does not keep the farm from being read", () => {
  withFarm((database) => {
    done(putWhatIf(database, { name: "Early frost", seasonYear: 2027, changes: [] }));
    plant(database, `UPDATE what_if SET changes = '[{"kind":"bed-eaten"}]', name = ''`);
    const read = loadWhatIfs(database);
    expect(read.ok ? [] : read.problems.map(({ place }) => place).sort()).toEqual([
      "whatIfs[1].changes[0].kind",
      "whatIfs[1].name",
    ]);
    expect(loadSnapshot(database).ok).toBe(true);
  });
});
