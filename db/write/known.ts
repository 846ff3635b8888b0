import type { FarmDatabase } from "#db/client";
import { allOf } from "#lib/domain/listed";
import { refuse } from "./refusal";

const VARIETY = "(SELECT name FROM variety WHERE variety.id = variety_id)";

/** The bed of the one planting that a curve is for. */
const ONE_BED =
  "(SELECT ', only in bed ' || bed.name FROM planting JOIN bed ON bed.id = planting.bed_id WHERE planting.id = planting_id)";

/** What a grower calls a row of each table, as SQL over it. */
const CALLED = {
  bed: "name",
  crop: "name",
  variety: "name",
  recipe: "name",
  what_if: "name",
  booking: "client",
  standing_order: "buyer",
  planting: `${VARIETY} || ' in bed ' || (SELECT name FROM bed WHERE bed.id = bed_id)`,
  cooler_stock: VARIETY,
  cut: `${VARIETY} || ' cut in bed ' || (SELECT name FROM bed WHERE bed.id = bed_id) || ' on ' || cut_on`,
  cooler_move: `${VARIETY} || ' ' || kind || ' on ' || moved_on`,
  purchase: `${VARIETY} || ' from ' || supplier`,
  bud_look: `${VARIETY} || ' in bed ' || (SELECT name FROM bed WHERE bed.id = bed_id) || ' on ' || looked_on`,
  loss: `${VARIETY} || ' in bed ' || (SELECT name FROM bed WHERE bed.id = bed_id) || ', ' || cause`,
  first_cut: `'the first cut of ' || (SELECT name FROM crop WHERE crop.id = crop_id) || coalesce(', ' || ${VARIETY}, '') || ' on ' || first_cut`,
  review: "(SELECT client FROM booking WHERE booking.id = booking_id) || ', ' || role",
  bloom_curve: `coalesce(${VARIETY} || ', ', '') || (SELECT name FROM crop WHERE crop.id = crop_id) || ', ' || treatment || coalesce(${ONE_BED}, '')`,
} as const;

export type KnownTable = keyof typeof CALLED;

/** What the row with this id is called, or undefined when there is none. */
export const called = (database: FarmDatabase, table: KnownTable, id: number): string | undefined =>
  database.$client.prepare<[number], string>(`SELECT ${CALLED[table]} FROM ${table} WHERE id = ?`).pluck().get(id);

/** What the row with this id is called. Refuses, at `place`, when there is none. */
export function known(database: FarmDatabase, table: KnownTable, id: number, place = "id"): string {
  return called(database, table, id) ?? refuse(place, notOnFarm(table));
}

/** Tables that are not called what they hold one of. */
const ONE_ROW: Partial<Record<KnownTable, string>> = {
  bloom_curve: "bloom curve",
  cooler_stock: "line in the cooler",
  cooler_move: "move out of the cooler",
  what_if: "what-if",
  first_cut: "first cut",
  standing_order: "standing order",
};

export const notOnFarm = (table: KnownTable): string => `this ${ONE_ROW[table] ?? table} is not on the farm`;

/** "1 planting", "3 plantings", "2 varieties" */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A column of another table that names the row, and what one row there is called, and several. */
type Use = { readonly table: string; readonly column: string; readonly one: string; readonly many: string };

/** Refuses while other rows name the row: it cannot leave before them. */
export function refuseWhileNamed(database: FarmDatabase, name: string, id: number, uses: readonly Use[]): void {
  const named = uses.flatMap(({ table, column, one, many }) => {
    const count = database.$client
      .prepare<[number], number>(`SELECT count(*) FROM ${table} WHERE ${column} = ?`)
      .pluck()
      .get(id);
    return count ? [counted(count, one, many)] : [];
  });
  if (named.length) refuse("id", `${name} is named by ${allOf(named)}: remove or change those first`);
}
