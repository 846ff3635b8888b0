import type { CatalogueCrop, CatalogueCurve } from "#lib/domain/catalogue-types";
import type { MonthDay } from "#lib/domain/day";
import { monthDaySchema } from "#lib/domain/day-schema";
import { FROM_MEMORY } from "#lib/domain/sourced";
import { heatRangeOf } from "./heat-ranges";

/** Short days bring them into bloom, for which no number was found: they bloom by the calendar. */
const BY_DAYLENGTH = ["Chrysanthemum"];

/**
 * Where the built-in first cuts are known: the one station of the list that lies in zone 7a. Dates published for other places are our reading
 * for that zone, as each note says.
 */
const ZONE_7A = "Asheville, North Carolina";

const monthDay = (text: string): MonthDay => monthDaySchema.parse(text);

/**
 * Spring is counted from 1 January: what grew in autumn made roots and leaves, and shoots wait for the turn of the year. From memory; in zone 7a few
 * days before March add anything, so that the choice matters little.
 */
const SPRING = monthDay("01-01");

/**
 * What waits for more than the turn of the year. Peonies and tulips have had their cold by the middle of February (six weeks for a peony, NCSU-PEONYQA), and their shoots
 * come then, from memory: counted from New Year, mild winters of the south would grow them, and a tunnel in a cold place would lead by less than is
 * published (21 days and more for peonies, PEONY-USU; about three weeks for tulips, CORNELL-2010). Kept dahlias are uncovered, and their last
 * tops lost to frost are behind them, by the middle of April: common practice of zone 7a, from memory.
 */
const SPRING_OF: Readonly<Record<string, MonthDay>> = {
  "Ball dahlia": monthDay("04-15"),
  Dahlia: monthDay("04-15"),
  Peony: monthDay("02-15"),
  Tulip: monthDay("02-15"),
};

/** Stems lost for each week that a planting is later than its known planting day, and what is known of it. */
const LATE_LOSS: Readonly<Record<string, { readonly share: number; readonly note: string }>> = {
  Zinnia: {
    share: 0.04,
    note: "Fewer stems from late plantings: 21.6 a plant from May and 14.5 from July are published for Verona, Mississippi (ZIN-MS2008); 4 % a week is our reading.",
  },
};

/** The planting day for which the days to the first cut are known in zone 7a, by crop and treatment: common practice there, from memory. */
const PLANTED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  Amaranth: { field: "05-20" },
  Ammi: { field: "04-10" },
  Anemone: { field: "02-10" },
  "Ball dahlia": { "spring-planted": "06-05" },
  "Bells of Ireland": { field: "04-10" },
  Celosia: { field: "05-20" },
  "China aster": { field: "05-15" },
  Cosmos: { field: "05-10" },
  "Crested celosia": { field: "05-20" },
  Dahlia: { "spring-planted": "06-05" },
  Eucalyptus: { field: "05-01" },
  Feverfew: { field: "04-10" },
  Foxglove: { field: "04-01" },
  Gladiolus: { field: "05-01" },
  Gomphrena: { field: "05-20" },
  Larkspur: { field: "03-10" },
  Lisianthus: { field: "04-15", tunnel: "03-25" },
  Marigold: { field: "05-15" },
  Nigella: { field: "04-01" },
  Ranunculus: { field: "02-10" },
  Scabiosa: { field: "04-10" },
  Snapdragon: { field: "04-01" },
  Statice: { field: "04-25" },
  Stock: { field: "03-20", tunnel: "02-10" },
  Strawflower: { field: "05-05" },
  Sunflower: { field: "05-20" },
  "Sweet pea": { field: "03-05" },
  Zinnia: { field: "05-20" },
};

/**
 * By how much an unheated tunnel is warmer than the air outside, day and night together, degrees Celsius: from memory, no published figure was found. A
 * tunnel's curve has a known first cut of its own and counts the warmth outside, above a base that is lower by this.
 */
const TUNNEL_WARMER_C = 4;

/** Days that a crop takes more where it is sown in place than from a plant set out, in the warmth of its known planting day: from memory. */
const SOWING_DAYS: Readonly<Record<string, number>> = {
  Amaranth: 21,
  Celosia: 28,
  "China aster": 35,
  Cosmos: 14,
  "Crested celosia": 28,
  Gomphrena: 28,
  Marigold: 21,
  Scabiosa: 35,
  Snapdragon: 56,
  Statice: 35,
  Stock: 28,
  Strawflower: 28,
  Zinnia: 14,
};

/**
 * The crop with the clocks of warmth of its curves.
 * @throws RangeError  when a curve of days after planting has no known planting day
 */
export const withClocks = (crop: CatalogueCrop): CatalogueCrop =>
  BY_DAYLENGTH.includes(crop.name)
    ? crop
    : { ...crop, curves: crop.curves.map((curve) => withClock(crop.name, crop.tender, curve)) };

function withClock(cropName: string, tender: boolean, curve: CatalogueCurve): CatalogueCurve {
  const { baseC, ceilingC, limitC, origin, note } = heatRangeOf(cropName, tender, curve.treatment);
  const late = curve.anchor.kind === "days-after-planting" ? LATE_LOSS[cropName] : undefined;
  const isInTunnel = curve.treatment === "tunnel";
  const coolerC = isInTunnel ? TUNNEL_WARMER_C : 0;
  return {
    ...curve,
    sowingDays: curve.anchor.kind === "days-after-planting" ? (SOWING_DAYS[cropName] ?? null) : null,
    // To a tenth, as it is read: 4.4 less 4 is 0.4.
    heatBaseC: Math.round((baseC - coolerC) * 10) / 10,
    heatCeilingC: ceilingC === null ? null : ceilingC - coolerC,
    heatLimitC: limitC === null ? null : limitC - coolerC,
    heatFrom:
      curve.anchor.kind === "day-of-year" ? (SPRING_OF[cropName] ?? SPRING) : knownPlanting(cropName, curve.treatment),
    heatPlace: ZONE_7A,
    heatOrigin: isInTunnel ? FROM_MEMORY : origin,
    lateLossShare: late?.share ?? null,
    note: [curve.note, note, late?.note ?? ""].filter((words) => words !== "").join(" "),
  };
}

function knownPlanting(cropName: string, treatment: string): MonthDay {
  const planted = PLANTED[cropName]?.[treatment];
  if (planted === undefined) throw new RangeError(`${cropName}, ${treatment}: its known planting day is missing`);
  return monthDay(planted);
}
