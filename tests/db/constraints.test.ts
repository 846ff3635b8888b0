import { describe, expect, test } from "vitest";
import type { FarmDatabase } from "#db/client";
import { kept, withFarm } from "./kept-farm";

/** What SQLite itself must refuse, however it is asked. */

const refusedBy = (database: FarmDatabase, sql: string): string => {
  try {
    database.$client.exec(sql);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  return "not refused";
};

const BED = "INSERT INTO bed (name, length_metres, width_metres, flags, no_entry_from, no_entry_until, note) VALUES ";
const CURVE = `INSERT INTO bloom_curve (crop_id, variety_id, treatment, anchor_kind, first_cut, days_after_planting,
  stems_per_plant_by_week, first_cut_spread_days, yield_spread, timing_mark, yield_mark, note) VALUES `;

const WRONG: readonly (readonly [string, string, string])[] = [
  [
    "a second farm",
    "CREATE TEMP TABLE twin AS SELECT * FROM farm; UPDATE twin SET id = 2; INSERT INTO farm SELECT * FROM twin",
    "farm_one_row",
  ],
  ["a share above 1", "UPDATE farm SET spare_share = 1.01", "farm_spare_share"],
  ["a negative share", "UPDATE planting SET alive_share = -0.1", "planting_alive_share"],
  ["a word for a share", "UPDATE planting SET grade_out_share = 'half'", "planting_grade_out_share"],
  ["a status of its own", "UPDATE booking SET status = 'maybe'", "booking_status"],
  ["a treatment of its own", "UPDATE planting SET treatment = 'greenhouse'", "planting_treatment"],
  ["a colour of its own", "UPDATE variety SET colour = 'beige'", "variety_colour"],
  ["a role of its own", "UPDATE recipe_line SET role = 'hero'", "recipe_line_role"],
  ["a month 13", "UPDATE bloom_curve SET first_cut = '13-01'", "bloom_curve_first_cut"],
  ["a mark of its own", "UPDATE crop SET hold_days_mark = 'a friend'", "crop_hold_days_mark"],
  ["a day not written YYYY-MM-DD", "UPDATE booking SET event_on = '12 Jun 2027'", "booking_event_on"],
  ["a day that no calendar has", "UPDATE booking SET event_on = '2027-02-29'", "booking_event_on"],
  ["a day of a month 13", "UPDATE planting SET planted_on = '2027-13-01'", "planting_planted_on"],
  ["a day with a time", "UPDATE planting SET planted_on = '2027-05-20T10:00'", "planting_planted_on"],
  ["a frost date that no year has", "UPDATE farm SET frost_last_spring_p50 = '04-31'", "farm_frost_last_spring_p50"],
  ["frost dates out of order", "UPDATE farm SET frost_first_autumn_p10 = '12-01'", "farm_autumn_frost_in_order"],
  ["an enquiry that outweighs a held date", "UPDATE farm SET weight_enquiry = 0.9", "farm_weights_in_order"],
  ["a bed of no length", "UPDATE bed SET length_metres = 0", "bed_length_metres"],
  ["half a plant", "UPDATE planting SET plant_count = 2.5", "planting_plant_count"],
  ["half a cent", "UPDATE crop SET buy_in_cents = 112.5", "crop_buy_in_cents"],
  ["plants below zero", "UPDATE planting SET plant_count = -1", "planting_plant_count"],
  ["no pieces", "UPDATE booking_piece SET piece_count = 0", "booking_piece_piece_count"],
  ["no stems", "UPDATE booking_stem_line SET stem_count = 0", "booking_stem_line_stem_count"],
  ["half a stem promised", "UPDATE booking_promise SET stem_count = 1.5", "booking_promise_stem_count"],
  ["a list that is not JSON", "UPDATE booking SET palette = 'blush'", "booking_palette"],
  ["JSON that is not a list", `UPDATE bed SET flags = '{"wet":true}'`, "bed_flags"],
  ["no name", "UPDATE crop SET name = '' WHERE id = 1", "crop_name"],
  ["a third answer to yes or no", "UPDATE crop SET tender = 2", "crop_tender"],
  ["crop-only stems of no crop", "UPDATE booking_stem_line SET crop_only = 1, crop_id = NULL", "crop_only_of_a_crop"],
  ["a spray with one day", "UPDATE bed SET no_entry_from = '2027-06-01'", "bed_spray_days"],
  ["a spray that ends before it began", `${BED} ('X', 1, 1, '[]', '2027-06-02', '2027-06-02', '')`, "bed_spray_days"],
  [
    "a curve with no anchor",
    `${CURVE} (2, NULL, 'field', 'day-of-year', NULL, NULL, '[1]', 1, 0, 'own', 'own', '')`,
    "anchor",
  ],
  [
    "a curve with two anchors",
    `${CURVE} (2, NULL, 'field', 'day-of-year', '06-01', 9, '[1]', 1, 0, 'own', 'own', '')`,
    "anchor",
  ],
  ["two beds of a name", "UPDATE bed SET name = 'D1'", "UNIQUE constraint failed: bed.name"],
  ["two crops of a name", "UPDATE crop SET name = 'x'", "UNIQUE constraint failed: crop.name"],
  ["two recipes of a name", "UPDATE recipe SET name = 'x'", "UNIQUE constraint failed: recipe.name"],
  [
    "two varieties of a crop and name",
    "UPDATE variety SET name = 'x'",
    "UNIQUE constraint failed: variety.crop_id, variety.name",
  ],
  ["two bookings of a client and day", "UPDATE booking SET client = 'x'", "UNIQUE constraint failed: booking.client"],
  [
    "two curves of a crop and treatment",
    "UPDATE bloom_curve SET treatment = 'field'",
    "UNIQUE constraint failed: bloom_curve",
  ],
  [
    "two curves of a variety and treatment",
    `${CURVE} (1, 1, 'field', 'day-of-year', '06-01', NULL, '[1]', 1, 0, 'own', 'own', ''),
      (1, 1, 'field', 'day-of-year', '06-02', NULL, '[1]', 1, 0, 'own', 'own', '')`,
    "UNIQUE constraint failed: bloom_curve",
  ],
  [
    "a curve of a variety of another crop",
    `${CURVE} (2, 1, 'field', 'day-of-year', '06-01', NULL, '[1]', 1, 0, 'own', 'own', '')`,
    "FOREIGN KEY constraint failed",
  ],
  ["a planting in no bed", "UPDATE planting SET bed_id = 99", "FOREIGN KEY constraint failed"],
  ["a planting of no variety", "UPDATE planting SET variety_id = 99", "FOREIGN KEY constraint failed"],
  ["a piece of no recipe", "UPDATE booking_piece SET recipe_id = 99", "FOREIGN KEY constraint failed"],
  ["a variety leaving while it is planted", "DELETE FROM variety WHERE id = 1", "FOREIGN KEY constraint failed"],
  ["a recipe leaving while a booking asks for it", "DELETE FROM recipe WHERE id = 1", "FOREIGN KEY constraint failed"],
  ["a crop leaving while it has varieties", "DELETE FROM crop WHERE id = 1", "FOREIGN KEY constraint failed"],
  ["a promise of no crop", "UPDATE booking_promise SET crop_id = 99", "FOREIGN KEY constraint failed"],
  ["a crop leaving while stems of it are asked for", "DELETE FROM crop WHERE id = 2", "FOREIGN KEY constraint failed"],
];

describe("the tables refuse", () => {
  test.each(WRONG)("%s", (_, sql, why) => {
    withFarm((database) => {
      const before = kept(database);
      expect(refusedBy(database, sql)).toContain(why);
      expect(kept(database)).toEqual(before);
    });
  });
});

test("children leave with their parent, and only those", () => {
  withFarm((database) => {
    database.$client.exec(
      "DELETE FROM bed WHERE id = 1; DELETE FROM booking WHERE id = 1; DELETE FROM recipe WHERE id = 2",
    );
    const rows = (table: string) => database.$client.prepare(`SELECT count(*) FROM ${table}`).pluck().get();
    expect(
      [
        "planting",
        "booking_piece",
        "booking_stem_line",
        "booking_promise",
        "booking_unacceptable_crop",
        "recipe_line",
      ].map((table) => [table, rows(table)]),
    ).toEqual([
      ["planting", 1],
      ["booking_piece", 0],
      ["booking_stem_line", 1],
      ["booking_promise", 0],
      ["booking_unacceptable_crop", 0],
      ["recipe_line", 1],
    ]);
  });
});

test("a crop leaves with its curves, and from the lists of what clients do not want", () => {
  withFarm((database) => {
    database.$client.exec("DELETE FROM booking_stem_line; DELETE FROM booking_promise; DELETE FROM crop WHERE id = 2");
    expect(kept(database).bookings[0].unacceptableCropIds).toEqual([1]);
    database.$client.exec("DELETE FROM planting; DELETE FROM variety; DELETE FROM crop WHERE id = 1");
    expect(kept(database).curves).toEqual([]);
  });
});
