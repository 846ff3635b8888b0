import { type Day, mondayNumber, toDayNumber } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { Crop } from "#lib/domain/records/crop";
import { COLOURS, type Colour, type Role } from "#lib/domain/words";
import type { PlantingForecast } from "./forecast";
import type { Plan } from "./plan";

/** What a crop gives in a season for a role: `weekStems` of each colour in the order of the weeks asked for, `stems` in all of them. */
export type CropBloom = {
  readonly crop: Crop;
  readonly stems: number;
  readonly colours: readonly { readonly colour: Colour; readonly weekStems: readonly number[] }[];
  readonly plantings: readonly PlantingForecast[];
};

/** Every crop of the season's plantings that can take a role, the earliest cut first. Stems of colours and weeks sum to those cut from the first to the last of `mondays`. */
export function bloomByCrop({ forecast }: Plan, role: Role, mondays: readonly Day[]): CropBloom[] {
  const weekOf = new Map(mondays.map((monday, week) => [toDayNumber(monday), week]));
  const ofRole = forecast.plantings.filter(({ crop }) => crop.roles.includes(role));
  const byCrop = groupsOf(ofRole, ({ crop }) => crop.id);
  const blooms = [...byCrop.values()].map((plantings) => cropBloom(plantings, weekOf));
  const firstCut = ({ plantings }: CropBloom) =>
    plantings.reduce(
      (first, { cutDays }) => Math.min(first, cutDays[0] ?? Number.MAX_SAFE_INTEGER),
      Number.MAX_SAFE_INTEGER,
    );
  return blooms.sort((a, b) => firstCut(a) - firstCut(b) || a.crop.id - b.crop.id);
}

function cropBloom(plantings: readonly PlantingForecast[], weekOf: ReadonlyMap<number, number>): CropBloom {
  const weeksOf = new Map<Colour, number[]>();
  let sum = 0;
  for (const { variety, cutDays, cutStems } of plantings) {
    const weeks = weeksOf.get(variety.colour) ?? new Array<number>(weekOf.size).fill(0);
    weeksOf.set(variety.colour, weeks);
    cutDays.forEach((day, index) => {
      const week = weekOf.get(mondayNumber(day));
      if (week === undefined) return;
      weeks[week] += cutStems[index];
      sum += cutStems[index];
    });
  }
  const colours = COLOURS.flatMap((colour) => {
    const weekStems = weeksOf.get(colour);
    return weekStems ? [{ colour, weekStems }] : [];
  });
  return { crop: plantings[0].crop, stems: sum, colours, plantings };
}
