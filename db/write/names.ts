import { and, asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { bed, planting } from "#db/schema/beds";
import { booking } from "#db/schema/bookings";
import { variety } from "#db/schema/crops";
import type { PlantingName, VarietyNamed, VarietyRecord } from "#lib/domain/farm-records";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { insertVariety, replaceVariety } from "./put-crops";
import { refuse } from "./refusal";

/** Ids by name of one table, as it stands and as rows are added to it. Names are compared letter by letter. */
export class Names {
  readonly #ids: Map<string, number>;
  readonly #word: string;

  constructor(database: FarmDatabase, table: "crop" | "recipe" | "bed") {
    const rows = database.$client.prepare<[], { id: number; name: string }>(`SELECT id, name FROM ${table}`).all();
    this.#ids = new Map(rows.map(({ id, name }) => [name, id]));
    this.#word = table;
  }

  find = (name: string): number | undefined => this.#ids.get(name);

  add(name: string, id: number): void {
    this.#ids.set(name, id);
  }

  /** The id of the row called `name`; refuses, at `place`, when there is none. */
  get = (name: string, place: string): number =>
    this.#ids.get(name) ?? refuse(place, `there is no ${this.#word} called ${name}`);
}

type KnownVariety = { readonly id: number; readonly colour: string };

/** Varieties by crop and name, as they stand and as records bring new ones. */
export class VarietyNames {
  readonly #database: FarmDatabase;
  readonly #crops: Names;
  readonly #varieties: Map<string, KnownVariety>;

  constructor(database: FarmDatabase, crops: Names) {
    this.#database = database;
    this.#crops = crops;
    const rows = database.select().from(variety).all();
    this.#varieties = new Map(rows.map(({ id, cropId, name, colour }) => [key(cropId, name), { id, colour }]));
  }

  /** The id of a variety that must be there already. */
  get(crop: string, name: string): number {
    const known = this.#varieties.get(key(this.#crops.get(crop, "crop"), name));
    return known?.id ?? refuse("variety", `${crop} has no variety called ${name}`);
  }

  /** Makes the variety with this id what the record says: its name, its colour, its crop. Gives the id. */
  replace(id: number, { crop, variety: name, ...rest }: VarietyRecord): number {
    const cropId = this.#crops.get(crop, "crop");
    const { colour } = rest;
    replaceVariety(this.#database, id, { ...rest, cropId, name });
    this.#varieties.set(key(cropId, name), { id, colour });
    return id;
  }

  /** The id of a variety, added when it is new. Refused when it is known in another colour: one variety has one colour. */
  put({ crop, variety: name, colour }: VarietyNamed): number {
    const cropId = this.#crops.get(crop, "crop");
    const known = this.#varieties.get(key(cropId, name));
    if (known && known.colour !== colour)
      refuse("colour", `${name} is ${known.colour} elsewhere: a variety has one colour, or give this one another name`);
    const id = known?.id ?? insertVariety(this.#database, { cropId, name, colour, ...AS_ITS_CROP });
    this.#varieties.set(key(cropId, name), { id, colour });
    return id;
  }
}

/** Bookings by client and day, as they stand when this is made. */
export class BookingIds {
  readonly #ids: Map<string, number>;

  constructor(database: FarmDatabase) {
    const rows = database
      .select({ id: booking.id, client: booking.client, eventOn: booking.eventOn })
      .from(booking)
      .all();
    this.#ids = new Map(rows.map(({ id, client, eventOn }) => [`${eventOn} ${client}`, id]));
  }

  /** The booking of a client and day, null when neither is given; refuses when there is none. */
  get({ client, eventOn }: { readonly client: string | null; readonly eventOn: string | null }): number | null {
    return client === null || eventOn === null ? null : this.idOf({ client, eventOn });
  }

  /** The booking of a client and day; refuses when there is none. */
  idOf({ client, eventOn }: { readonly client: string; readonly eventOn: string }): number {
    return this.#ids.get(`${eventOn} ${client}`) ?? refuse("client", `there is no booking of ${client} on ${eventOn}`);
  }
}

/** The id of the planting that a sheet names, the first where several are alike; refuses when there is none. */
export function plantingNamed(
  database: FarmDatabase,
  { bed: bedName, seasonYear, plantedOn }: PlantingName,
  varietyId: number,
): number {
  const found = database
    .select({ id: planting.id })
    .from(planting)
    .innerJoin(bed, eq(bed.id, planting.bedId))
    .where(
      and(
        eq(bed.name, bedName),
        eq(planting.varietyId, varietyId),
        eq(planting.seasonYear, seasonYear),
        eq(planting.plantedOn, plantedOn),
      ),
    )
    .orderBy(asc(planting.id))
    .get();
  return (
    found?.id ??
    refuse("bed", `no planting of this variety stands in bed ${bedName} since ${plantedOn} for ${seasonYear}`)
  );
}

const key = (cropId: number, name: string): string => `${cropId} ${name}`;
