"use server";

import { emptyFarm, updateFarm } from "#db/write/farm";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { FROST_STATIONS } from "#lib/domain/catalogue/frost-stations";
import { farmSchema } from "#lib/domain/records/farm-settings";
import { action, refusal } from "../../action";
import { readClimate } from "./climate-values";
import { readOwnFarm } from "./farm-values";

/** Takes the frost dates of a weather station; those that it does not publish stay as they are. */
export const takeStationFrost = action((values, { farm }) => {
  const station = FROST_STATIONS.find(({ place }) => place === values.text("place"));
  if (!station) return refusal("place", "choose one of the stations");
  const frost = { ...farm.frost, ...station.frost };
  const changed = values.parse(farmSchema, { ...farm, frost });
  if (changed.ok) return changed;
  const message = `${station.place} publishes only some of the dates, and they do not fit between yours: change the dates by hand`;
  return refusal("place", message);
}, updateFarm);

/** Takes the climate of a weather station. */
export const takeStationClimate = action((values, { farm }) => {
  const climate = CLIMATE_STATIONS.find(({ station }) => station === values.text("station"));
  return climate ? { ok: true, parsed: { ...farm, climate } } : refusal("station", "choose one of the stations");
}, updateFarm);

/** Takes the twelve highs and lows that the grower typed. */
export const saveClimate = action(
  (values, { farm }) => readClimate(values, farm),
  (database, climate, { farm }) => updateFarm(database, { ...farm, climate }),
);

/** Takes the climate away: crops bloom by the calendar again. */
export const removeClimate = action(
  (_, { farm }) =>
    farm.climate
      ? { ok: true, parsed: { ...farm, climate: null } }
      : refusal("climate", "the farm has no climate that could be taken away"),
  updateFarm,
);

/** Gives the farm the grower's own name and, if asked, empties it of all that was invented. */
export const startOwnFarm = action(
  readOwnFarm,
  (database, { name, empties }, { farm }) =>
    empties ? emptyFarm(database, name) : updateFarm(database, { ...farm, name, isInvented: false }),
  () => "/",
);
