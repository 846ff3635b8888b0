"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { emptyFarm, updateFarm } from "#db/write/farm";
import { FROST_STATIONS } from "#lib/domain/catalogue/frost-stations";
import { farmSchema } from "#lib/domain/farm";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { FROST_FIELDS, readOwnFarm, readSettings, readWinter } from "./farm-values";

export async function saveSettings(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const farm = readSettings(values, loadFarm().farm);
  return farm.ok ? taken(values, updateFarm(farmDatabase(), farm.parsed)) : values.refused();
}

export async function saveWinter(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const { farm } = loadFarm();
  const read = readWinter(values, farm);
  return read.ok ? taken(values, updateFarm(farmDatabase(), { ...farm, ...read.parsed })) : values.refused();
}

/** Takes the frost dates of a weather station; those that it does not publish stay as they are. */
export async function takeStationFrost(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const { farm } = loadFarm();
  const station = FROST_STATIONS.find(({ place }) => place === values.text("place"));
  if (!station) return values.refused([{ place: "place", message: "choose one of the stations" }]);
  const frost = Object.fromEntries(FROST_FIELDS.map((field) => [field, station.frost[field] ?? farm.frost[field]]));
  const changed = values.parse(farmSchema, { ...farm, frost });
  if (changed.ok) return taken(values, updateFarm(farmDatabase(), changed.parsed));
  const message = `${station.place} publishes only some of the dates, and they do not fit between yours: change the dates by hand`;
  return values.refused([{ place: "place", message }]);
}

/** Gives the farm the grower's own name and, if asked, empties it of all that was invented. */
export async function startOwnFarm(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const own = readOwnFarm(values);
  if (!own.ok) return values.refused();
  const { name, empties } = own.parsed;
  const database = farmDatabase();
  const started = empties
    ? emptyFarm(database, name)
    : updateFarm(database, { ...loadFarm().farm, name, isInvented: false });
  if (!started.ok) return values.refused(started.problems);
  revalidatePath("/", "layout");
  redirect("/");
}
